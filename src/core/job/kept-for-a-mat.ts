/** What a job without a mat says of one: kept, since the user may come back to it, but without effect. */
import { layersIn } from './layers-in';
import type { Reader } from './reader';
import type { WrittenFreeWindow, WrittenJob, WrittenNode } from './written';
import type { WindowFields } from './turn-window';

/** What only a window in a board can have, as it is told. */
const OF_A_WINDOW = [
  ['size', "the window's size"],
  ['shape', "the window's shape"],
  ['joined', 'what is joined to the window'],
  ['lines', 'the lines on the face'],
] as const;

export function tellKept(written: WrittenJob, reader: Reader): void {
  const kept = layersIn(written).length > 0 ? [] : [...new Set(keptBy(written))];
  const last = kept.pop();
  if (last === undefined) return;
  const list = kept.length === 0 ? last : `${kept.join(', ')} and ${last}`;
  reader.say({
    code: 'kept-for-a-mat',
    severity: 'note',
    at: 'mat.layers',
    message: `Without a mat nothing is made of ${list}; the job keeps it for when there is one.`,
  });
}

function keptBy({ borders = {}, mat, pictures = [], windows, free = [] }: WrittenJob): string[] {
  // The range is for choosing a frame, and says nothing of this one.
  const { range: _range, ...said } = borders;
  return [
    ...(Object.keys(said).length > 0 ? ['the borders'] : []),
    ...(pictures.some(({ overlap }) => overlap !== undefined) ? ['the overlap'] : []),
    ...(mat?.measuredAt === undefined ? [] : ['where sizes are meant']),
    ...(mat?.lines?.length ? ['the lines on the face'] : []),
    ...(windows === undefined ? [] : keptByNode(windows)),
    ...free.flatMap(keptByFree),
  ];
}

function keptByNode(node: WrittenNode): string[] {
  if (typeof node === 'string' || node.kind === 'spread') return [];
  return 'items' in node ? node.items.flatMap(keptByNode) : keptByWindow(node);
}

function keptByFree({ at, ...window }: WrittenFreeWindow): string[] {
  return [...keptByWindow(window), ...(Object.keys(at).length > 0 ? ["the window's place"] : [])];
}

function keptByWindow(window: WindowFields): string[] {
  return OF_A_WINDOW.flatMap(([key, words]) => (window[key] === undefined ? [] : [words]));
}
