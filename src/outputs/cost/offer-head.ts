/** The head of a proposal: the shop at the left, whom it is for at the right; each wraps where it is long. */
import { customerWords, type OfferHead } from '../../core/cost/offer-words';
import type { Block } from '../paper/flow';
import { paragraphBlock, type Setting } from '../paper/text-blocks';

const BETWEEN = 6;
const BELOW = 3;

/** Nothing where neither is given. */
export function headBlocks(head: OfferHead | undefined, setting: Setting): Block[] {
  if (!head) return [];
  const half = { ...setting, width: (setting.width - BETWEEN) / 2 };
  const { name = '', address = '' } = head.shop;
  const left = [
    ...(name === '' ? [] : [paragraphBlock(name, half, { size: 12, weight: 'bold' })]),
    ...(address === '' ? [] : [paragraphBlock(address, half)]),
  ];
  const customer = customerWords(head);
  const right = customer === '' ? [] : [paragraphBlock(customer, half, { size: 11 })];
  if (left.length + right.length === 0) return [];
  return [
    {
      height: Math.max(heightOf(left), heightOf(right)) + BELOW,
      withNext: true,
      draw: (surface, { x, y }) => {
        let under = y;
        for (const block of left) {
          block.draw(surface, { x, y: under });
          under -= block.height;
        }
        // Without a shop it stands where the eye begins.
        right.forEach((block) => block.draw(surface, { x: left.length === 0 ? x : x + half.width + BETWEEN, y }));
      },
    },
  ];
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height }) => sum + height, 0);
}
