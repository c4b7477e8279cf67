/** The board round a ring: from each window to the next, and to the one in the middle. */
import { apart } from '../geometry/nearness';
import { boxOutline, type Outline } from '../geometry/outline';
import { itemsOf } from '../job/item-at';
import type { Job, RingItem } from '../job/job';
import type { Gap, Layout, LayerOpening, PlacedWindow } from './layout';
import { openingOutline } from './shaped-openings';

/** What lies between two windows of a ring where they come nearest. */
export interface RingSpace extends Pick<Gap, 'between' | 'gap' | 'bridge' | 'faceBridge'> {
  readonly runs: 'round' | 'to the middle';
}

export interface RingSpaces {
  /** Path of the ring in the written job. */
  readonly at: string;
  readonly spacing: RingItem['spacing'];
  /** True where the gap to the middle is what the job gives. */
  readonly fromMiddle: boolean;
  readonly spaces: readonly RingSpace[];
}

/** One for each ring of the job. */
export function ringSpaces(job: Job, { windows }: Pick<Layout, 'windows'>): RingSpaces[] {
  const indices = new Map(windows.map(({ at }, index) => [at, index]));
  const rings = job.windows ? itemsOf(job.windows).filter((item) => item.kind === 'ring') : [];
  return rings.map((ring) => {
    const indexOf = ({ at }: { readonly at: string }) => indices.get(at) ?? -1;
    const around = ring.around.map(indexOf);
    const last = around.length > 2 ? around.length : around.length - 1;
    const next = around.slice(0, last).map((one, place) => [one, around[(place + 1) % around.length] ?? -1] as const);
    const outward = ring.middle ? around.map((one) => [indexOf(ring.middle ?? ring), one] as const) : [];
    const spaces = [
      ...next.map((between) => spaceOf('round', between, windows)),
      ...outward.map((between) => spaceOf('to the middle', between, windows)),
    ];
    return { at: ring.at, spacing: ring.spacing, fromMiddle: !ring.on, spaces: spaces.flatMap((one) => one ?? []) };
  });
}

function spaceOf(
  runs: RingSpace['runs'],
  between: Gap['between'],
  windows: readonly PlacedWindow[],
): RingSpace | undefined {
  const [one, other] = [windows[between[0]]?.layers, windows[between[1]]?.layers];
  const [a, b, c, d] = [one?.at(-1), other?.at(-1), one?.[0], other?.[0]];
  if (!a || !b || !c || !d) return undefined;
  return {
    runs,
    between,
    gap: apart(openingOutline(a), openingOutline(b)),
    bridge: apart(openingOutline(c), openingOutline(d)),
    faceBridge: apart(faceOutline(c), faceOutline(d)),
  };
}

function faceOutline({ face, outlines }: LayerOpening): Outline {
  return outlines?.face ?? boxOutline(face);
}
