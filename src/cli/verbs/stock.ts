/** `stock`: what the file of a stock holds, as a table for people or as a file; and takes its last use back. */
import { Option } from 'commander';
import { bad, good, type Result } from '../../core/problem';
import { printStock } from '../../core/sheets/print-stock';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import type { Unit } from '../../core/units';
import { stockText } from '../description/stock';
import { mostUsedUnit, UNITS } from '../most-used-unit';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { wrap } from '../print/text';
import { refuse } from '../refuse';
import { readStockFile, takeBackStockFile } from '../stock-file';
import { stockExit, useMisused } from '../use-option';
import type { Verb } from '../verb';
import type { World } from '../world';

interface Options {
  readonly takeBack?: true;
  readonly units?: Unit;
  readonly csv?: true;
  readonly json?: true;
}

export const stock: Verb<Options> = {
  name: 'stock',
  summary: 'check the file of your stock and print it as a table',
  more: `The file is a table of comma-separated values, a size of a board in each row (resources/stock.md has all
columns). Everything wrong is told with line and column. “sheets --use” takes sheets from it and keeps a record
of that beside it, FILE.last-use.json, by which --take-back undoes that use: what was taken goes back, what was
put back is taken out, and all that others changed meanwhile stays. It refuses, and changes nothing, where what
was put back has been used since. Only the last use is kept, until it is taken back.`,
  examples: [
    'npm run -s matwright -- stock resources/stock.csv',
    'npm run -s matwright -- stock resources/stock.csv --csv --units mm',
    'npm run -s matwright -- stock resources/stock.csv --json',
  ],
  takesJob: false,
  takesFile: { name: 'FILE', what: 'the file of the stock' },
  options: [
    new Option('--take-back', 'undo the last use of this file'),
    new Option('--units <unit>', 'of every length shown (default: that of most lengths in the file)').choices(UNITS),
    new Option('--csv', 'print the stock as a file'),
    jsonOption('"rows", every length in mm, prices as texts; with --take-back "takenBack", what the use had been'),
  ],
  async run(world, options, file) {
    const { json = false, csv = false } = options;
    const found = await findStock(file, options, world);
    if (!found.ok) return refuse({ code: stockExit(found.problems), problems: found.problems }, json, world);
    const { list, unit, words } = found.value;
    if (json)
      await world.say(jsonText({ ok: true, lengths: 'mm', rows: list, ...(words ? { takenBack: words } : {}), problems: found.problems })); // prettier-ignore
    else {
      const told = (words ?? []).flatMap((line) => wrap(`Taken back: ${line}.`, world.columns));
      const table = csv ? printStock(list, unit) : stockText(list, { unit, inchStep: 64, metricStep: 0.1 }, world.columns); // prettier-ignore
      if (csv) world.tell(told.map((line) => `${line}\n`).join(''));
      await world.say(csv || told.length === 0 ? table : `${told.join('\n')}\n\n${table}`);
    }
    if (found.problems.length > 0) world.tell(`\n${problemsText(found.problems, world.columns)}`);
    return 0;
  },
};

interface Found {
  readonly list: readonly StockSheet[];
  readonly unit: Unit;
  /** Of the use that was taken back. */
  readonly words?: readonly string[];
}

async function findStock(file: string, { takeBack, units }: Options, world: World): Promise<Result<Found>> {
  const misused = takeBack ? useMisused(file) : [];
  if (misused.length > 0) return bad(misused);
  const read = await readStockFile(file, world);
  if (!read.ok) return read;
  const unit = units ?? mostUsedUnit(read.value.text);
  if (!takeBack) return good({ list: read.value.list, unit }, read.problems);
  const taken = await takeBackStockFile(file, { unit, inchStep: 64, metricStep: 0.1 }, world);
  return taken.ok ? good({ ...taken.value, unit }, read.problems) : taken;
}
