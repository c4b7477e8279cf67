/** `sheets`: cuts the boards of one job or a whole show from as little stock as can be found. */
import { InvalidArgumentError, Option } from 'commander';
import type { Box } from '../../core/geometry/box';
import { SHEET_AIMS, type SheetAim } from '../../core/sheets/ask';
import { LARGEST } from '../../core/job/reader';
import { boardAsks, type SheetsChoice, type Unplanned } from '../../core/sheets/board-asks';
import { planBoard, type PlannedBoard } from '../../core/sheets/planned-board';
import { keepingOf, type KeepRule } from '../../core/sheets/remnants';
import {
  leftWords,
  pieceRows,
  planWords,
  settingsWords,
  shareWords,
  sheetTitle,
  stepRows,
} from '../../core/sheets/sheet-words';
import { tooFew } from '../../core/sheets/size-problems';
import { inParts, readMoney, type Money } from '../../core/money';
import { bad, good, type Result } from '../../core/problem';
import { COST_PLACES } from '../../core/sheets/board-stock';
import { showingOf, type Showing } from '../../core/units';
import { keepOptions, readKeepOptions, type KeepOptions } from '../keep-options';
import { lengthOption } from '../length-option';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { columns, paragraph, wrap } from '../print/text';
import { findJobs } from '../read-jobs';
import { refuse } from '../refuse';
import { findShelf, shelfOption } from '../shelf-option';
import { readStockFile } from '../stock-file';
import { stockExit, usedData, useMisused, useOption, usePlanned, type Used } from '../use-option';
import type { Verb } from '../verb';
import type { World } from '../world';

