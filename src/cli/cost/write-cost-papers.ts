/** Writes the proposal and the cost sheets where the words name a file for them: each whole, and never over a file unasked. */
import { basename, dirname, resolve } from 'node:path';
import type { Problem, Result } from '../../core/problem';
import { showingOf } from '../../core/units';
import { readFonts } from '../../host/fonts';
import { checkFree, writeTogether } from '../../host/write-together';
import type { CostsOnPaper } from '../../outputs/cost/costs-on-paper';
import type { CostOptions } from './cost-options';
import { machineProblem } from '../refuse';
import type { ExitCode, World } from '../world';
import type { CostsFound } from './find-costs';

type Written =
  | { readonly ok: true; readonly files: readonly string[]; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly code: ExitCode; readonly problems: readonly Problem[] };

interface Paper {
  readonly path: string;
  readonly make: () => Promise<Result<Uint8Array>>;
}

export async function writeCostPapers(found: CostsFound, options: CostOptions, world: World): Promise<Written> {
  const { proposal, sheet, replace = false } = options;
  if (proposal === undefined && sheet === undefined) return { ok: true, files: [], problems: [] };
  const papers = await papersOf(found, options, world);
  const [one, other] = papers;
  if (one?.path === other?.path) {
    return failedWith({ code: 'exists', message: `The proposal and the cost sheets can’t both be “${one?.path}”. Choose another name.` }); // prettier-ignore
  }
  for (const { path } of papers) {
    const free = await checkFree(dirname(path), [basename(path)], replace);
    if (!free.ok) return failedWith(free.failure);
  }
  const problems: Problem[] = [];
  const files: string[] = [];
  for (const { path, make } of papers) {
    const made = await make();
    problems.push(...made.problems);
    if (!made.ok) return { ok: false, code: 2, problems };
    const written = await writeTogether(dirname(path), [{ name: basename(path), bytes: made.value }], { replace });
    if (!written.ok) return failedWith(written.failure);
    files.push(path);
  }
  return { ok: true, files, problems };
}

async function papersOf(
  { costed, names, isCompared, shop }: CostsFound,
  options: CostOptions,
  world: World,
): Promise<Paper[]> {
  // Here, since an answer in words needs none of what draws on paper.
  const { makeProposal } = await import('../../outputs/cost/proposal');
  const { makeCostSheets } = await import('../../outputs/cost/cost-sheets');
  const { proposal, sheet, withoutPrices, for: customer, paper = 'blank' as const } = options;
  const [first] = costed;
  const showing = showingOf(first?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } });
  const variants = costed.map((one, index) => ({ ...one, name: names[index] ?? '' }));
  const fonts = await readFonts(world.resources);
  const context: CostsOnPaper = { variants, showing, paper, fonts, head: { shop, customer } };
  const at = (file: string) => resolve(world.folder, file);
  return [
    ...(proposal === undefined ? [] : [{ path: at(proposal), make: () => makeProposal(context, { withPrices: !withoutPrices, isCompared }) }]), // prettier-ignore
    ...(sheet === undefined ? [] : [{ path: at(sheet), make: () => makeCostSheets(context, { isCompared }) }]),
  ];
}

function failedWith({ code, message }: { readonly code: string; readonly message: string }): Written {
  const told = code === 'exists' ? message.replace('Replace it', 'Write over it with --replace') : message;
  return { ok: false, code: 2, problems: [machineProblem(code, told)] };
}
