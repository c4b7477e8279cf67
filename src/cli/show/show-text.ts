/** A show's plan as text for the terminal. */
import { isHung } from '../../core/show/print-list';
import type { Place, ShowPlan } from '../../core/show/plan';
import {
  askedText,
  chosenText,
  costHead,
  fewestText,
  PLACE_HEADS,
  placeCells,
  titleText,
  toBuyCells,
  TRADE_OFF_HEADS,
  tradeOffCells,
  whyText,
} from '../../core/show/show-words';
import { columns, wrap } from '../print/text';

export function showText(plan: ShowPlan, width: number): string {
  const blocks = [
    wrap(askedText(plan), width),
    tradeOff(plan, width),
    [...wrap(fewestText(plan), width), ...wrap(chosenText(plan), width)],
    places(plan, width),
    without(plan, 'own', 'In frames of their own', width),
    without(plan, 'left', 'Without a frame', width),
    toBuy(plan, width),
  ];
  const text = blocks.filter((lines) => lines.length > 0).map((lines) => `${lines.join('\n')}\n`);
  return text.join('\n');
}

function tradeOff(plan: ShowPlan, width: number): string[] {
  const [most, holds, saves, frames] = TRADE_OFF_HEADS;
  const rows = plan.tradeOff.map((row) => tradeOffCells(row, plan));
  return columns([[most, holds, costHead(plan), saves, frames], ...rows], { indent: 0, width, right: [1, 2, 3] });
}

function places(plan: ShowPlan, width: number): string[] {
  const rows = plan.places.filter(isHung).map((place) => placeCells(place, plan).map(short));
  return rows.length === 0
    ? []
    : columns([PLACE_HEADS, ...rows], { indent: 0, width: Math.max(width, 1000), right: [4, 5, 6, 7] });
}

/** No title makes the table wider than a screen. */
function short(text: string): string {
  return text.length > 32 ? `${text.slice(0, 31)}…` : text;
}

function without(plan: ShowPlan, state: Place['state'], head: string, width: number): string[] {
  const rows = plan.places.flatMap((place) =>
    place.state === state && !isHung(place)
      ? [[short(titleText(place)), state === 'own' ? '' : whyText(place, plan)]]
      : [],
  );
  if (rows.length === 0) return [];
  return [`${head}:`, ...columns(rows, { indent: 2, width })];
}

function toBuy(plan: ShowPlan, width: number): string[] {
  const rows = toBuyCells(plan);
  return rows.length === 0 ? [] : ['Frames:', ...columns(rows, { indent: 2, width, right: [0] })];
}
