/** Lines of what a frame is made of: boards, glazing, moulding or frame, and parts that no shelf holds. */
import { counted } from '../phrases';
import { priceOfArea, priceOfLength, type Money } from '../money';
import { costsOf, type CostLine } from '../pieces/cost';
import type { FrameMoulding } from '../pieces/moulding';
import { stickSum } from '../pieces/moulding-words';
import { isBoard, type Piece } from '../pieces/piece';
import { ofKind } from '../shelf/shelf';
import { lengthText, showLength, sizeText } from '../units';
import { boardLines } from './board-lines';
import type { LinesAsk } from './cost-ask';
import type { CostSlot, PricedLine } from './line';
import type { PartName } from './price-list';
import { exactMm, percentGiven, priceText } from './price-text';

type Line = Omit<PricedLine, 'group'>;

export function materialLines(ask: LinesAsk): Line[] {
  const pieces = ask.made.pieces.filter(({ comesWithFrame }) => !comesWithFrame);
  const of = (kind: Piece['kind']) => pieces.filter((piece) => piece.kind === kind);
  const backings = of('backing');
  const sold = backings.filter(({ material }) => isOnShelf(ask, material));
  return [
    ...of('glazing').map((piece) => pieceLine(ask, piece, 'glazing')),
    ...(of('spacer').some((piece) => !isBoard(piece)) ? [partLine(ask, 'spacer', 'spacer', 'Spacer')] : []),
    ...boardLines(ask, pieces.filter(isBoard)),
    ...sold.map((piece) => pieceLine(ask, piece, 'backing')),
    ...backings
      .filter((piece) => !sold.includes(piece))
      .map(({ material }) => partLine(ask, 'backing', 'backing', `Backing of ${material}`)),
    ...(of('dust cover').length > 0 ? [partLine(ask, 'dust cover', 'dust cover', 'Dust cover')] : []),
    frameLine(ask),
  ];
}

function isOnShelf({ shelf }: LinesAsk, material: string): boolean {
  return ofKind(shelf, 'board').some(({ name }) => name.toLowerCase() === material.toLowerCase());
}

function pieceLine(ask: LinesAsk, piece: Piece, slot: CostSlot): Line {
  const [line] = costsFor(ask, [piece], ask.made.moulding);
  return toLine(line, slot, counted(piece.count, 'piece'));
}

function costsFor({ job, shelf, showing, prices, moulding }: LinesAsk, pieces: readonly Piece[], frame: FrameMoulding) {
  const told = (amount: Money) => priceText(amount, prices.currency);
  const parts = { pieces, frame, ...(moulding ? { moulding } : {}) };
  return costsOf(job, shelf, parts, showing, told).lines;
}

function toLine(line: CostLine | undefined, slot: CostSlot, quantity: string): Line {
  const { what = '', basis = '', amount } = line ?? {};
  return { slot, what, quantity, basis, ...(amount ? { amount } : {}) };
}

/** A frame of the shelf by the piece, or the moulding by the length that is charged. */
function frameLine(ask: LinesAsk): Line {
  const { made, moulding, showing } = ask;
  const { length, sum } = mouldingCharged(ask);
  const [line] = costsFor(ask, [], { ...made.moulding, stick: length });
  if (!moulding) {
    const bought = toLine(line, 'frame', '1 frame');
    return bought.amount || isFrameKnown(ask) ? bought : { ...bought, lacks: { in: 'job', at: 'frame.name' } };
  }
  const found = toLine(line, 'frame', lengthText(length, showing));
  return found.amount ? { ...found, basis: `${found.basis}: ${sum}` } : found;
}

/** Whether what the job calls its frame is one of the shelf, so that only the price is missing. */
function isFrameKnown({ job: { frame }, shelf }: LinesAsk): boolean {
  return ofKind(shelf, 'frame').some(({ name }) => name.toLowerCase() === frame.name?.toLowerCase());
}

/** Without the last bits of doubles; `sum` as one would follow it with a pencil. */
function mouldingCharged({ made: { moulding }, layout, prices: { mitreWaste }, showing }: LinesAsk) {
  const plain = (mm: number) => showLength(mm, showing).text;
  const { width, height } = layout.frame.rabbet;
  const round = `2 x (${plain(width)} + ${plain(height)})`;
  const exact = (mm: number) => exactMm(mm).toNumber();
  switch (mitreWaste.rule) {
    case 'as cut':
      return { length: exact(moulding.stick), sum: `${stickSum(moulding, showing)}, as it is cut` };
    case '8 x face':
      return { length: exact(moulding.ruleOfThumb), sum: `${round} + 8 x ${plain(moulding.section.width)}` };
    case 'percent': {
      const { percent } = mitreWaste;
      const length = exactMm(2 * (width + height))
        .times(percent.plus(100))
        .div(100);
      return { length: length.toNumber(), sum: `${round} and ${percentGiven(percent)} for the mitres` };
    }
  }
}

/** By the frame, or by the length round the frame size, or by its area. */
export function partLine({ prices, layout, showing }: LinesAsk, slot: CostSlot, name: PartName, what: string): Line {
  const price = prices.parts.get(name);
  const line = { slot, what, quantity: '1 frame' };
  if (!price) {
    return {
      ...line,
      basis: `no row “part” for ${name} in the price list`,
      lacks: { in: 'prices', what: 'part', name },
    };
  }
  const { amount, per } = price;
  const { blank } = layout.frame;
  const told = `at ${priceText(amount, prices.currency)} per ${per}`;
  if (per === 'frame') return { ...line, basis: told, amount };
  if (per === 'm2' || per === 'sq ft') {
    const area = priceOfArea({ amount: amount.times(exactMm(blank.width)), per }, exactMm(blank.height).toNumber());
    return { ...line, basis: `area of ${sizeText(blank, showing)} ${told}`, ...(area ? { amount: area } : {}) };
  }
  const round = exactMm(2 * (blank.width + blank.height)).toNumber();
  const long = priceOfLength({ amount, per }, round);
  return {
    ...line,
    quantity: lengthText(round, showing),
    basis: `once round ${sizeText(blank, showing)} ${told}`,
    ...(long ? { amount: long } : {}),
  };
}
