/** The gaps between neighbouring windows, those of one width together. */
import type { Job } from '../../core/job/job';
import { gapOrigin } from '../../core/layout/gaps';
import type { Gap, Layout } from '../../core/layout/layout';
import { ringSpaces, type RingSpaces } from '../../core/layout/ring-spaces';
import { columns } from '../print/text';
import type { Section } from './section';
import type { Words } from './words';

interface Told extends Pick<Gap, 'between' | 'gap' | 'bridge' | 'faceBridge'> {
  readonly runs: string;
  readonly how: string;
}

export function gapsSection(job: Job, { gaps, windows }: Layout, { length, width }: Words): Section {
  const alike = new Map<string, { row: string[]; between: string[] }>();
  for (const { runs, how, gap, bridge, faceBridge, between } of toldOf(gaps, ringSpaces(job, { windows }))) {
    const row = [length(gap), length(bridge), length(faceBridge), runs, how];
    const names = between.map((index) => windows[index]?.name).join('–');
    const group = alike.get(row.join('|'));
    if (group) group.between.push(names);
    else alike.set(row.join('|'), { row, between: [names] });
  }
  const rows = [...alike.values()].map(({ row, between }) => [...row.slice(0, 4), between.join(', '), row[4] ?? '']);
  const heads = ['gap', 'bridge', 'on the face', 'runs', 'between windows', 'how'];
  return {
    heading: 'Gaps, and the board they leave in the top layer',
    lines: rows.length === 0 ? [] : columns([heads, ...rows], { indent: 2, width }),
  };
}

/** Round a ring windows stand askew, so that what lies between them is told by itself and not along an axis. */
function toldOf(gaps: readonly Gap[], rings: readonly RingSpaces[]): Told[] {
  const spaces = rings.flatMap((ring) =>
    ring.spaces.map((space) => ({ ...space, how: spaceOrigin(space.runs, ring) })),
  );
  const keyOf = ({ between }: Pick<Gap, 'between'>) => between.toSorted((a, b) => a - b).join();
  const round = new Set(spaces.map(keyOf));
  const straight = gaps
    .filter((gap) => !round.has(keyOf(gap)))
    .map((gap) => ({ ...gap, runs: gap.axis, how: gapOrigin(gap) }));
  return [...straight, ...spaces];
}

function spaceOrigin(runs: RingSpaces['spaces'][number]['runs'], { spacing, fromMiddle }: RingSpaces): string {
  if (runs === 'round') return spacing === 'equal gaps' ? 'equal round the ring' : 'at equal angles round the ring';
  return fromMiddle ? 'as given' : 'from the ellipse of the ring';
}
