/** Reads a shelf from its file: a table of which each row is one thing, told apart by its `kind`. */
import type { Quality } from '../job/package';
import { profileFaults, type Profile } from '../job/profile';
import { LARGEST } from '../job/reader';
import { FRAME_BUILDS, FRAME_CORNERS, FRAME_PARTS } from '../job/written-frame';
import { FIBRES } from '../job/written-material';
import { PRICE_BASES, type Price, type PriceBasis } from '../money';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable } from '../tables/read-table';
import type { Unit } from '../units';
import { SHELF_COLUMNS, type ShelfColumn } from './columns';
import { GLAZING_MATERIALS, SHELF_KINDS, type ShelfItem, type ShelfKind } from './shelf';

type ShelfCells = Cells<ShelfColumn>;

export const MOST_ITEMS = 2000;

/**
 * A shelf from comma-separated values; every wrong cell is told with its line and column.
 *
 * @param unit of bare numbers under headings that give none; undefined: such numbers are refused.
 */
export function readShelf(text: string, unit?: Unit): Result<readonly ShelfItem[]> {
  const table = readTable(text, SHELF_COLUMNS);
  if (!table.ok) return table;
  const problems: Problem[] = [...table.problems];
  const seen = new Map<string, number>();
  const items = table.value.rows.map((row) => {
    const cells = new Cells(row, table.value, unit);
    const item = readItem(cells);
    problems.push(...cells.problems, ...namedBefore(item, row.line, seen));
    return item;
  });
  if (items.length > MOST_ITEMS) {
    problems.push(
      fault('shelf-too-long', '', `The shelf holds ${items.length} things; at most ${MOST_ITEMS} are read.`),
    );
  }
  return problems.some(isError) ? bad(problems) : good(items, problems);
}

function readItem(cells: ShelfCells): ShelfItem {
  const kind = cells.word('kind', SHELF_KINDS) ?? 'frame';
  return READERS[kind](cells);
}

const READERS: Readonly<Record<ShelfKind, (cells: ShelfCells) => ShelfItem>> = {
  frame: readFrame,
  moulding: readMoulding,
  board: (cells) => ({
    kind: 'board',
    ...thing(cells, 'A board'),
    ...optional('colour', cells.name('colour')),
    ...optional('thickness', cells.length('thickness', { most: 50 })),
    ...optional('size', sheetSize(cells)),
    ...optional('quality', quality(cells)),
  }),
  glazing: (cells) => ({
    kind: 'glazing',
    ...thing(cells, 'Glazing'),
    material: cells.word('material', GLAZING_MATERIALS) ?? 'glass',
    uvFilter: cells.yes('uv') ?? false,
    ...optional('antistatic', cells.yes('antistatic')),
    ...optional('thickness', cells.length('thickness', { most: 50 })),
    ...optional('size', sheetSize(cells)),
  }),
  wire: (cells) => ({
    kind: 'wire',
    ...thing(cells, 'A wire'),
    ...optional('load', cells.mass('load')),
    ...optional('breaksAt', cells.mass('breaksAt')),
  }),
  hook: (cells) => ({
    kind: 'hook',
    ...thing(cells, 'A hook'),
    ...optional('load', cells.mass('load')),
    ...optional('seat', cells.length('seat', { zero: true, most: 200 })),
  }),
  ring: (cells) => readHanger(cells, 'ring'),
  sawtooth: (cells) => readHanger(cells, 'sawtooth'),
  cleat: (cells) => readHanger(cells, 'cleat'),
  clip: (cells) => ({
    kind: 'clip',
    ...thing(cells, 'A clip'),
    step: cells.length('step', { zero: true, most: 200 }) ?? missing(cells, 'step', 'A clip'),
  }),
  screw: (cells) => ({
    kind: 'screw',
    ...thing(cells, 'A screw'),
    length: cells.length('length', { most: 300 }) ?? missing(cells, 'length', 'A screw'),
  }),
};

function readFrame(cells: ShelfCells): ShelfItem {
  const width = cells.length('width', { most: LARGEST }) ?? missing(cells, 'width', 'A frame');
  const height = cells.length('height', { most: LARGEST }) ?? missing(cells, 'height', 'A frame');
  const build = cells.word('build', FRAME_BUILDS) ?? 'open back';
  const grooves = cells.lengths('grooves', { most: 500 });
  const measures = section(cells);
  // A float frame has no lip, whatever its moulding has when it is used otherwise.
  tellProfile({ ...measures, ...(build === 'float' ? { lip: undefined } : {}), grooves }, cells);
  return {
    kind: 'frame',
    ...thing(cells, 'A frame'),
    size: { width, height },
    ...measures,
    build,
    corners: cells.word('corners', FRAME_CORNERS) ?? 'mitred',
    comesWith: cells.words('comesWith', FRAME_PARTS),
    grooves,
    ...optional('weight', cells.mass('weight')),
  };
}

