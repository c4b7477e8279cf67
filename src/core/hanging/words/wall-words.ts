/** The wall in words: how heights and distances are reached, and a table of every hook and nail. */
import { showTogether, lengthText, type Showing } from '../../units';
import type { HangerKind } from '../../job/hanging';
import { GUIDANCE } from '../guidance';
import type { HungFrame, WallPlan } from '../wall-plan';
import type { Row, Section, Words } from './section';

/** A table with a row for every hook. */
export interface HookTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function hookTable({ frames, from }: WallPlan, { show }: Words): HookTable {
  // One title for all tells nothing that its number does not.
  const isTitled = new Set(frames.map(({ title }) => title)).size > 1;
  const rows = frames.flatMap((frame) =>
    frame.hooks.map((hook, index) => [
      index === 0 ? String(frame.number) : '',
      ...(isTitled ? [index === 0 ? frame.title : ''] : []),
      frame.hooks.length === 1 ? 'middle' : index === 0 ? 'left' : 'right',
      show.length(hook.across),
      show.length(hook.seat.y),
      hook.nail ? show.length(hook.nail.y) : 'not known',
    ]),
  );
  return {
    heads: ['No.', ...(isTitled ? ['Frame'] : []), 'Hook', `From the ${from}`, 'Seat, up', 'Nail hole, up'],
    rows,
  };
}

/** A table of frames: their edges and middles. */
export function frameTable({ frames, from }: WallPlan, { show }: Words): HookTable {
  const rows = frames.map(({ number, title, size, near, middle, box, height }) => [
    String(number),
    title,
    show.size(size),
    show.length(near),
    show.length(middle),
    show.length(box.top),
    show.length(height),
    show.length(box.bottom),
  ]);
  const edge = from === 'left' ? 'Left edge' : 'Right edge';
  return { heads: ['No.', 'Frame', 'Outside', edge, 'Middle', 'Top', 'Middle, up', 'Bottom'], rows };
}

export function wallSection(wall: WallPlan, words: Words, showing: Showing): Section {
  const { show } = words;
  const rows: Row[] = [
    { label: 'Centre line', value: show.length(wall.centre), how: 'above the floor' },
    ...heightRows(wall, words),
    ...stairsRow(wall),
    ...(wall.width === undefined
      ? [
          {
            label: 'Counted from',
            value: wall.from,
            how: wall.before === 0 ? 'edge of the first frame' : 'edge of the wall',
          },
        ]
      : [{ label: 'Across', value: show.length(wall.width), how: acrossSum(wall, showing) }]),
    ...(wall.most === undefined
      ? []
      : [{ label: 'At most', value: String(wall.most), how: 'of these frames in the row, edge to edge of the wall' }]),
    holesRow(wall, words),
  ];
  return { heading: 'On the wall', rows };
}

/** How stairs rise that nobody has measured. */
function stairsRow({ arrangement }: WallPlan): Row[] {
  if (arrangement.kind !== 'stairs' || arrangement.rise !== undefined) return [];
  return [{ label: 'Stairs', value: '7 up for 11 along', how: 'taken, since their rise is not said (common practice, no source): measure a step' }]; // prettier-ignore
}

/** What comes to sit on a hook, or on the rail of a cleat. */
export const SITS: Readonly<Record<HangerKind, string>> = {
  sawtooth: 'teeth',
  'rings and wire': 'wire',
  'rings on hooks': 'ring',
  cleat: 'cleat',
};

/** `the wire sits`, `the teeth sit`. */
export function sits(kind: HangerKind): string {
  return `the ${SITS[kind]} ${kind === 'sawtooth' ? 'sit' : 'sits'}`;
}

function holesRow({ kind, seat }: WallPlan, { show }: Words): Row {
  const label = 'Nail holes';
  if (kind === 'cleat') {
    return {
      label,
      value: 'by the rail',
      how: 'hold the rail level, its bearing edge at the seats, and mark its holes',
    };
  }
  return seat === undefined
    ? {
        label,
        value: 'not known',
        how: `say the hook’s "seat", from its nail hole down to where it takes the ${SITS[kind]}; measure it on your hook`,
      }
    : { label, value: show.length(seat), how: `above the seat, where ${sits(kind)}` };
}

/** Of frames that hang alike one sum says it for all. */
function heightRows({ frames, kind }: WallPlan, { show }: Words): Row[] {
  const what = kind === 'cleat' ? 'Seats on the rail' : 'Hook seats';
  const seen = new Map<string, { readonly frame: HungFrame; readonly numbers: number[] }>();
  for (const frame of frames) {
    const key = [frame.height, frame.size.height, frame.drop].map((mm) => mm.toFixed(6)).join(' ');
    const there = seen.get(key);
    if (there) there.numbers.push(frame.number);
    else seen.set(key, { frame, numbers: [frame.number] });
  }
  return [...seen.values()].map(({ frame, numbers }) => ({
    label: seen.size === 1 ? what : `${what}, ${numbers.length === 1 ? 'frame' : 'frames'} ${listed(numbers)}`,
    value: show.length(frame.hooks[0]?.seat.y ?? NaN),
    how: `middle ${show.length(frame.height)} + height ${show.length(frame.size.height)} / 2 − drop ${show.length(frame.drop)} (${frame.dropFrom})`,
  }));
}

/** Numbers of frames; of many the first and the last. */
export function listed(numbers: readonly number[]): string {
  if (numbers.length > 8) return `${numbers.slice(0, 3).join(', ')}, ... ${numbers.at(-1)}`;
  return numbers.join(', ');
}

/** Spaces and frames from one edge of the wall to the other; what is rounded away lies in the last space. */
function acrossSum({ frames, before, after = 0, width = 0, arrangement, from }: WallPlan, showing: Showing): string {
  const way = from === 'left' ? 'from the left' : 'from the right';
  if (arrangement.kind !== 'row' || frames.length > 12) {
    const [start, , end] = showTogether([before, width - before - after, after], width, showing);
    return `${way}: ${start?.withUnit ?? ''} to the frames, ${end?.withUnit ?? ''} after them`;
  }
  const parts = [
    before,
    ...frames.flatMap(({ size }, index) => (index === 0 ? [size.width] : [arrangement.gap, size.width])),
    after,
  ];
  const shown = showTogether(parts, width, showing);
  return `${way}: ${shown.map(({ text }) => text).join(' + ')} = ${lengthText(width, showing)}`;
}

export function guidanceSection(): Section {
  const what = { centre: 'Height', gap: 'Gaps', reach: 'Off the wall', hanger: 'Rings' } as const;
  return {
    heading: 'What others advise',
    rows: GUIDANCE.map(({ about, words, source }) => ({ label: what[about], value: '', how: `${words} (${source})` })),
  };
}
