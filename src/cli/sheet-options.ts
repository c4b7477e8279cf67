/** Options of `sheets` that say what is cut from what, and how they are read. */
import { InvalidArgumentError, Option } from 'commander';
import { LARGEST } from '../core/job/reader';
import { inParts, readMoney, type Money } from '../core/money';
import { bad, good, type Result } from '../core/problem';
import { SHEET_AIMS, type SheetAim } from '../core/sheets/ask';
import type { SheetsChoice } from '../core/sheets/board-asks';
import { COST_PLACES } from '../core/sheets/board-stock';
import { MOST_KERF, MOST_TRIM } from '../core/sheets/read-stock';
import type { KeepRule } from '../core/sheets/remnants';
import { keepOptions, readKeepOptions, type KeepOptions } from './keep-options';
import { lengthOption } from './length-option';
import { findShelf, shelfOption } from './shelf-option';
import { readStockFile } from './stock-file';
import type { World } from './world';

export interface SheetWords extends KeepOptions {
  readonly stock?: string;
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
}

export function sheetOptions(): Option[] {
  return [
    new Option('--stock <file>', 'sheets and remnants, as comma-separated values (resources/stock.md)'),
    shelfOption('what you have, for boards that the stock has no sheets of'),
    ...keepOptions(),
    new Option('--kerf <length>', 'what one cut takes away (default: 0, a knife)'),
    new Option('--trim <length>', 'taken off new sheets all round before they are used (default: 0)'),
    new Option(
      '--stages <count>',
      'directions of cuts one after another at most: 1 all one way, 2 strips and pieces out of them (default: as many as it takes)',
    ).argParser(wholeFrom(1, 9)),
    new Option('--upright <boards...>', 'boards whose grain or pattern keeps pieces from being turned'),
    new Option('--no-windows', 'cut nothing from what falls out of windows'),
    new Option('--longest-cut <length>', 'the longest cut that the cutter makes (default: any)'),
    new Option(
      '--aim <aim>',
      'the least cost, the fewest new sheets, or the largest remnant: then what that cost is taken off',
    )
      .choices(SHEET_AIMS)
      .default('cost'),
    new Option('--per-sheet <amount>', 'what opening one more new sheet is worth avoiding (default: 0)').argParser(
      readAmount,
    ),
    new Option(
      '--remnant-worth <percent>',
      'what the largest remnant is worth of what it cost (default: 0; with --aim remnant 100)',
    ).argParser(wholeFrom(0, 100)),
    new Option('--rounds <count>', 'how long to search for each board')
      .default(20_000)
      .argParser(wholeFrom(1, 10_000_000)),
    new Option('--seed <number>', 'of the search').default(1).argParser(wholeFrom(0, 2 ** 31 - 1)),
  ];
}

export type ReadSheetChoice = SheetsChoice & { readonly keep: KeepRule };

export async function readSheetChoice(options: SheetWords, world: World): Promise<Result<ReadSheetChoice>> {
  const { stock: file, shelf: shelfFile, upright = [], windows, aim, seed, stages, perSheet, remnantWorth } = options;
  const stock = file === undefined ? good({ list: [] }) : await readStockFile(file, world);
  const shelf = shelfFile === undefined ? good([]) : await findShelf(shelfFile, world);
  const kerf = lengthOption('--kerf', options.kerf, { name: 'Kerf', least: 0, most: MOST_KERF });
  const trim = lengthOption('--trim', options.trim, { name: 'Trim', least: 0, most: MOST_TRIM });
  const longest = lengthOption('--longest-cut', options.longestCut, { name: 'Longest cut', least: 1, most: LARGEST });
  const keep = readKeepOptions(options);
  const problems = [stock, shelf, kerf, trim, longest, keep].flatMap((one) => one.problems);
  if (!stock.ok || !shelf.ok || !kerf.ok || !trim.ok || !longest.ok || !keep.ok) return bad(problems);
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
      keep: keep.value,
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
