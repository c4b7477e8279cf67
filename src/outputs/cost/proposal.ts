/** The proposal, for the customer: what they get, variants side by side, prices on wish, and room to sign; nothing of the shop's reckoning. */
import type { Result } from '../../core/problem';
import {
  offerHeading,
  customerCautions,
  notInPrices,
  offerRows,
  paidRows,
  TO_FILL_IN,
  type OfferRow,
} from '../../core/cost/offer-words';
import { togetherWords } from '../../core/cost/cost-words';
import type { MakerHooks } from '../context';
import { openTypesetter } from '../paper/document';
import { endedBy, fitsPages, unparted, type Block } from '../paper/flow';
import { capHeight } from '../paper/label';
import { PENS } from '../paper/pens';
import type { Scale } from '../paper/scale';
import type { Column } from '../paper/table';
import { rowBlock } from '../paper/table-blocks';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { fractions, type TextStyle } from '../paper/type';
import {
  bodyOf,
  drawCosts,
  lotsOf,
  SIDE_BY_SIDE,
  titleBlocks,
  type CostsOnPaper,
  type Variant,
} from './costs-on-paper';
import { frontScales, frontsBlock } from './front-drawing';
import { headBlocks } from './offer-head';

export interface ProposalChoice {
  readonly withPrices: boolean;
  /** True where they are held beside one another; else all are bought, and have a sum. */
  readonly isCompared: boolean;
}

const LABEL = 32;
const PLAIN: TextStyle = { size: 9 };
const BOLD: TextStyle = { size: 9, weight: 'bold' };
const SMALL: TextStyle = { size: 8 };

/** Rejects with the signal's reason when cancelled. */
export function makeProposal(
  context: CostsOnPaper,
  choice: ProposalChoice,
  hooks: MakerHooks = {},
): Promise<Result<Uint8Array>> {
  const { variants, fonts } = context;
  const { body, width } = bodyOf(context);
  const setting = { typesetter: openTypesetter(fonts), width };
  const lots = lotsOf(variants).map((lot, index) => ({
    fronts: lot.map(({ layout, made }) => ({ layout, moulding: made.moulding })),
    first: variants.length > 1 ? index * SIDE_BY_SIDE + 1 : undefined,
    ...lotBlocks(context, lot, choice, setting, index * SIDE_BY_SIDE),
  }));
  const opening = [...headBlocks(context.head, setting), ...titleBlocks(context, setting)];
  const end = unparted([...endBlocks(context, choice, setting), signBlock(setting)]);
  const room = { width, height: body.top - body.bottom };
  const wayAt = (scale: Scale) => {
    const drawn = lots.map(({ fronts, first, over, under }) => [...over, frontsBlock(fronts, first, width, scale), ...under]); // prettier-ignore
    return endedBy([...opening, ...drawn.flat()], end);
  };
  const ways = frontScales(lots.flatMap(({ fronts }) => fronts), room, context.showing).map(wayAt); // prettier-ignore
  const fit = ways.filter((blocks) => fitsPages(blocks, room.height));
  return drawCosts(
    context,
    // At the smallest scale the words alone may still be more than a page holds.
    fit.length > 0 ? fit : ways.slice(-1),
    {
      title: 'Proposal',
      under: 'What would be framed, and how',
      place: 'drawings to the scale they say',
      step: 'Writing the proposal',
    },
    hooks,
  );
}

/** Variants that stand side by side: what is told over their drawings, and under them. */
function lotBlocks(
  { variants, showing }: CostsOnPaper,
  lot: readonly Variant[],
  { withPrices, isCompared }: ProposalChoice,
  setting: Setting,
  before: number,
): Record<'over' | 'under', readonly Block[]> {
  const each = (setting.width - LABEL) / lot.length;
  const columns = (style: TextStyle): Column[] => [
    { heading: '', width: LABEL, style: SMALL },
    ...lot.map((): Column => ({ heading: '', width: each, style })),
  ];
  const row = (cells: readonly string[], style: TextStyle, marked: 'marked' | 'plain' = 'plain') =>
    rowBlock(setting.typesetter, columns(style), cells.map(fractions), marked);
  const rows = (of: (variant: Variant) => readonly OfferRow[], style: TextStyle) =>
    side(lot.map(of)).map((cells, index) => row(cells, style, index === 0 ? 'marked' : 'plain'));
  // As they are under the drawings; jobs told together have their numbers already.
  const named = lot.map(({ name }, index) => (isCompared ? `${before + index + 1}  ${name}` : name));
  const names = variants.length > 1 ? [row(['', ...named], BOLD)] : [];
  const jobs = variants.map(({ job }) => job);
  const heading = offerHeading(jobs, isCompared);
  const all = [
    ...rows((variant) => offerRows(variant, showing), PLAIN),
    ...(withPrices ? unparted(rows(({ sheet }) => paidRows(sheet), BOLD)) : []),
  ];
  return {
    over: before === 0 ? [headingBlock(heading)] : [],
    under: [
      ...names.map((block) => ({ ...block, withNext: true })),
      ...all.map((block) => ({ ...block, again: names })),
    ],
  };
}

/** Rows of several variants as rows of cells: what they are called as in the first that has one of that number. */
function side(all: readonly (readonly OfferRow[])[]): string[][] {
  const count = Math.max(...all.map(({ length }) => length));
  return Array.from({ length: count }, (_, index) => {
    const words = [...new Set(all.flatMap((rows) => rows[index]?.[0] ?? []))];
    return [words.join(' / '), ...all.map((rows) => rows[index]?.[1] ?? '')];
  });
}

function endBlocks({ variants }: CostsOnPaper, { withPrices, isCompared }: ProposalChoice, setting: Setting): Block[] {
  const hasSum = withPrices && !isCompared && variants.length > 1;
  const missing = withPrices ? notInPrices(variants) : [];
  return [
    { height: 3, draw: () => undefined },
    ...(hasSum ? [paragraphBlock(togetherWords(variants.map(({ sheet }) => sheet)), setting, BOLD)] : []),
    ...missing.map((words) => paragraphBlock(words, setting)),
    paragraphBlock(customerCautions(variants.map(({ job }) => job)), setting, SMALL),
  ];
}

/** Lines for the pen, each with its word before it. */
function signBlock({ typesetter, width }: Setting): Block {
  const each = width / TO_FILL_IN.length;
  return {
    height: 14,
    draw: (surface, { x, y }) => {
      TO_FILL_IN.forEach((word, index) => {
        const from = x + index * each;
        const line = y - 8 - capHeight(PLAIN.size);
        surface.text(word, { x: from, y: line + 0.8 }, PLAIN);
        const start = from + typesetter.width(typesetter.set(word, PLAIN), PLAIN) + 2;
        surface.line({ x: start, y: line }, { x: from + each - 3, y: line }, PENS.edge);
      });
    },
  };
}
