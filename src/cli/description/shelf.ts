/** A shelf as a table for people: a heading for each kind of thing, a row for each thing. */
import { counted } from '../../core/phrases';
import type { Size } from '../../core/geometry/box';
import { massText } from '../../core/mass';
import { moneyText } from '../../core/money';
import { ofKind, SHELF_KINDS, type Shelf, type ShelfItem, type ShelfKind } from '../../core/shelf/shelf';
import { lengthText, sizeText, type Showing } from '../../core/units';
import { columns } from '../print/text';

const HEADINGS: Readonly<Record<ShelfKind, string>> = {
  frame: 'Frames',
  moulding: 'Mouldings',
  board: 'Boards',
  glazing: 'Glazing',
  wire: 'Wire',
  hook: 'Hooks for the wall',
  ring: 'Rings',
  sawtooth: 'Toothed hangers',
  cleat: 'Cleats',
  clip: 'Offset clips',
  screw: 'Screws',
};

export function shelfText(shelf: Shelf, showing: Showing, width: number): string {
  const sections = SHELF_KINDS.flatMap((kind) => {
    const items: readonly ShelfItem[] = ofKind(shelf, kind);
    if (items.length === 0) return [];
    const rows = items.map((item) => row(item, showing));
    const heads = ['', kind === 'frame' ? 'size' : 'measure', 'price', 'count', ''];
    return ['', HEADINGS[kind], ...columns([heads, ...rows], { indent: 2, width, right: [2, 3] })];
  });
  return `${[`${counted(shelf.length, 'thing')} on the shelf.`, ...sections].join('\n')}\n`;
}

/** Name, its measure, price, how many, and the rest. */
function row(item: ShelfItem, showing: Showing): string[] {
  const { name, price, count, note } = item;
  const per = price && price.per !== 'each' ? ` / ${price.per}` : '';
  return [
    name,
    measureOf(item, showing),
    price ? `${moneyText(price.amount)}${per}` : '?',
    count === undefined ? '' : String(count),
    [...detailsOf(item, showing), ...(note === undefined ? [] : [note])].join('; '),
  ];
}

/** What it goes by. */
function measureOf(item: ShelfItem, showing: Showing): string {
  const { unit } = showing;
  const length = (mm: number) => lengthText(mm, showing);
  switch (item.kind) {
    case 'frame':
      return sizeText(item.size, showing);
    case 'moulding':
      return `face ${length(item.face)}`;
    case 'board':
    case 'glazing':
      return item.thickness === undefined ? '' : length(item.thickness);
    case 'clip':
      return length(item.step);
    case 'screw':
      return length(item.length);
    default:
      return item.load === undefined ? '' : massText(item.load, unit);
  }
}

function detailsOf(item: ShelfItem, showing: Showing): string[] {
  switch (item.kind) {
    case 'frame':
      return [
        ...(item.build === 'open back' ? [] : [item.build]),
        ...(item.corners === 'closed' ? ['closed corners'] : []),
        ...profileOf(item, showing),
        ...lengths('face', [item.face], showing),
        ...lengths('grooves at', item.grooves, showing),
        ...mass(item.weight, '', showing),
        ...(item.comesWith.length > 0 ? [`with ${item.comesWith.join(', ')}`] : []),
      ];
    case 'moulding':
      return [...profileOf(item, showing), ...lengths('sticks of', [item.stick], showing), ...mass(item.weight, ' a metre', showing)]; // prettier-ignore
    case 'board':
      return [...(item.colour === undefined ? [] : [item.colour]), ...sheets(item.size, showing)];
    case 'glazing':
      return [item.material, ...(item.uvFilter ? ['UV filter'] : []), ...sheets(item.size, showing)];
    case 'wire':
      return item.breaksAt === undefined ? [] : [`breaks at ${massText(item.breaksAt, showing.unit)}`];
    case 'hook':
      return lengths('seat', [item.seat], showing);
    default:
      return [];
  }
}

/** Measures that frames and mouldings share. */
function profileOf(
  { colour, rabbetDepth, lip, depth }: Partial<Record<'rabbetDepth' | 'lip' | 'depth', number>> & { colour?: string },
  showing: Showing,
): string[] {
  return [
    ...(colour === undefined ? [] : [colour]),
    ...lengths('rabbet', [rabbetDepth], showing),
    ...lengths('lip', [lip], showing),
    ...lengths('depth', [depth], showing),
  ];
}

function sheets(size: Size | undefined, showing: Showing): string[] {
  return size ? [`sheets of ${sizeText(size, showing)}`] : [];
}

function mass(kg: number | undefined, of: string, { unit }: Showing): string[] {
  return kg === undefined ? [] : [`${massText(kg, unit)}${of}`];
}

function lengths(what: string, values: readonly (number | undefined)[], showing: Showing): string[] {
  const said = values.flatMap((mm) => (mm === undefined ? [] : [lengthText(mm, showing)]));
  return said.length > 0 ? [`${what} ${said.join(', ')}`] : [];
}
