/** Pins that outlast changes of jobs and stock, where they are refused, and how the drawing of sheets fits its view. */
import { describe, expect, it } from 'vitest';
import type { BoardAsk } from '../../src/core/sheets/board-asks';
import { planBoard } from '../../src/core/sheets/planned-board';
import { pinnedPieces, putPin, withPins, type HeldPin } from '../../src/renderer/edits/pins';
import { fitSheets } from '../../src/renderer/sheets/fit-sheets';
import { readKeptPlan } from '../../src/renderer/sheets/kept-plan';
import { linesThatFit } from '../../src/renderer/sheets/labels';
import { readChoices } from '../../src/renderer/sheets/sheet-choices';
import { askOf, inches, piece, sheet } from '../core/sheets/sheet-asks';

const WHOLE = [sheet(32, 40), sheet(20, 24, { id: 'small', kind: 'remnant', cost: 0, count: 1 })];
const SHOWING = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const boardOf = (ask: BoardAsk['ask']): BoardAsk => ({ board: 'Warm white', isPriced: true, ask });
const board = boardOf(askOf([piece(16, 20, 3), piece(8, 10, 2)], WHOLE));

function planOf(asked: BoardAsk) {
  const planned = planBoard(asked, { goOn: () => false });
  if (!planned) throw new Error('there is a plan');
  return planned.plan;
}

/** A 16 x 20 in piece put at a place of the first sheet of a plan. */
function put(asked: BoardAsk, held: readonly HeldPin[], left: number, bottom: number) {
  const { sheets } = planOf(asked);
  const [first] = sheets;
  const one = first!.pieces.find(({ piece: { id } }) => id === '16 x 20')!;
  const place = { stock: first!.stock, onSheet: first!.pieces, turned: false, left: inches(left), bottom: inches(bottom) }; // prettier-ignore
  return putPin(asked, held, { piece: one, ...place }, pinnedPieces(sheets, asked.board, held), SHOWING);
}

function heldOf(result: ReturnType<typeof put>): readonly HeldPin[] {
  if ('wrong' in result) throw new Error(result.wrong);
  return result.held;
}

