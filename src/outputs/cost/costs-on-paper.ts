/** What the papers of costs are made from, and how a page of them is framed. */
import type { PaperName } from '../../bridge';
import type { Costed } from '../../core/cost/cost-sheet';
import type { OfferHead } from '../../core/cost/offer-words';
import { good, type Result } from '../../core/problem';
import type { Showing } from '../../core/units';
import type { Fonts, MakerHooks } from '../context';
import { drawDocument, type PagePlan } from '../paper/document';
import { drawBlocks, flowTight, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { paragraphBlock, type Setting } from '../paper/text-blocks';
import { lostIn, namesIn, type Named } from '../paper/lost-letters';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';

export interface Variant extends Costed {
  /** What it is told apart by. */
  readonly name: string;
}

export interface CostsOnPaper {
  /** At least one, all by one price list. */
  readonly variants: readonly Variant[];
  readonly showing: Showing;
  readonly paper: PaperName;
  readonly fonts: Fonts;
  /** Of papers for the customer. */
  readonly head?: OfferHead;
}

interface Heads {
  readonly title: string;
  readonly under: string;
  readonly place: string;
  readonly step: string;
}

/** Room of the blocks, mm. */
export function bodyOf({ paper, showing }: CostsOnPaper) {
  const size = listPaper(paper, showing.unit);
  const body = plainBody(size);
  return { size, body, width: body.right - body.left };
}

/** @param ways to lay out the same, from the roomiest on. Rejects with the signal's reason when cancelled. */
export async function drawCosts(
  context: CostsOnPaper,
  ways: readonly (readonly Block[])[],
  { step, ...heads }: Heads,
  hooks: MakerHooks,
): Promise<Result<Uint8Array>> {
  const { size, body } = bodyOf(context);
  const pages = flowTight(ways, body.top - body.bottom).map((lot): PagePlan => ({
    size,
    step,
    draw: (surface, { number, count }) => {
      drawPlainFrame(surface, { ...heads, page: `Page ${number} of ${count}` });
      drawBlocks(surface, lot, { x: body.left, y: body.top });
    },
  }));
  const { bytes, lost } = await drawDocument(pages, heads.title, context.fonts, hooks);
  return good(bytes, lostIn([...namesOf(context), ...context.variants.flatMap(namesIn)], lost));
}

/** What shop and customer are called. */
function namesOf({ head }: CostsOnPaper): Named[] {
  const { shop, customer = '' } = head ?? { shop: {} };
  return [
    { at: 'shop', words: shop.name ?? '' },
    { at: 'shop address', words: shop.address ?? '' },
    { at: 'customer', words: customer },
  ];
}

/** The title of what all variants are of; where they have several, each stands by its own name. */
export function titleBlocks({ variants }: CostsOnPaper, setting: Setting): Block[] {
  const [title = '', ...others] = new Set(variants.map(({ job }) => job.title));
  return others.length > 0 ? [] : [paragraphBlock(title, setting, { size: 14, weight: 'bold' })];
}

/** Variants that stand side by side: more would be too narrow to read. */
export const SIDE_BY_SIDE = 4;

export function lotsOf<T>(items: readonly T[], most = SIDE_BY_SIDE): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / most) }, (_, lot) => items.slice(lot * most, (lot + 1) * most));
}
