/** Why there is no plan though each piece comes from some sheet: too few changes of direction, a short cutter, or too few sheets. */
import type { Problem } from '../problem';
import { sizeText, type Showing } from '../units';
import type { SheetsAsk, Stock } from './ask';
import type { BoardAsk } from './board-asks';
import { fieldOf, holds } from './field';
import { planSheets } from './plan-sheets';

export function whyNoPlan({ board, ask }: BoardAsk, showing: Showing): Problem {
  const { stages: _, ...anyStages } = ask;
  const { longestCut: __, ...anyCut } = ask;
  if (ask.stages !== undefined && hasPlan(anyStages)) {
    return problem('stages-too-few', 'cutting', `With cuts ${stagesText(ask.stages)}, not every piece of “${board}” comes out of its sheets. Allow more changes.`, 'more changes of direction'); // prettier-ignore
  }
  if (ask.longestCut !== undefined && hasPlan(anyCut)) {
    return problem('cut-longer-than-cutter', 'cutting', `Not every piece of “${board}” comes out of its sheets with cuts as short as the cutter makes them. Have the sheets cut where they are bought.`, 'a longer cutter'); // prettier-ignore
  }
  return problem('too-few-sheets', 'stock', `There are too few sheets of “${board}” for all its pieces: ${lacking(ask, showing)}. List more, or leave the count of sheets empty that you can buy.`, 'more sheets'); // prettier-ignore
}

function hasPlan(ask: SheetsAsk): boolean {
  return planSheets(ask, { goOn: () => false }) !== undefined;
}

/** The pieces that are worst off: what they come from, and how many of that there are. */
function lacking(ask: SheetsAsk, showing: Showing): string {
  const field = fieldOf(ask);
  const worst = ask.pieces
    .map((wanted, index) => {
      const piece = field.pieces.find((one) => one.wanted === index);
      // Of what nothing fits the field counts none; what is asked of it does not matter here.
      const from = piece ? ask.stock.filter((_, stock) => holds(field.stock[stock]!, piece)) : [];
      return { wanted, from, there: from.reduce((sum, { count = Infinity }) => sum + count, 0) };
    })
    .filter(({ from }) => from.length > 0)
    .sort((a, b) => a.there - a.wanted.count - (b.there - b.wanted.count))[0];
  if (!worst) return 'none is there';
  const { wanted, from, there } = worst;
  const many = wanted.count === 1 ? '' : ` ${wanted.count} times`;
  return `“${wanted.id}”, ${sizeText(wanted, showing)}, is wanted${many} and comes from ${sizesText(from, showing)}, of which there ${there === 1 ? 'is' : 'are'} ${there === 0 ? 'none' : there}`; // prettier-ignore
}

function sizesText(stock: readonly Stock[], showing: Showing): string {
  return [...new Set(stock.map((one) => sizeText(one, showing)))].join(' or ');
}

function stagesText(stages: number): string {
  if (stages === 1) return 'in one direction alone';
  return `that change direction ${stages === 2 ? 'once' : `${stages - 1} times`} at the most`;
}

function problem(code: string, at: string, message: string, remedy: string): Problem {
  return { code, severity: 'error', at, message, remedy };
}