describe('a pin', () => {
  it('stays in the plan where it was put', () => {
    const held = heldOf(put(board, [], 8, 0));
    const [asked] = withPins([board], held).asks;
    const { sheets } = planOf(asked!);
    const pinned = sheets.flatMap(({ pieces }) => pieces.filter((one) => one.pinned));
    expect(pinned).toHaveLength(1);
    expect([pinned[0]!.box.left, pinned[0]!.box.bottom]).toEqual([inches(8), 0]);
    expect([...pinnedPieces(sheets, 'WARM WHITE', held)]).toEqual([[pinned[0], held[0]]]);
  });

  it('is known again when the lists of pieces and stock are in another order', () => {
    const held = heldOf(put(board, [], 8, 0));
    const { pieces, stock } = board.ask;
    const other = boardOf({
      ...board.ask,
      pieces: [piece(5, 7, 1), ...pieces.toReversed()],
      stock: stock.toReversed(),
    });
    const [asked] = withPins([other], held).asks;
    expect(asked?.ask.pins).toMatchObject([{ piece: 2, stock: 1, left: inches(8), bottom: 0 }]);
  });

  it.each([
    ['its piece is gone', boardOf(askOf([piece(8, 10, 2)], WHOLE))],
    ['its piece has another size', boardOf(askOf([piece(17, 20, 3)], WHOLE))],
    ['its sheet is gone', boardOf(askOf([piece(16, 20, 3)], [sheet(40, 60)]))],
    ['its sheet is used up', boardOf(askOf([piece(16, 20, 3)], [sheet(32, 40, { count: 0 }), sheet(40, 60)]))],
    ['the trim reaches over it', boardOf(askOf([piece(16, 20, 3)], WHOLE, { trim: 5 }))],
  ])('waits while %s, and holds again after', (_, changed) => {
    const held = heldOf(put(board, [], 8, 0));
    expect(withPins([changed], held)).toMatchObject({ asks: [{ ask: expect.not.objectContaining({ pins: expect.anything() }) as unknown }], waiting: held }); // prettier-ignore
    expect(withPins([board], held).waiting).toEqual([]);
  });

  it.each([
    ['beyond the sheet', 20, 0, 'reaches 4 in over the right edge of its sheet'],
    ['below it', 8, -1, 'reaches 1 in over the lower edge of its sheet'],
    ['beyond two edges', -1.5, 21, 'reaches 1 1/2 in over the left edge and 1 in over the upper edge of its sheet'],
  ])('is refused %s', (_, left, bottom, words) => {
    expect(put(board, [], left, bottom)).toEqual({ wrong: `“16 x 20” ${words}.` });
  });

  it('is refused over another on the same sheet, and moves with its own pin', () => {
    const held = heldOf(put(board, [], 8, 0));
    const [asked] = withPins([board], held).asks;
    const plan = planOf(asked!);
    const first = plan.sheets.find(({ pieces }) => pieces.some((one) => one.pinned))!;
    const [own, other] = [first.pieces.find((one) => one.pinned)!, plan.sheets.flatMap((one) => one.pieces).find((one) => !one.pinned)!]; // prettier-ignore
    const place = { stock: first.stock, onSheet: first.pieces, turned: false, left: inches(9), bottom: 0 };
    const pinned = pinnedPieces(plan.sheets, board.board, held);
    expect(putPin(board, held, { ...place, piece: other }, pinned, SHOWING)).toHaveProperty('wrong');
    const moved = putPin(board, held, { ...place, piece: own }, pinned, SHOWING);
    expect(moved).toEqual({ held: [{ ...held[0], left: inches(9) }] });
  });

  it('moves where there is no other copy, in what is asked with the pin already', () => {
    const single = boardOf(askOf([piece(16, 20, 1)], [sheet(32, 40)]));
    const held = heldOf(put(single, [], 8, 0));
    const [asked] = withPins([single], held).asks;
    const moved = put(asked!, held, 9, 1);
    expect(moved).toEqual({ held: [{ ...held[0], left: inches(9), bottom: inches(1) }] });
  });

  it('holds the one of two copies that it was put on, though the other lies alike on another sheet', () => {
    // Of 16 x 20 in one comes from a sheet of 20 x 24 in.
    const apart = boardOf(askOf([piece(16, 20, 2)], [sheet(20, 24)]));
    const { sheets } = planOf(apart);
    const [one, other] = sheets.map(({ pieces }) => pieces[0]!);
    const { left, bottom } = one!.box;
    const place = { stock: sheets[0]!.stock, turned: one!.turned, left, bottom };
    const first = heldOf(putPin(apart, [], { ...place, piece: one!, onSheet: sheets[0]!.pieces }, new Map(), SHOWING));
    const [asked] = withPins([apart], first).asks;
    const pinned = planOf(asked!).sheets;
    const free = pinned.flatMap(({ pieces }) => pieces).find((piece) => !piece.pinned)!;
    expect([free.box, free.turned]).toEqual([other!.box, other!.turned]);
    expect(pinnedPieces(pinned, apart.board, first).has(free)).toBe(false);
    // Pinned too, each has its own pin, and either is moved by itself.
    const on = pinned.find(({ pieces }) => pieces.includes(free))!;
    const both = heldOf(putPin(asked!, first, { ...place, piece: free, onSheet: on.pieces }, pinnedPieces(pinned, apart.board, first), SHOWING)); // prettier-ignore
    expect(new Set(both.map((pin) => pin.sheet)).size).toBe(2);
    const [again] = withPins([apart], both).asks;
    const plan = planOf(again!).sheets;
    const holds = pinnedPieces(plan, apart.board, both);
    expect([...holds.values()].sort((a, b) => a.sheet - b.sheet)).toEqual(both);
    const second = plan[1]!.pieces[0]!;
    const moved = heldOf(putPin(again!, both, { ...place, left: left + inches(1), piece: second, onSheet: plan[1]!.pieces }, holds, SHOWING)); // prettier-ignore
    expect(moved).toHaveLength(2);
    expect(moved).toContain(both.find((pin) => pin !== holds.get(second)));
  });
});

