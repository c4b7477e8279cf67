/** Reads how frames stand on a wall. */
import { defaultLength } from './defaults';
import type { Reader, Limits } from './reader';
import type { Wall, WallArrangement, WallFrame } from './wall';
import type { WrittenLength } from './written';
import { MOST_FRAMES, type WALL_ARRANGEMENTS, type WrittenWall, type WrittenWallFrame } from './written-wall';

/** No wall is longer, mm. */
const LONGEST_WALL = 100_000;

export function readWall(written: WrittenWall, reader: Reader): Wall {
  const frames = readFrames(written.frames ?? [{}], reader);
  const kind = written.arrangement ?? (frames.length > 1 ? 'row' : 'one');
  tellUnused(written, kind, reader);
  if (kind === 'one' && frames.length > 1) tellSeveral(frames.length, reader);
  if (kind === 'group') tellInOnePlace(written.frames ?? [{}], reader);
  const width = length(reader, written.width, 'wall.width', 'Width of the wall', { above: true });
  const height = length(reader, written.height, 'wall.height', 'Height of the wall', { above: true });
  const offset = length(reader, written.offset, 'wall.offset', 'Distance of the first frame');
  const furniture = length(reader, written.furniture, 'wall.furniture', 'Height of the furniture');
  const centre = length(reader, written.centre, 'wall.centre', 'Height of the centre line', { above: true });
  return {
    ...(width === undefined ? {} : { width }),
    ...(height === undefined ? {} : { height }),
    centre: centre ?? defaultLength('wallCentre', reader.units),
    from: written.from ?? 'left',
    ...(offset === undefined ? {} : { offset }),
    arrangement: readArrangement(written, kind, frames.length, reader),
    ...(furniture === undefined ? {} : { furniture }),
    frames,
  };
}

type Kind = (typeof WALL_ARRANGEMENTS)[number];

function readArrangement(written: WrittenWall, kind: Kind, count: number, reader: Reader): WallArrangement {
  const usual = defaultLength('wallGap', reader.units);
  const gap = length(reader, written.gap, 'wall.gap', 'Gap between frames') ?? usual;
  switch (kind) {
    case 'grid':
      return {
        kind,
        columns: written.columns ?? Math.ceil(Math.sqrt(count)),
        columnGap: length(reader, written.columnGap, 'wall.columnGap', 'Gap between columns') ?? gap,
        rowGap: length(reader, written.rowGap, 'wall.rowGap', 'Gap between rows') ?? gap,
      };
    case 'stairs':
      return readStairs(written, gap, reader);
    case 'group':
      return { kind, gap };
    default:
      return { kind: 'row', gap, align: written.align ?? 'centre' };
  }
}

/** Keys that only some arrangements ask for. */
export const WALL_ASKED = {
  gap: ['row', 'grid', 'stairs', 'group'],
  columnGap: ['grid'],
  rowGap: ['grid'],
  columns: ['grid'],
  align: ['row'],
  run: ['stairs'],
  rise: ['stairs'],
} as const satisfies Readonly<Record<string, readonly Kind[]>>;

function tellUnused(written: WrittenWall, kind: Kind, reader: Reader): void {
  for (const [key, kinds] of Object.entries(WALL_ASKED) as [string, readonly Kind[]][]) {
    if (written[key as keyof WrittenWall] === undefined || kinds.includes(kind)) continue;
    reader.say({
      code: 'wall-setting-not-used',
      severity: 'note',
      at: `wall.${key}`,
      message: `The arrangement "${kind}" does not ask for "${key}", which belongs to ${kinds.map((one) => `"${one}"`).join(' and ')}.`,
      fix: { label: 'Take it out', edits: [{ at: `wall.${key}`, value: undefined }] },
    });
  }
}

function tellSeveral(count: number, reader: Reader): void {
  reader.say({
    code: 'wall-holds-several',
    at: 'wall.arrangement',
    message: `The arrangement is "one", and there are ${count} frames; take "row", "grid", "stairs" or "group".`,
    value: String(count),
    limit: '1',
    remedy: 'a row',
    fix: { label: 'Hang them in a row', edits: [{ at: 'wall.arrangement', value: 'row' }] },
  });
}

function tellInOnePlace(frames: readonly WrittenWallFrame[], reader: Reader): void {
  frames.forEach(({ edge, count = 1 }, index) => {
    if (edge === undefined || count === 1) return;
    reader.say({
      code: 'group-frames-in-one-place',
      at: `wall.frames[${index}].count`,
      message: `${count} frames of the group have one and the same edge, and would hang in one another; say each by itself with an edge of its own, or leave the edge out, and they hang one after another.`,
      value: String(count),
      limit: '1',
      remedy: 'a count of 1, or no edge',
    });
  });
}

function readFrames(written: readonly WrittenWallFrame[], reader: Reader): WallFrame[] {
  const total = written.reduce((sum, { count = 1 }) => sum + count, 0);
  if (total > MOST_FRAMES) {
    reader.say({
      code: 'too-many-frames',
      at: 'wall.frames',
      message: `There are ${total} frames; a wall takes ${MOST_FRAMES} at most here.`,
      value: String(total),
      limit: String(MOST_FRAMES),
    });
  }
  return written.flatMap((frame, index) => {
    const read = readFrame(frame, `wall.frames[${index}]`, reader);
    return Array.from({ length: total > MOST_FRAMES ? 1 : (frame.count ?? 1) }, () => read);
  });
}

function readFrame(written: WrittenWallFrame, at: string, reader: Reader): WallFrame {
  const { title = '', size, hooks } = written;
  const of = (
    key: 'drop' | 'hooksApart' | 'depth' | 'edge' | 'centre',
    name: string,
    limits?: Omit<Limits, 'name'>,
  ) => {
    const value = length(reader, written[key], `${at}.${key}`, name, limits);
    return value === undefined ? {} : { [key]: value };
  };
  const weight = reader.optionalMass(written.weight, `${at}.weight`, 'Weight of the frame');
  return {
    at,
    title,
    ...(size === undefined ? {} : { size: reader.size(size, `${at}.size`, 'the frame') }),
    ...of('drop', 'Distance of the hook from the top'),
    ...(hooks === undefined ? {} : { hooks }),
    ...of('hooksApart', 'Distance between the hooks', { above: true }),
    ...(weight === undefined ? {} : { weight }),
    ...of('depth', 'Depth of the frame', { above: true }),
    ...of('edge', 'Edge of the frame'),
    ...of('centre', 'Height of its middle', { above: true }),
  };
}

function length(
  reader: Reader,
  written: WrittenLength | undefined,
  at: string,
  name: string,
  limits: Omit<Limits, 'name'> = {},
): number | undefined {
  return reader.optionalLength(written, at, { name, least: 0, most: LONGEST_WALL, ...limits });
}

/** What is left out is taken as it usually is, which is said: no two stairs are alike. */
function readStairs(written: WrittenWall, gap: number, reader: Reader): WallArrangement {
  const run = length(reader, written.run, 'wall.run', 'Run of the stairs', { above: true });
  const rise = length(reader, written.rise, 'wall.rise', 'Rise of the stairs', { least: -LONGEST_WALL });
  if (rise === undefined) {
    reader.say({
      code: 'stairs-not-measured',
      severity: 'note',
      at: 'wall.rise',
      message:
        'How the stairs rise is not said; 7 up for 11 along is taken (common practice, no source). Measure one step, its height and how far it goes in.',
      remedy: 'say rise and run',
    });
  }
  return { kind: 'stairs', gap, ...(run === undefined ? {} : { run }), ...(rise === undefined ? {} : { rise }) };
}