function readMoulding(cells: ShelfCells): ShelfItem {
  const measures = section(cells);
  tellProfile(measures, cells);
  return {
    kind: 'moulding',
    ...thing(cells, 'A moulding'),
    ...measures,
    face: measures.face ?? missing(cells, 'face', 'A moulding'),
    ...optional('stick', cells.length('stick', { most: LARGEST })),
    ...optional('weight', cells.mass('weight')),
  };
}

/** Measures of a moulding's profile. */
function section(cells: ShelfCells) {
  return {
    ...optional('face', cells.length('face', { most: 500 })),
    ...optional('lip', cells.length('lip', { most: 200 })),
    ...optional('rabbetDepth', cells.length('rabbetDepth', { most: 500 })),
    ...optional('depth', cells.length('depth', { most: 500 })),
    ...optional('colour', cells.name('colour')),
  };
}

const MEASURES = { width: 'face', depth: 'depth', grooves: 'grooves' } as const;

/** Of measures that could be read. */
function tellProfile(
  { face, ...profile }: Omit<Profile, 'width'> & { readonly face?: number },
  cells: ShelfCells,
): void {
  const written = (['depth', 'rabbetDepth', 'face'] as const).find((key) => cells.text(key) !== undefined) ?? 'grooves';
  for (const { code, of, words } of profileFaults({ width: face, ...profile }, cells.showing(written))) {
    cells.wrong(code, MEASURES[of], words);
  }
}

function readHanger<K extends 'ring' | 'sawtooth' | 'cleat'>(cells: ShelfCells, kind: K) {
  return { kind, ...thing(cells, 'A hanger'), ...optional('load', cells.mass('load')) };
}

/** What everything on the shelf has. */
function thing(cells: ShelfCells, what: string) {
  const name = cells.name('name');
  if (name === undefined) missing(cells, 'name', what);
  return {
    name: name ?? '',
    ...optional('price', readPrice(cells)),
    ...optional('count', cells.whole('count', 0, 1_000_000)),
    ...optional('note', cells.text('note')),
  };
}

/** Bases by what they measure: nobody buys a frame by the metre. */
const BASES: Readonly<Partial<Record<ShelfKind, readonly PriceBasis[]>>> = {
  moulding: ['m', 'ft', 'in'],
  wire: ['m', 'ft', 'in'],
  board: ['sheet', 'm2', 'sq ft'],
  glazing: ['sheet', 'm2', 'sq ft'],
};
const WHOLE: readonly PriceBasis[] = ['each'];

/** What things of a kind may be sold by. */
export function priceBases(kind: ShelfKind): readonly PriceBasis[] {
  return BASES[kind] ?? WHOLE;
}

function readPrice(cells: ShelfCells): Price | undefined {
  const amount = cells.money('price');
  const said = cells.word('per', PRICE_BASES);
  const kind = (cells.text('kind')?.trim().toLowerCase() ?? 'frame') as ShelfKind;
  const bases = priceBases(kind);
  if (amount === undefined) return undefined;
  if (said === undefined && cells.text('per') === undefined && bases.length > 1) {
    cells.need('per', `The price of a ${kind}`);
    return undefined;
  }
  const per = said ?? bases[0] ?? 'each';
  if (!bases.includes(per)) {
    cells.wrong('price-basis-unfit', 'per', `a ${kind} is sold by ${bases.join(', ')}, not by ${per}`);
    return undefined;
  }
  return { amount, per };
}

function sheetSize(cells: ShelfCells) {
  const width = cells.length('width', { most: LARGEST });
  const height = cells.length('height', { most: LARGEST });
  if (width === undefined && height === undefined) return undefined;
  if (width === undefined) return void missing(cells, 'width', 'A sheet with a height');
  if (height === undefined) return void missing(cells, 'height', 'A sheet with a width');
  return { width, height };
}

/** How sound a board is; undefined where no cell says anything of it. */
function quality(cells: ShelfCells): Quality | undefined {
  const said: Quality = {
    ...optional('fibre', cells.word('fibre', FIBRES)),
    ...optional('ph', cells.number('ph', 0, 14)),
    ...optional('reserve', cells.number('reserve', 0, 20)),
    ...optional('photoTested', cells.yes('photoTested')),
  };
  return Object.keys(said).length === 0 ? undefined : said;
}

/** NaN, after saying so, unless the cell holds something wrong that has its problem already. */
function missing(cells: ShelfCells, key: ShelfColumn, what: string): number {
  if (cells.text(key) === undefined) cells.need(key, what);
  return NaN;
}

/** Things are chosen by their names. */
function namedBefore(item: ShelfItem, line: number, seen: Map<string, number>): Problem[] {
  const key = `${item.kind} ${item.name.toLowerCase()}`;
  const before = seen.get(key);
  if (before === undefined || item.name === '') {
    seen.set(key, line);
    return [];
  }
  return [
    fault(
      'name-twice',
      `line ${line}, column name`,
      `Line ${line}: a ${item.kind} called “${item.name.slice(0, 40)}” stands on line ${before} too; give one of them another name.`,
    ),
  ];
}

function optional<K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, V>);
}

function fault(code: string, at: string, message: string): Problem {
  return { code, severity: 'error', at, message };
}
