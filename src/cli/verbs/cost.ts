/** `cost`: what framing jobs cost, line by line with the basis of each, compared, and as pages for customer and shop. */
import { Option } from 'commander';
import { compareSheets } from '../../core/cost/compare';
import { costCsv } from '../../core/cost/cost-csv';
import { totalOf } from '../../core/cost/cost-sheet';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { COST_PAPERS, misusedWords, type CostOptions } from '../cost/cost-options';
import { comparedText, costText } from '../cost/cost-text';
import { findCosts, type CostsFound } from '../cost/find-costs';
import { writeCostPapers } from '../cost/write-cost-papers';
import { pricesOption } from '../cost/prices-option';
import { refuse } from '../refuse';
import { shelfOption } from '../shelf-option';
import type { Verb } from '../verb';

export const cost: Verb<CostOptions> = {
  name: 'cost',
  summary: 'tell what framing jobs cost, line by line, with the basis of each',
  more: `Boards, glazing, moulding or frame, fixings, openings, labour, overhead, markup or margin, rounding
and taxes, by your own prices and rules (resources/prices.md) and the prices of your shelf. Several
jobs are told together, as those of one order: they share the sheets that their boards are cut from,
and have a sum. With --compare they stand side by side as variants of one picture, of which one is
made. What has no price is "not counted", never nothing. Prices are in one currency, and no amount is
ever rounded but where the sheet says so.`,
  examples: [
    'npm run -s matwright -- cost resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv --prices resources/prices.csv --moulding "Ash stick"',
    'npm run -s matwright -- cost resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv --prices resources/prices.csv --against-custom --proposal proposal.pdf',
    'npm run -s matwright -- cost resources/samples/1-sea-chart.json resources/samples/4-oval-fern.json --shelf resources/shelf.csv --prices resources/prices.csv',
  ],
  takesJob: true,
  takesSeveral: true,
  options: [
    shelfOption('what you have, with its prices; without it what the shelf would tell is not counted'),
    pricesOption(),
    new Option('--moulding <name>', 'make the frames of this moulding of the shelf in place of the jobs’ own'),
    new Option(
      '--compare',
      'the jobs are variants of one picture: tell them side by side, with what each costs more or less',
    ),
    new Option('--against-custom', 'one job: ready-made frames of the shelf beside a frame made to size').conflicts('compare'), // prettier-ignore
    new Option('--proposal <file>', 'write a page for the customer as a PDF, jobs or variants side by side'),
    new Option('--without-prices', 'leave prices off that page'),
    new Option('--for <name>', 'the customer, at the head of that page; your shop stands there by the price list'),
    new Option('--sheet <file>', 'write the cost sheets as a PDF for the shop'),
    new Option('--paper <size>', 'of these pages (default: letter for inches, else a4)').choices(COST_PAPERS),
    new Option('--replace', 'write over files of these names; without it none is ever touched'),
    jsonOption(
      '"jobs", each with its lines and sums, amounts as decimals in text, and "together" or "compared"; "isOpen" where something is not counted and sums are the least',
    ),
    new Option('--csv', 'answer with all lines and sums as comma-separated values').conflicts('json'),
  ],
  async run(world, options, first, more) {
    const { json = false } = options;
    const misused = misusedWords(options);
    if (misused.length > 0) return refuse({ code: 2, problems: misused }, json, world);
    const found = await findCosts([first, ...more], options, world);
    if (!found.ok) return refuse(found, json, world);
    const written = await writeCostPapers(found, options, world);
    if (!written.ok) return refuse({ code: written.code, problems: written.problems }, json, world);
    const problems = [...found.problems, ...written.problems];
    const told = problems.filter(({ severity }) => severity !== 'note');
    if (told.length > 0) world.tell(`${problemsText(told, world.columns)}\n`);
    await world.say(answer(found, options, written.files, problems, world.columns));
    return 0;
  },
};

function answer(
  { costed, names, isCompared }: CostsFound,
  { json, csv }: CostOptions,
  files: readonly string[],
  problems: CostsFound['problems'],
  width: number,
): string {
  const sheets = costed.map(({ sheet }) => sheet);
  if (json) {
    const jobs = sheets.map((sheet, index) => ({ name: names[index], ...sheet }));
    const beside = isCompared
      ? { compared: compareSheets(sheets) }
      : { together: totalOf(sheets), togetherIsOpen: sheets.some(({ isOpen }) => isOpen) };
    return jsonText({ ok: true, jobs, ...beside, ...(files.length > 0 ? { files } : {}), problems });
  }
  if (csv) return costCsv(sheets);
  const text = isCompared ? comparedText(sheets, names, width) : costText(sheets, names, width);
  return files.length === 0 ? text : `${text}\nWritten: ${files.join(', ')}\n`;
}
