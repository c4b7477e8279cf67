/** `sheets`: cuts the boards of one job or a whole show from as little stock as can be found. */
import { InvalidArgumentError, Option } from 'commander';
import { SHEET_AIMS, type SheetAim } from '../../core/sheets/ask';
import { boardAsks, type SheetsChoice, type Unplanned } from '../../core/sheets/board-asks';
import { planBoard, type PlannedBoard } from '../../core/sheets/planned-board';
import { readStock } from '../../core/sheets/read-stock';
import {
  leftWords,
  pieceRows,
  planWords,
  settingsWords,
  shareWords,
  sheetTitle,
  stepRows,
  unplannedWords,
} from '../../core/sheets/sheet-words';
import { tooFew } from '../../core/sheets/size-problems';
import { bad, good, type Result } from '../../core/problem';
import { showingOf, type Showing } from '../../core/units';
import { filesText } from '../export-into';
import { inFile } from '../in-file';
import { lengthOption } from '../length-option';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { columns, paragraph, wrap } from '../print/text';
import { findJobs } from '../read-jobs';
import { readText } from '../read-text';
import { refuse } from '../refuse';
import { PAPERS_HELP, paperOptions, putOnPaper, type PaperWords } from '../sheet-papers';
import { findShelf, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';
import type { World } from '../world';

interface Options extends PaperWords {
  readonly stock?: string;
  readonly shelf?: string;
  readonly kerf?: string;
  readonly trim?: string;
  readonly stages?: number;
  readonly upright?: readonly string[];
  readonly windows: boolean;
  readonly aim: SheetAim;
  readonly rounds: number;
  readonly seed: number;
  readonly json?: true;
}

export const sheets: Verb<Options> = {
  name: 'sheets',
  summary: 'cut all boards from the least stock, edge to edge',
  more: `Mats and mount boards of the jobs named, board by board, and whatever else the list of stock has.
The list (resources/stock.md) gives sheets and remnants; of a board that it has no sheets of, the
shelf's are taken. What falls out of the windows of these very mats counts as stock too. The same
seed and rounds give the same plan. Without prices the area of new sheets is what costs.

${PAPERS_HELP}`,
  examples: [
    'npm run -s matwright -- sheets resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv',
    'npm run -s matwright -- sheets resources/samples/1-sea-chart.json resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --stock resources/stock.csv',
    'npm run -s matwright -- sheets resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --out bench --only sheet-plan,labels',
  ],
  takesJob: true,
  takesSeveral: true,
  options: [
    new Option('--stock <file>', 'sheets and remnants, as comma-separated values (resources/stock.md)'),
    shelfOption('what you have, for boards that the stock has no sheets of'),
    new Option('--kerf <length>', 'what one cut takes away (default: 0, a knife)'),
    new Option('--trim <length>', 'taken off new sheets all round before they are used (default: 0)'),
    new Option('--stages <count>', 'how often cuts may change direction (default: as often as it takes)').argParser(
      wholeFrom(1, 9),
    ),
    new Option('--upright <boards...>', 'boards whose grain or pattern keeps pieces from being turned'),
    new Option('--no-windows', 'cut nothing from what falls out of windows'),
    new Option('--aim <aim>', 'the least cost, or the fewest new sheets').choices(SHEET_AIMS).default('cost'),
    new Option('--rounds <count>', 'how long to search for each board')
      .default(20_000)
      .argParser(wholeFrom(1, 10_000_000)),
    new Option('--seed <number>', 'of the search').default(1).argParser(wholeFrom(0, 2 ** 31 - 1)),
    ...paperOptions(),
    jsonOption('"boards": each with its "sheets", their pieces, cuts and what is left; lengths in mm'),
  ],
  async run(world, options, first, more) {
    const { json = false } = options;
    const choice = await readChoice(options, world);
    if (!choice.ok) return refuse({ code: 2, problems: choice.problems }, json, world);
    const found = await findJobs([first, ...more], world);
    if (!found.ok) return refuse(found, json, world);
    const { asks, unplanned, problems: wrong } = boardAsks(found.jobs, choice.value);
    const planned = asks.flatMap((one) => planBoard(one, { goOn: (rounds) => rounds < options.rounds }) ?? []);
    const told = found.problems.filter(({ severity }) => severity !== 'note');
    const problems = [...choice.problems, ...told, ...wrong, ...asks.filter(({ board }) => !planned.some((one) => one.board === board)).map(({ board }) => tooFew(board))]; // prettier-ignore
    if (problems.some(({ severity }) => severity === 'error')) return refuse({ code: 1, problems }, json, world);
    const showing = showingOf(found.jobs[0]?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } }, options.units);
    const papers = await putOnPaper(world, found.jobs, { boards: planned, unplanned }, showing, options);
    if (!papers.ok) return refuse(papers, json, world);
    const { files } = papers;
    problems.push(...papers.problems);
    if (json)
      await world.say(jsonText({ ok: true, lengths: 'mm', boards: planned.map(({ board, plan }) => ({ board, ...plan })), unplanned, ...(files.length > 0 ? { files } : {}), problems })); // prettier-ignore
    else {
      await world.say(
        [
          ...planned.map((one) => boardText(one, showing, world.columns)),
          ...unplannedText(unplanned, world.columns),
          ...(files.length > 0 ? [filesText(files, world.columns)] : []),
        ].join('\n'),
      );
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};

function boardText(planned: PlannedBoard, showing: Showing, width: number): string {
  const { board, plan } = planned;
  const lines = plan.sheets.flatMap((sheet, index) => [
    ...paragraph(sheetTitle(sheet, index, showing), 2, width),
    ...columns(pieceRows(sheet, showing), { indent: 6, width }),
    ...(sheet.steps.length > 0 ? ['    Cuts', ...columns(stepRows(sheet, showing), { indent: 6, width, right: [0] })] : []), // prettier-ignore
    ...(sheet.left.length > 0 ? paragraph(`Left: ${leftWords(sheet, showing)}`, 4, width) : []),
  ]);
  const sums = `${shareWords(planned)}; ${settingsWords(plan.sheets)}.`;
  return `${[...wrap(`${board}: ${planWords(planned)}`, width), ...paragraph(sums, 2, width), ...lines].join('\n')}\n`;
}

function unplannedText(unplanned: readonly Unplanned[], width: number): string[] {
  const words = unplannedWords(unplanned);
  return words === '' ? [] : [`${wrap(words, width).join('\n')}\n`];
}

async function readChoice(options: Options, world: World): Promise<Result<SheetsChoice>> {
  const { stock: file, shelf: shelfFile, upright = [], windows, aim, seed, stages } = options;
  const text =
    file === undefined ? undefined : await readText(file, world, 'Save the table as comma-separated values in UTF-8.');
  const stock = text === undefined ? good([]) : text.ok ? inFile(file ?? '', readStock(text.value)) : text;
  const shelf = shelfFile === undefined ? good([]) : await findShelf(shelfFile, world);
  const kerf = lengthOption('--kerf', options.kerf, { name: 'Kerf', least: 0, most: 20 });
  const trim = lengthOption('--trim', options.trim, { name: 'Trim', least: 0, most: 200 });
  const problems = [stock, shelf, kerf, trim].flatMap((one) => one.problems);
  if (!stock.ok || !shelf.ok || !kerf.ok || !trim.ok) return bad(problems);
  return good(
    {
      stock: stock.value,
      shelf: shelf.value,
      kerf: kerf.value ?? 0,
      trim: trim.value ?? 0,
      ...(stages === undefined ? {} : { stages }),
      upright: new Set(upright.map((name) => name.toLowerCase())),
      fallouts: windows,
      aim,
      seed,
    },
    problems,
  );
}

function wholeFrom(least: number, most: number): (words: string) => number {
  return (words) => {
    const value = /^\d{1,10}$/.test(words) ? Number(words) : NaN;
    if (value >= least && value <= most) return value;
    throw new InvalidArgumentError(`a whole number from ${least} to ${most} is wanted.`);
  };
}
