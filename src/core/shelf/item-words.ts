/** A thing of the shelf in one line of words, without its name. */
import { massText } from '../mass';
import { moneyText } from '../money';
import { showSetting, sizeText, spokenLength, type Showing } from '../units';
import type { ShelfItem, ShelfKind } from './shelf';

/** What several things of a kind are called. */
export const KIND_WORDS: Readonly<Record<ShelfKind, string>> = {
  frame: 'Frames',
  moulding: 'Mouldings',
  board: 'Boards',
  glazing: 'Glazing',
  wire: 'Wire',
  hook: 'Hooks on the wall',
  ring: 'Rings on the frame',
  sawtooth: 'Sawtooth hangers',
  cleat: 'Cleats',
  clip: 'Offset clips',
  screw: 'Screws',
};

/** What is known of it, in the order a framer asks; the count and price last. */
export function itemWords(item: ShelfItem, showing: Showing): string {
  return [...measures(item, showing), ...stock(item)].join(' · ');
}

function measures(item: ShelfItem, showing: Showing): string[] {
  const length = (mm: number | undefined, words: (text: string) => string) =>
    mm === undefined ? [] : [words(spokenLength(mm, showing))];
  /** Of sheets: a step of a rule would show glass of 2.5 and of 3 mm alike. */
  const fine = (mm: number | undefined, words: (text: string) => string) =>
    mm === undefined ? [] : [words(showSetting(mm, showing).withUnit)];
  const load = (kg: number | undefined, words: string) =>
    kg === undefined ? [] : [`${words} ${massText(kg, showing.unit)}`];
  switch (item.kind) {
    case 'frame':
      return [
        ...(isNamedBySize(item.name, sizeText(item.size, showing)) ? [] : [sizeText(item.size, showing)]),
        ...length(item.rabbetDepth, (text) => `rabbet ${text} deep`),
        ...(item.build === 'open back' ? [] : [item.build]),
        ...(item.comesWith.length > 0 ? [`with ${item.comesWith.join(', ')}`] : []),
      ];
    case 'moulding':
      return [
        ...length(item.face, (text) => `${text} wide`),
        ...length(item.rabbetDepth, (text) => `rabbet ${text} deep`),
        ...length(item.stick, (text) => `sticks of ${text}`),
      ];
    case 'board':
    case 'glazing':
      return [
        ...(item.kind === 'glazing' ? [item.material, ...(item.uvFilter ? ['UV filter'] : [])] : []),
        ...fine(item.thickness, (text) => `${text} thick`),
        ...(item.size ? [`sheets of ${sizeText(item.size, showing)}`] : []),
      ];
    case 'wire':
      return [...load(item.load, 'rated'), ...load(item.breaksAt, 'breaks at')];
    case 'hook':
      return [...load(item.load, 'rated'), ...length(item.seat, (text) => `seat ${text} under the nail`)];
    case 'clip':
      return length(item.step, (text) => `step ${text}`);
    case 'screw':
      return length(item.length, (text) => `${text} long`);
    default:
      return load(item.load, 'rated');
  }
}

/** Many frames are called what they measure, which then need not be said twice. */
function isNamedBySize(name: string, size: string): boolean {
  const plain = (text: string) => text.toLowerCase().replace(/×/g, 'x').replace(/\s/g, '');
  return plain(name) === plain(size);
}

function stock({ count, price }: ShelfItem): string[] {
  return [
    ...(count === undefined ? [] : [count === 0 ? 'none left' : `${count} there`]),
    ...(price ? [`${moneyText(price.amount)}${price.per === 'each' ? '' : ` per ${price.per}`}`] : []),
  ];
}
