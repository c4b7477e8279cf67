/** `sheets`: cuts the boards of one job or a whole show from as little stock as can be found. */
import { isError } from '../../core/problem';
import { boardAsks } from '../../core/sheets/board-asks';
import { whyNoPlan } from '../../core/sheets/why-no-plan';
import { uprightProblems } from '../../core/sheets/upright-problems';
import { showingOf } from '../../core/units';
import { filesText } from '../export-into';
import { jsonOption } from '../options';
import { problemsText } from '../print/problems';
import {
  boardData,
  boardText,
  cautionsText,
  planJson,
  totalData,
  totalText,
  unplannedText,
  usedText,
} from '../print/sheet-plans';
import { findJobs } from '../read-jobs';
import { machineProblem, refuse } from '../refuse';
import { searchBoards } from '../search-boards';
import { readSheetChoice, sheetOptions, type SheetWords } from '../sheet-options';
import { PAPERS_HELP, paperOptions, putOnPaper, type PaperWords } from '../sheet-papers';
import { stockExit, usedData, useMisused, useOption, usePlanned } from '../use-option';
import type { Verb } from '../verb';

interface Options extends SheetWords, PaperWords {
  readonly use?: true;
  readonly json?: true;
}

export const sheets: Verb<Options> = {
  name: 'sheets',
  summary: 'cut all boards from the least stock, edge to edge',
  more: `Mats and mount boards of the jobs named, board by board, and whatever else the list of stock or
the shelf has sheets of. The list (resources/stock.md) gives sheets and remnants; of a board that it
has no sheets of, the shelf's are taken. What falls out of the windows of these very mats counts as
stock too. The same seed and rounds give the same plan. Without prices the area of new sheets is what
costs. A job that is named twice is made twice; in place of a job a list of jobs may be named, a
file.csv with a column "job" and, if you like, one "copies": show-list.csv, which "show --out" writes, is one.
--use takes the sheets from the stock's file and puts back what is kept of them, where others
have not used them meanwhile; “stock FILE --take-back” undoes it.

${PAPERS_HELP}`,
  examples: [
    'npm run -s matwright -- sheets resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv',
    'npm run -s matwright -- sheets resources/samples/1-sea-chart.json resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --stock resources/stock.csv',
    'npm run -s matwright -- sheets resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --out bench --only sheet-plan,labels',
  ],
  takesJob: true,
  takesSeveral: true,
  options: [
    ...sheetOptions(),
    useOption(),
    ...paperOptions(),
    jsonOption(
      '"boards": each with its "sheets", their pieces, cuts and what is left, its "cost", its "account" of areas, and "fallouts" that no piece is cut from; "total" of all; with --use "used"; lengths in mm',
    ),
  ],
  async run(world, options, first, more) {
    const { json = false, use = false } = options;
    const choice = await readSheetChoice(options, world);
    const misused = use ? useMisused(options.stock) : [];
    if (!choice.ok || misused.length > 0)
      return refuse({ code: 2, problems: [...choice.problems, ...misused] }, json, world);
    const found = await findJobs([first, ...more], world);
    if (!found.ok) return refuse(found, json, world);
    const { jobs } = found;
    const { asks, unplanned, problems: wrong } = boardAsks(jobs, choice.value);
    const upright = wrong.some(isError) ? [] : uprightProblems(options.upright ?? [], { asks, unplanned });
    const boards = await searchBoards(world, asks, options.rounds);
    if (!boards) return refuse({ code: 130, problems: [machineProblem('cancelled', 'Stopped; nothing was written or used.')] }, json, world); // prettier-ignore
    const showing = showingOf(jobs[0]?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } }, options.units);
    const lacking = asks.filter(({ board }) => !boards.some((one) => one.board === board));
    const told = found.problems.filter(({ severity }) => severity !== 'note');
    const problems = [
      ...choice.problems,
      ...told,
      ...wrong,
      ...upright,
      ...lacking.map((one) => whyNoPlan(one, showing)),
    ];
    if (problems.some(isError)) return refuse({ code: 1, problems }, json, world);
    const { keep, stock } = choice.value;
    const papers = await putOnPaper(world, jobs, { boards, unplanned, keep }, showing, options);
    if (!papers.ok) return refuse(papers, json, world);
    problems.push(...papers.problems);
    const { files } = papers;
    // Last, so that nothing is used of a plan whose papers could not be written.
    const used = use ? await usePlanned(options.stock ?? '', { planned: boards, stock, rule: keep, showing }, world) : undefined; // prettier-ignore
    if (used?.ok === false) return refuse({ code: stockExit(used.problems), problems: used.problems }, json, world);
    if (json) {
      const data = boards.map((one) => boardData(one, keep));
      await world.say(planJson({ ok: true, lengths: 'mm', areas: 'mm²', boards: data, total: totalData(boards), unplanned, ...(used ? { used: usedData(used.value) } : {}), ...(files.length > 0 ? { files } : {}), problems })); // prettier-ignore
      return 0;
    }
    await world.say(
      [
        ...boards.map((one) => boardText(one, keep, showing, world.columns)),
        ...totalText(boards, world.columns),
        ...(used ? [usedText(used.value.words, world.columns)] : []),
        ...unplannedText(unplanned, world.columns),
        ...cautionsText(boards, world.columns),
        ...(files.length > 0 ? [filesText(files, world.columns)] : []),
      ].join('\n'),
    );
    world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    return 0;
  },
};