describe('the drawing of sheets', () => {
  const around = { heading: 20, caption: 30, gap: 10, narrowest: 100, least: 0.2 };
  const one = { width: 800, height: 1200 };

  it('is as large as lets all be seen', () => {
    // 20 + 30 + 1200 s = 650 in height, 800 s in width: 0.5.
    expect(fitSheets([[one]], { width: 1000, height: 650 }, around)).toBeCloseTo(0.5, 3);
    // Two beside one another need 2 x 800 s + 10 in width: 990 / 1600. One above the other they would need 2500 s + 110 in height.
    expect(fitSheets([[one], [one]], { width: 1000, height: 1000 }, around)).toBeCloseTo(990 / 1600, 3);
    // In a high view they are larger one above the other: (2000 - 10 - 2 x 50) / 2400.
    expect(fitSheets([[one], [one]], { width: 1000, height: 2000 }, around)).toBeCloseTo(1890 / 2400, 3);
  });

  it('is scrolled rather than drawn too small', () => {
    expect(fitSheets([Array.from({ length: 50 }, () => one)], { width: 500, height: 300 }, around)).toBe(0.2);
  });
});

describe('a label', () => {
  const lines = [{ text: '12' }, { text: 'Sea chart of the harbour' }, { text: '16 x 20 in', isSize: true }];

  it('has its names whole or not at all, and all of its numbers that there is room for', () => {
    expect(linesThatFit(lines, { width: 300, height: 60 }, 12)).toEqual(lines.map(({ text }) => text));
    // (80 - 7.2) / 6.72 = 10.8 letters.
    expect(linesThatFit(lines, { width: 80, height: 60 }, 12)).toEqual(['12', '16 x 20 in']);
    // 6 letters: the size goes on two lines, of which there is room for both or for none.
    expect(linesThatFit(lines, { width: 50, height: 80 }, 12)).toEqual(['12', '16 x', '20 in']);
    expect(linesThatFit(lines, { width: 50, height: 55 }, 12)).toEqual(['12', '16 x', '20 in']);
    expect(linesThatFit(lines, { width: 300, height: 10 }, 12)).toEqual([]);
  });
});

describe('choices that were kept', () => {
  it('are as usual where nothing was, or nothing that can be read', () => {
    for (const text of [null, '', '{', '[]', '{"aim":"most","kerf":-1,"seconds":7,"upright":"all"}'])
      expect(readChoices(text)).toMatchObject({ aim: 'cost', fallouts: true, upright: [], seconds: 5 });
  });

  it('are read one by one: what can’t be is left out alone', () => {
    const read = readChoices('{"aim":"sheets","kerf":3.2,"trim":900,"stages":2.5,"longestCut":1500,"keepStrip":600}');
    expect(read).toMatchObject({ aim: 'sheets', kerf: 3.2, longestCut: 1500, keepStrip: 600 });
    expect([read.trim, read.stages]).toEqual([undefined, undefined]);
  });
});

describe('what is planned together', () => {
  const pin: HeldPin = { board: 'warm white', piece: '0 Mat layer 1 | 1 | 2', stock: 's', sheet: 0, turned: false, left: 1.5, bottom: 0 }; // prettier-ignore
  const kept = {
    jobs: [{ path: '/a.json', title: 'Ferns', copies: 3 }],
    own: { title: 'Chart', copies: 2 },
    pins: [pin],
  };

  it('is read as it was kept, and is nothing where nothing was', () => {
    expect(readKeptPlan(JSON.stringify(kept))).toEqual(kept);
    for (const text of [null, '', '{', '7', 'null', '[]']) expect(readKeptPlan(text)).toEqual({ jobs: [], pins: [] });
  });

  it('is read one by one: what can’t be is left out alone', () => {
    const jobs = [...kept.jobs, ...kept.jobs, { path: '/b.json', title: 'b', copies: 0 }, { path: 3 }, null];
    const pins = [{ ...pin, left: null }, { ...pin, sheet: 0.5 }, { ...pin, turned: 'no' }, pin, {}];
    expect(readKeptPlan(JSON.stringify({ jobs, own: { title: 'Chart' }, pins }))).toEqual({ jobs: kept.jobs, pins: [pin] }); // prettier-ignore
  });
});
