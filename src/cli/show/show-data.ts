/** A show's plan as data: lengths in mm, money as exact decimals in text, nothing rounded. */
import type { Cost } from '../../core/show/costs';
import type { Choice, Place, ShowPlan, TradeOffRow } from '../../core/show/plan';
import { isHung } from '../../core/show/print-list';
import { hangsText } from '../../core/show/show-words';
import type { ShelfFrame } from '../../core/shelf/shelf';

export function showData(plan: ShowPlan) {
  const { range, aim, by, counted, notCounted, sizes, leftOut, fewest, tradeOff, chosen, places, toBuy } = plan;
  return {
    lengths: 'mm',
    costs: by === 'money' ? 'money' : 'width and height of frames in mm; no money',
    range,
    aim,
    counted,
    notCounted,
    sizes,
    leftOut: leftOut.map(({ frame, why }) => ({ frame: frame.name, why })),
    fewest,
    tradeOff: tradeOff.map((row) => choiceData(row)),
    chosen: choiceData(chosen),
    pictures: places.map(placeData),
    frames: toBuy.map(({ frame, price, ...counts }) => ({
      ...frameData(frame),
      ...counts,
      ...(price ? { price: costData(price) } : {}),
    })),
  };
}

function choiceData({ cost, bound, saves, ...row }: Choice & Pick<TradeOffRow, 'saves'>) {
  return {
    ...row,
    cost: costData(cost),
    ...(saves ? { saves: costData(saves) } : {}),
    bound: { held: bound.held, cost: costData(bound.cost) },
  };
}

function placeData(place: Place) {
  const { title, line, wall, note } = place.picture;
  const picture = {
    title,
    line,
    copy: place.copy,
    ...(wall === undefined ? {} : { wall }),
    ...(note === undefined ? {} : { note }),
  };
  if (!isHung(place))
    return { ...picture, state: place.state, why: place.why, ...(place.custom ? { custom: place.custom } : {}) };
  const { state, blank, frame, cost, borders, window, outOfRange, depth, written, problems } = place;
  return {
    ...picture,
    state,
    ...(frame ? { frame: frame.name } : {}),
    blank,
    hangs: hangsText(place),
    window,
    borders,
    outOfRange,
    depth,
    ...(cost ? { cost: costData(cost) } : {}),
    job: written,
    problems,
  };
}

function frameData({ name, size }: ShelfFrame) {
  return { frame: name, size };
}

function costData(cost: Cost): string | number {
  return cost.by === 'money' ? cost.amount.toFixed() : cost.length;
}
