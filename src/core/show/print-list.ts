/** A show's plan as lists for spreadsheets: every picture with its frame and borders, and the frames to buy. */
import { SIDES } from '../geometry/box';
import { exactText } from '../job/exact-text';
import { moneyText, roundedText } from '../money';
import { csvText, type Cell } from '../tables/csv-text';
import type { Unit } from '../units';
import type { Cost } from './costs';
import type { HungPlace, Place, ShowPlan } from './plan';
import { bordersOf, costHead, frameText, hangsText, titleText, whyText } from './show-words';

const HEADS = [
  'title', 'wall', 'frame', 'hangs', 'frame width', 'frame height', 'window width', 'window height',
  'border left', 'border top', 'border right', 'border bottom', 'cost', 'job', 'note',
] as const; // prettier-ignore

/** Lengths with their unit, to a millionth of a millimetre; `fileOf` names the job's file of a place. */
export function printPlaces(plan: ShowPlan, fileOf: (place: HungPlace) => string): string {
  const rows = plan.places.map((place) => [
    titleText(place),
    place.picture.wall ?? '',
    ...(isHung(place) ? hungCells(place, plan, fileOf) : bareCells(place, plan)),
  ]);
  return csvText([HEADS.map((head) => (head === 'cost' ? costHead(plan).toLowerCase() : head)), ...rows]);
}

export function isHung(place: Place): place is Place & HungPlace {
  return place.state === 'framed' || place.state === 'made to size';
}

function hungCells(place: Place & HungPlace, plan: ShowPlan, fileOf: (place: HungPlace) => string): Cell[] {
  const length = lengthIn(plan.showing.unit);
  const borders = bordersOf(place, plan);
  return [
    frameText(place, plan),
    hangsText(place),
    length(place.blank.width),
    length(place.blank.height),
    length(place.window.width),
    length(place.window.height),
    ...SIDES.map((side) => length(borders[side])),
    place.cost ? costCell(place.cost, plan.showing.unit) : '',
    fileOf(place),
    place.picture.note ?? '',
  ];
}

function bareCells(place: Exclude<Place, HungPlace>, plan: ShowPlan): Cell[] {
  const note = [whyText(place, plan), place.picture.note ?? ''].filter((text) => text !== '').join(' ');
  return [place.state === 'own' ? 'its own' : 'none', ...Array.from({ length: HEADS.length - 4 }, () => ''), note];
}

/** How many of each frame, how many are there, how many to order, what one costs and what all do. */
export function printToBuy({ toBuy, showing: { unit } }: ShowPlan): string {
  const length = lengthIn(unit);
  const rows = toBuy.map(({ frame, needed, there, toOrder, price }): Cell[] => [
    frame.name,
    length(frame.size.width),
    length(frame.size.height),
    needed,
    there ?? '',
    toOrder,
    frame.price ? moneyText(frame.price.amount) : '',
    price ? costCell(price, unit) : '',
  ]);
  return csvText([['frame', 'width', 'height', 'needed', 'on the shelf', 'to order', 'price each', 'price'], ...rows]);
}

/** A sum of money as it is told elsewhere, rounded half up to the cent; or a length. */
function costCell(cost: Cost, unit: Unit): Cell {
  return cost.by === 'money' ? roundedText(cost.amount) : lengthIn(unit)(cost.length);
}

/** Inches where a rule has a mark for them, else millimetres. Quoted, so that no spreadsheet takes a fraction for a date. */
function lengthIn(unit: Unit): (mm: number) => Cell {
  return (mm) => {
    const text = exactText(mm, unit);
    const said = unit === 'in' && text.includes('.') ? `${exactText(mm, 'mm')} mm` : `${text} ${unit}`;
    return { quoted: said };
  };
}
