/** Everything turned by a quarter: planned one way only, whichever way it is asked, so that turning changes nothing. */
import type { Box } from '../geometry/box';
import type { SheetsAsk } from './ask';
import type { SheetPlan } from './plan';

/** True of that of the two ways round of one ask that is planned the other way. */
export function isPlannedTurned({ stock, pieces }: SheetsAsk): boolean {
  const sides = [...stock, ...pieces];
  const first = sides.find(({ width, height }) => width !== height);
  return first !== undefined && first.width > first.height;
}

export function turnedAsk(ask: SheetsAsk): SheetsAsk {
  const turn = <T extends { readonly width: number; readonly height: number }>(one: T): T => ({
    ...one,
    width: one.height,
    height: one.width,
  });
  const pins = ask.pins?.map((pin) => ({ ...pin, left: pin.bottom, bottom: pin.left }));
  return { ...ask, pieces: ask.pieces.map(turn), stock: ask.stock.map(turn), ...(pins ? { pins } : {}) };
}

/** A plan of the turned ask as one of the ask itself. */
export function turnedBack(plan: SheetPlan, ask: SheetsAsk, turned: SheetsAsk): SheetPlan {
  const box = ({ left, bottom, right, top }: Box): Box => ({ left: bottom, bottom: left, right: top, top: right });
  return {
    ...plan,
    sheets: plan.sheets.map(({ stock, pieces, left, steps }) => ({
      stock: ask.stock[turned.stock.indexOf(stock)] ?? stock,
      pieces: pieces.map((one) => ({
        ...one,
        piece: ask.pieces[turned.pieces.indexOf(one.piece)] ?? one.piece,
        box: box(one.box),
      })),
      left: left.map(box),
      steps: steps.map((step) => ({
        ...step,
        part: box(step.part),
        way: step.way === 'upright' ? ('lying' as const) : ('upright' as const),
      })),
    })),
  };
}
