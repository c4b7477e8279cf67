/** Whether pieces can stay where the user has put them: on their sheet, clear of each other, and parted by straight cuts. */
import { listed } from '../phrases';
import type { Problem } from '../problem';
import { lengthText, type Showing } from '../units';
import type { Pin, SheetsAsk } from './ask';
import { partingsOf } from './pinned';
import { usablePart } from './place-piece';

/** What doubles lose on their way, mm. */
const LAST_BITS = 1e-6;

/** The first thing that is wrong with each pin; none where all can stay. `at` is `pins[n]`. @param showing in which lengths are told. */
export function checkPins(ask: SheetsAsk, showing: Showing): Problem[] {
  const { pins = [] } = ask;
  const problems = pins.flatMap((pin, index) => {
    const why = wrongWith(ask, pin, index, showing);
    return why === undefined ? [] : [fault(ask, pin, index, why)];
  });
  const [first] = pins;
  if (problems.length > 0 || !first || partingsOf(ask, 0).length > 0) return problems;
  const last = pins.length - 1;
  return [fault(ask, pins[last] ?? first, last, 'can’t be parted from the others by cuts from edge to edge; put it in line with one of them')]; // prettier-ignore
}

function fault({ pieces }: SheetsAsk, { piece }: Pin, index: number, why: string): Problem {
  const name = pieces[piece]?.id ?? 'This piece';
  return {
    code: 'pin-cannot-stay',
    severity: 'error',
    at: `pins[${index}]`,
    message: `“${name}” ${why}.`,
    value: name,
  };
}

function wrongWith(ask: SheetsAsk, pin: Pin, index: number, showing: Showing): string | undefined {
  const { pins = [], pieces, stock, kerf } = ask;
  const [wanted, sheet] = [pieces[pin.piece], stock[pin.stock]];
  if (!wanted || !sheet) return 'is no longer asked for, or its sheet is not';
  if (pins.slice(0, index + 1).filter(({ piece }) => piece === pin.piece).length > wanted.count)
    return 'is put in more places than there are of it';
  if (pins.some((other) => other.sheet === pin.sheet && other.stock !== pin.stock))
    return 'lies on a sheet of another size than its neighbours';
  const sheetsBefore = new Set(pins.filter((other) => other.stock === pin.stock).map((other) => other.sheet));
  if (sheet.count !== undefined && sheetsBefore.size > sheet.count)
    return 'needs more sheets of this size than there are';
  if (pin.turned && !wanted.mayTurn) return 'may not be turned: grain or pattern runs one way';
  const box = boxOf(ask, pin);
  const room = usablePart(sheet, ask);
  const beyond = [
    { side: 'left', by: room.left - box.left },
    { side: 'right', by: box.right - room.right },
    { side: 'lower', by: room.bottom - box.bottom },
    { side: 'upper', by: box.top - room.top },
  ].filter(({ by }) => by > LAST_BITS);
  if (beyond.length > 0) {
    const told = listed(beyond.map(({ side, by }) => `${lengthText(by, showing)} over the ${side} edge`));
    return `reaches ${told} of ${room.left > 0 ? 'what trimming leaves of ' : ''}its sheet`;
  }
  const meets = pins.slice(0, index).some((other) => other.sheet === pin.sheet && gapBetween(box, boxOf(ask, other)) < kerf - LAST_BITS); // prettier-ignore
  return meets ? 'lies over another that stays, or nearer to it than the saw is wide' : undefined;
}

interface Placed {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

function boxOf({ pieces }: SheetsAsk, { piece, turned, left, bottom }: Pin): Placed {
  const { width = 0, height = 0 } = pieces[piece] ?? {};
  return { left, bottom, right: left + (turned ? height : width), top: bottom + (turned ? width : height) };
}

function gapBetween(one: Placed, other: Placed): number {
  return Math.max(other.left - one.right, one.left - other.right, other.bottom - one.top, one.bottom - other.top);
}