interface Options extends KeepOptions {
  readonly stock?: string;
  readonly use?: true;
  readonly shelf?: string;
  readonly kerf?: string;
  readonly trim?: string;
  readonly stages?: number;
  readonly upright?: readonly string[];
  readonly windows: boolean;
  readonly longestCut?: string;
  readonly aim: SheetAim;
  readonly perSheet?: Money;
  readonly remnantWorth?: number;
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
seed and rounds give the same plan. Without prices the area of new sheets is what costs. --use takes the
sheets from the stock's file and puts back what is kept of them, where others have not used them meanwhile;
“stock FILE --take-back” undoes it.`,
  examples: [
    'npm run -s matwright -- sheets resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv',
    'npm run -s matwright -- sheets resources/samples/1-sea-chart.json resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --stock resources/stock.csv',
  ],
  takesJob: true,
  takesSeveral: true,
  options: [
    new Option('--stock <file>', 'sheets and remnants, as comma-separated values (resources/stock.md)'),
    shelfOption('what you have, for boards that the stock has no sheets of'),
    useOption(),
    ...keepOptions(),
    new Option('--kerf <length>', 'what one cut takes away (default: 0, a knife)'),
    new Option('--trim <length>', 'taken off new sheets all round before they are used (default: 0)'),
    new Option('--stages <count>', 'how often cuts may change direction (default: as often as it takes)').argParser(
      wholeFrom(1, 9),
    ),
    new Option('--upright <boards...>', 'boards whose grain or pattern keeps pieces from being turned'),
    new Option('--no-windows', 'cut nothing from what falls out of windows'),
    new Option('--longest-cut <length>', 'the longest cut that the cutter makes (default: any)'),
    new Option(
      '--aim <aim>',
      'the least cost, the fewest new sheets, or the largest remnant: then what that cost is taken off',
    )
      .choices(SHEET_AIMS)
      .default('cost'),
    new Option('--per-sheet <amount>', 'what opening one more new sheet is worth avoiding (default: 0)').argParser(readAmount), // prettier-ignore
    new Option(
      '--remnant-worth <percent>',
      'what the largest remnant is worth of what it cost (default: 0; with --aim remnant 100)',
    ).argParser(wholeFrom(0, 100)),
    new Option('--rounds <count>', 'how long to search for each board')
      .default(20_000)
      .argParser(wholeFrom(1, 10_000_000)),
    new Option('--seed <number>', 'of the search').default(1).argParser(wholeFrom(0, 2 ** 31 - 1)),
    jsonOption(
      '"boards": each with its "sheets", their pieces, cuts and what is left; with --use "used"; lengths in mm',
    ),
  ],
  async run(world, options, first, more) {
    const { json = false } = options;
    const choice = await readChoice(options, world);
    const keep = readKeepOptions(options);
    const misused = [...keep.problems, ...(options.use ? useMisused(options.stock) : [])];
    if (!choice.ok || !keep.ok || misused.length > 0)
      return refuse({ code: 2, problems: [...choice.problems, ...misused] }, json, world);
    const rule = keep.value;
    const found = await findJobs([first, ...more], world);
    if (!found.ok) return refuse(found, json, world);
    const { asks, unplanned, problems: wrong } = boardAsks(found.jobs, choice.value);
    const planned = asks.flatMap((one) => planBoard(one, { goOn: (rounds) => rounds < options.rounds }) ?? []);
    const told = found.problems.filter(({ severity }) => severity !== 'note');
    const problems = [...choice.problems, ...told, ...wrong, ...asks.filter(({ board }) => !planned.some((one) => one.board === board)).map(({ board }) => tooFew(board))]; // prettier-ignore
    if (problems.some(({ severity }) => severity === 'error')) return refuse({ code: 1, problems }, json, world);
    const showing = showingOf(found.jobs[0]?.job ?? { units: 'mm', steps: { in: 16, mm: 0.5 } });
    const toUse = { planned, stock: choice.value.stock, rule, showing };
    const used = options.use ? await usePlanned(options.stock ?? '', toUse, world) : undefined;
    if (used?.ok === false) return refuse({ code: stockExit(used.problems), problems: used.problems }, json, world);
    if (json)
      await world.say(jsonText({ ok: true, lengths: 'mm', boards: planned.map((one) => boardData(one, rule)), unplanned, ...(used ? { used: usedData(used.value) } : {}), problems })); // prettier-ignore
    else {
      await world.say(
        [
          ...planned.map((one) => boardText(one, rule, showing, world.columns)),
          ...(used ? [usedText(used.value, world.columns)] : []),
          ...unplannedText(unplanned, world.columns),
        ].join('\n'),
      );
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};

/** The plan as data, with what becomes of each part that is left. */
function boardData({ board, plan }: PlannedBoard, rule: KeepRule): object {
  const left = (boxes: readonly Box[]) => boxes.map((box) => ({ ...box, keeping: keepingOf(box, rule) }));
  return { board, ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, left: left(sheet.left) })) };
}

function usedText({ words }: Used, width: number): string {
  return `${['Used', ...words.flatMap((line) => paragraph(`${line}.`, 2, width))].join('\n')}\n`;
}

function boardText(planned: PlannedBoard, rule: KeepRule, showing: Showing, width: number): string {
  const { board, plan } = planned;
  const lines = plan.sheets.flatMap((sheet, index) => [
    ...paragraph(sheetTitle(sheet, index, showing), 2, width),
    ...columns(pieceRows(sheet, showing), { indent: 6, width }),
    ...(sheet.steps.length > 0 ? ['    Cuts', ...columns(stepRows(sheet, showing), { indent: 6, width, right: [0] })] : []), // prettier-ignore
    ...(sheet.left.length > 0 ? paragraph(`Left: ${leftWords(sheet, showing, rule)}`, 4, width) : []),
  ]);
  const sums = `${shareWords(planned, rule)}; ${settingsWords(plan.sheets)}.`;
  return `${[...wrap(`${board}: ${planWords(planned)}`, width), ...paragraph(sums, 2, width), ...lines].join('\n')}\n`;
}

function unplannedText(unplanned: readonly Unplanned[], width: number): string[] {
  if (unplanned.length === 0) return [];
  const told = unplanned.map(({ name, material, count }) => `${count} x ${name} (${material})`).join(', ');
  return [`${wrap(`Not planned, since no sheets of it are listed: ${told}.`, width).join('\n')}\n`];
}

async function readChoice(options: Options, world: World): Promise<Result<SheetsChoice>> {
  const { stock: file, shelf: shelfFile, upright = [], windows, aim, seed, stages, perSheet, remnantWorth } = options;
  const stock = file === undefined ? good({ list: [] }) : await readStockFile(file, world);
  const shelf = shelfFile === undefined ? good([]) : await findShelf(shelfFile, world);
  const kerf = lengthOption('--kerf', options.kerf, { name: 'Kerf', least: 0, most: 20 });
  const trim = lengthOption('--trim', options.trim, { name: 'Trim', least: 0, most: 200 });
  const longest = lengthOption('--longest-cut', options.longestCut, { name: 'Longest cut', least: 1, most: LARGEST });
  const problems = [stock, shelf, kerf, trim, longest].flatMap((one) => one.problems);
  if (!stock.ok || !shelf.ok || !kerf.ok || !trim.ok || !longest.ok) return bad(problems);
  return good(
    {
      stock: stock.value.list,
      shelf: shelf.value,
      kerf: kerf.value ?? 0,
      trim: trim.value ?? 0,
      ...(stages === undefined ? {} : { stages }),
      ...(longest.value === undefined ? {} : { longestCut: longest.value }),
      ...(perSheet === undefined ? {} : { perSheet: inParts(perSheet, COST_PLACES) }),
      ...(remnantWorth === undefined ? {} : { remnantWorth: remnantWorth / 100 }),
      upright: new Set(upright.map((name) => name.toLowerCase())),
      fallouts: windows,
      aim,
      seed,
    },
    problems,
  );
}

function readAmount(words: string): Money {
  const reading = readMoney(words);
  if (reading.ok) return reading.value;
  throw new InvalidArgumentError(`${reading.message}.`);
}

function wholeFrom(least: number, most: number): (words: string) => number {
  return (words) => {
    const value = /^\d{1,10}$/.test(words) ? Number(words) : NaN;
    if (value >= least && value <= most) return value;
    throw new InvalidArgumentError(`a whole number from ${least} to ${most} is wanted.`);
  };
}
