/** Labels read back by an independent reader: one for each piece, whole names, and each within its own crosses. */
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/core/geometry/box';
import { sizeText } from '../../../src/core/units';
import { makeSheetPapers } from '../../../src/outputs/sheets/sheet-papers';
import { fonts } from '../contexts';
import { boxOfWords, crossedWords, overlappingWords } from '../crossed-words';
import { readPdf, type ReadPage } from '../read-pdf';
import { ask, CASES, type Case } from './plans';

async function pagesOf(one: Case): Promise<readonly ReadPage[]> {
  const { files } = await makeSheetPapers(one.plans, 'show', ask(one, ['labels']), { fonts });
  return readPdf(files[0]!.bytes).pages;
}

/** Between four crosses, row by row from the upper left; as many as have words. */
function cellsOf({ strokes, words }: ReadPage): string[] {
  const marks = strokes.filter(({ width }) => Math.abs(width - 0.15) < 0.001);
  const middle = (way: 'x' | 'y') => {
    const lying = marks.filter(({ from, to }) => Math.abs(from.y - to.y) < 1e-6 === (way === 'x'));
    const all = lying.map(({ from, to }) => (from[way] + to[way]) / 2);
    return [...new Set(all.map((at) => at.toFixed(2)))].map(Number).toSorted((a, b) => a - b);
  };
  const [xs, ys] = [middle('x'), middle('y').toReversed()];
  const cells = ys.slice(0, -1).flatMap((top, row) => xs.slice(0, -1).map((left, column): Box => ({ left, top, right: xs[column + 1]!, bottom: ys[row + 1]! }))); // prettier-ignore
  return cells.flatMap((cell) => {
    const inside = words.filter(({ at }) => at.x > cell.left && at.x < cell.right && at.y > cell.bottom && at.y < cell.top);
    for (const word of inside) {
      const box = boxOfWords(word);
      expect(Math.min(box.left - cell.left, cell.right - box.right, box.bottom - cell.bottom, cell.top - box.top)).toBeGreaterThan(2); // prettier-ignore
    }
    return inside.length === 0 ? [] : [inside.map(({ text }) => text).join(' ').replace(/\u2044/g, '/')];
  }); // prettier-ignore
}

const packed = (text: string) => text.replace(/\s/g, '');

describe.each(CASES)('labels of %s', (_, one) => {
  it('are one for each piece, in the order of cutting, with all that names it', async () => {
    const pages = await pagesOf(one);
    const cells = pages.flatMap(cellsOf);
    const jobs = new Set(
      one.plans.boards.flatMap(({ ask }) => ask.pieces.flatMap(({ from }) => (from ? [from.job] : []))),
    );
    const pieces = one.plans.boards.flatMap(({ board, plan }) => plan.sheets.flatMap((sheet, index) => sheet.pieces.map((piece) => ({ ...piece, board, sheet: index + 1 })))); // prettier-ignore
    expect(cells).toHaveLength(pieces.length);
    for (const [index, { piece, number, board, sheet }] of pieces.entries()) {
      const cell = packed(cells[index]!);
      expect(cells[index]!.split(' ')).toContain(String(number));
      const { from } = piece;
      const layer = from?.layer === undefined ? '' : `layer ${from.layer} of ${from.layers}`;
      const windows = (from?.windows ?? []).map(({ name }) => name).join(', ');
      for (const said of [
        from?.name ?? piece.id,
        from ? `${jobs.size > 1 ? from.job + 1 : ''}${from.title}` : '',
        sizeText(piece, one.showing),
        board,
        `sheet ${sheet}`,
        layer,
        windows,
        'top',
        from?.kind === 'glazing' ? 'comes off before framing' : 'label on the back',
      ]) {
        // prettier-ignore
        expect(cell).toContain(packed(said));
      }
    }
  });

  it('lie clear of crosses and of one another', async () => {
    const pages = await pagesOf(one);
    expect(pages.flatMap(crossedWords)).toEqual([]);
    expect(pages.flatMap(overlappingWords)).toEqual([]);
    for (const page of pages)
      for (const word of page.words) {
        const { left, right, bottom, top } = boxOfWords(word);
        expect(Math.min(left, bottom, page.width - right, page.height - top)).toBeGreaterThan(11.5);
      }
  });
});
