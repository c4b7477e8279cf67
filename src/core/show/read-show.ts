/** Reads a show's list: a table of which each row is one picture. */
import { LARGEST } from '../job/reader';
import { PICTURE_KINDS } from '../job/written';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable } from '../tables/read-table';
import type { Unit } from '../units';
import { SHOW_COLUMNS, type ShowColumn } from './columns';
import { LEAST_PICTURES, MOST_PICTURES, type ShowPicture } from './picture';

type ShowCells = Cells<ShowColumn>;

/**
 * The pictures of a show from comma-separated values; every wrong cell is told with its line and column, all at once.
 *
 * @param unit of bare numbers under headings that give none; undefined: such numbers are refused.
 */
export function readShow(text: string, unit?: Unit): Result<readonly ShowPicture[]> {
  const table = readTable(text, SHOW_COLUMNS);
  if (!table.ok) return table;
  const problems: Problem[] = [...table.problems];
  const pictures = table.value.rows.map((row) => {
    const cells = new Cells(row, table.value, unit);
    const picture = readPicture(cells);
    problems.push(...cells.problems);
    return picture;
  });
  problems.push(...wrongNumber(pictures));
  return problems.some(isError) ? bad(problems) : good(pictures, problems);
}

function readPicture(cells: ShowCells): ShowPicture {
  const sheet = { width: side(cells, 'width'), height: side(cells, 'height') };
  const image = readImage(cells);
  if (image && (image.width > sheet.width || image.height > sheet.height)) {
    const key = image.width > sheet.width ? 'imageWidth' : 'imageHeight';
    cells.wrong('image-larger-than-sheet', key, 'the image is larger than its sheet; the sheet is the whole paper');
  }
  return {
    line: cells.line,
    title: readTitle(cells),
    sheet,
    ...optional('image', image),
    ...optional('kind', cells.word('kind', PICTURE_KINDS)),
    ...optional('overlap', readOverlap(cells)),
    ...optional('thickness', cells.length('thickness', { most: 100 })),
    count: cells.whole('count', 1, MOST_PICTURES) ?? 1,
    ...optional('frame', textOf(cells, 'frame', 200)),
    ...optional('wall', textOf(cells, 'wall', 200)),
    ...optional('note', textOf(cells, 'note', 4000)),
  };
}

function readTitle(cells: ShowCells): string {
  const title = textOf(cells, 'title', 200);
  if (title === undefined) cells.need('title', 'A picture');
  return title ?? '';
}

/** On one line, whatever the cell's own lines. */
function textOf(cells: ShowCells, key: ShowColumn, most: number): string | undefined {
  const text = cells.text(key)?.replace(/\s+/g, ' ');
  if (text !== undefined && text.length > most) {
    cells.wrong('value-too-large', key, `it has ${text.length} characters; at most ${most} are kept`);
  }
  return text;
}

/** NaN after a problem, so that reading can go on. */
function side(cells: ShowCells, key: 'width' | 'height'): number {
  if (cells.text(key) === undefined) cells.need(key, 'A picture');
  return cells.length(key, { most: LARGEST }) ?? NaN;
}

function readImage(cells: ShowCells) {
  const width = cells.length('imageWidth', { most: LARGEST });
  const height = cells.length('imageHeight', { most: LARGEST });
  if (cells.text('imageWidth') === undefined && cells.text('imageHeight') === undefined) return undefined;
  if (cells.text('imageWidth') === undefined) cells.need('imageWidth', 'An image with a height');
  if (cells.text('imageHeight') === undefined) cells.need('imageHeight', 'An image with a width');
  return width === undefined || height === undefined ? undefined : { width, height };
}

/** `covers 1/8 in` and `1/8 in` are positive, `shows 1/4 in` and `-1/4 in` negative. */
function readOverlap(cells: ShowCells): number | undefined {
  const text = cells.text('overlap');
  if (text === undefined) return undefined;
  const worded = /^(covers|shows)\s+(.*)$/i.exec(text);
  const signed = /^[-−]\s*(.*)$/.exec(text);
  const length = cells.lengthIn(worded?.[2] ?? signed?.[1] ?? text, 'overlap', { zero: true, most: 1000 });
  const shows = worded ? worded[1]?.toLowerCase() === 'shows' : signed !== null;
  return length !== undefined && shows && length !== 0 ? -length : length;
}

function wrongNumber(pictures: readonly ShowPicture[]): Problem[] {
  const count = pictures.reduce((sum, one) => sum + one.count, 0);
  if (count < LEAST_PICTURES) {
    return [
      told(
        'show-too-short',
        `The list has ${count === 0 ? 'no picture' : 'one picture'}; a show has ${LEAST_PICTURES} or more.`,
      ),
    ];
  }
  if (count <= MOST_PICTURES) return [];
  return [
    told(
      'show-too-long',
      `The list has ${count} pictures, counted as often as they are there; a show has at most ${MOST_PICTURES}.`,
    ),
  ];
}

function told(code: string, message: string): Problem {
  return { code, severity: 'error', at: '', message };
}

function optional<K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, V>);
}
