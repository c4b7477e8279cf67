/** `shelf`: what a shelf's file holds, as a table for people, in another unit, or the generic list to begin with. */
import { Option } from 'commander';
import { good, type Result } from '../../core/problem';
import { printShelf } from '../../core/shelf/print-shelf';
import type { Shelf } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import type { Unit } from '../../core/units';
import { shelfText } from '../description/shelf';
import { mostUsedUnit, UNITS } from '../most-used-unit';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { readShelfFile } from '../shelf-option';
import { machineProblem, refuse } from '../refuse';
import type { Verb } from '../verb';
import type { World } from '../world';

const SYSTEMS = ['inch', 'metric'] as const;

interface Options {
  readonly start?: (typeof SYSTEMS)[number];
  readonly units?: Unit;
  readonly csv?: true;
  readonly json?: true;
}

export const shelf: Verb<Options> = {
  name: 'shelf',
  summary: 'check the file of your shelf and print it as a table',
  more: `The file is a table of comma-separated values, one thing in each row (resources/shelf.md has all columns).
Everything wrong is told with line and column. Without a file the generic list of sizes is taken, which
--start prints as a file to begin with. --csv prints a file as the program itself writes it, in --units.`,
  examples: [
    'npm run -s matwright -- shelf resources/shelf.csv',
    'npm run -s matwright -- shelf resources/shelf.csv --csv --units mm',
    'npm run -s matwright -- shelf --start metric',
    'npm run -s matwright -- shelf resources/shelf.csv --json',
  ],
  takesJob: false,
  takesFile: { name: 'FILE', what: 'the file of the shelf', isOptional: true },
  options: [
    new Option('--start <system>', 'print the generic list as a file').choices(SYSTEMS),
    new Option('--units <unit>', 'of every length shown (default: that of most lengths in the file)').choices(UNITS),
    new Option('--csv', 'print the shelf as a file'),
    jsonOption('"items", every length in mm, every mass in kg, prices as texts'),
  ],
  async run(world, options, file) {
    const { start, json = false } = options;
    if (start !== undefined && file !== '') {
      const said = machineProblem('failed', 'Either a file is named or --start is given, not both.');
      return refuse({ code: 2, problems: [said] }, json, world);
    }
    const given = await open(file, options, world);
    if (!given.ok) return refuse({ code: 2, problems: given.problems }, json, world);
    const { shelf: items, unit } = given.value;
    const asFile = options.csv === true || start !== undefined;
    await world.say(
      json
        ? jsonText({ ok: true, lengths: 'mm', masses: 'kg', items, problems: given.problems })
        : asFile
          ? printShelf(items, unit)
          : shelfText(items, { unit, inchStep: 64, metricStep: 0.1 }, world.columns),
    );
    if (given.problems.length > 0) world.tell(`\n${problemsText(given.problems, world.columns)}`);
    return 0;
  },
};

interface Opened {
  readonly shelf: Shelf;
  readonly unit: Unit;
}

async function open(file: string, { start, units }: Options, world: World): Promise<Result<Opened>> {
  if (file === '') {
    const system = start ?? (units === undefined || units === 'in' ? 'inch' : 'metric');
    return good({ shelf: startShelf(system), unit: units ?? (system === 'inch' ? 'in' : 'mm') });
  }
  const read = await readShelfFile(file, world);
  if (!read.ok) return read;
  const { text, shelf } = read.value;
  return good({ shelf, unit: units ?? mostUsedUnit(text) }, read.problems);
}
