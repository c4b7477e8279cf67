/** `show`: the frame sizes of a whole show, and the frame and mat of each of its pictures. */
import { InvalidArgumentError, Option } from 'commander';
import { resolve } from 'node:path';
import { AIMS, MOST_SIZES, TABLE_SIZES, type Aim, type ShowOptions, type ShowPlan } from '../../core/show/plan';
import { counted } from '../../core/phrases';
import { planShow } from '../../core/show/plan-show';
import { readLength } from '../../core/units';
import { writeTogether, type NamedBytes } from '../../host/write-together';
import { makeFolder, removeEmpty } from '../../host/make-folder';
import type { Problem } from '../../core/problem';
import { placedIn } from '../in-file';
import { jsonOption } from '../options';
import { tellBeginning } from '../print/progress';
import { jsonText, problemsText } from '../print/problems';
import { machineProblem, refuse } from '../refuse';
import { shelfOption } from '../shelf-option';
import { findShow } from '../show/find-show';
import { showData } from '../show/show-data';
import { showFiles, type ShowFile } from '../../core/show/show-files';
import { showText } from '../show/show-text';
import type { Verb } from '../verb';
import type { World } from '../world';

const COUNTED_BY = ['money', 'size'] as const;

interface Options {
  readonly pattern: string;
  readonly shelf?: string;
  readonly most?: number;
  readonly aim?: Aim;
  readonly borderLeast?: number;
  readonly borderGreatest?: number;
  readonly onlyOnShelf?: true;
  readonly allowCustom?: true;
  readonly costBy?: (typeof COUNTED_BY)[number];
  readonly out?: string;
  readonly replace?: true;
  readonly json?: true;
}

export const show: Verb<Options> = {
  name: 'show',
  summary: 'choose the frame sizes of a whole show, and give each picture its mat',
  more: `The list is a table of 2 to 500 pictures (resources/show.md). The pattern is a job whose one picture
stands for each of them: layers, overlap, rule and range of borders are shared. Of all choices of
at most so many sizes the one is taken that holds most pictures, at the least cost; it is proven best, or
said not to be. Costs are the shelf's prices of frame, boards and glazing, or, where no frame has a
price, the frames' widths and heights added up. Without --shelf the generic sizes are chosen from.
With --out a job for each picture, show-list.csv and frames-to-buy.csv are written, all or none.
Pictures that no frame takes are told with the reason; a length has to say its unit.`,
  examples: [
    'npm run -s matwright -- show resources/samples/library-show.csv --pattern resources/samples/library-show-mat.json',
    'npm run -s matwright -- show resources/samples/library-show.csv --pattern resources/samples/library-show-mat.json --aim sizes --border-greatest "4 in" --out show',
    'npm run -s matwright -- show resources/samples/library-show.csv --pattern resources/samples/library-show-mat.json --most 3 --json',
  ],
  takesJob: false,
  takesFile: { name: 'PICTURES', what: 'the list of pictures, comma-separated, or - for standard input' },
  options: [
    new Option('--pattern <job>', 'the job that the mats are made after').makeOptionMandatory(),
    shelfOption('the frames, boards and glazing there are'),
    new Option('--most <count>', `sizes at most (default: ${TABLE_SIZES})`).argParser(readCount),
    new Option('--aim <aim>', 'the least cost, or the fewest sizes that hold every picture (default: cost)').choices(
      AIMS,
    ),
    new Option('--border-least <length>', 'least border, in place of the pattern’s').argParser(readBorder),
    new Option('--border-greatest <length>', 'greatest border, likewise').argParser(readBorder),
    new Option('--only-on-shelf', 'take no more frames than the shelf says there are'),
    new Option('--allow-custom', 'give pictures that no frame takes one made to size'),
    new Option('--cost-by <what>', 'count costs in money or by size (default: money where frames have prices)').choices(
      COUNTED_BY,
    ),
    new Option('--out <folder>', 'write the jobs and lists there; made if it is not there'),
    new Option('--replace', 'write over files of the same names; without it none is ever touched'),
    jsonOption('the whole plan, with each picture’s job; lengths in mm, money as decimals in text'),
  ],
  async run(world, options, name) {
    const { json = false, out } = options;
    const found = await findShow(name, options, world);
    if (!found.ok) return refuse(found, json, world);
    tellBeginning(world, `Choosing frames for ${counted(found.pictures.length, 'picture')}`);
    const planned = planShow(found.pictures, found.pattern, found.shelf, optionsFrom(options));
    if (!planned.ok) {
      const isOfTable = planned.problems.every(({ at }) => placeOf(at) !== 'pattern');
      return refuse({ code: isOfTable ? 2 : 1, problems: ofFiles(planned.problems, name, options) }, json, world);
    }
    const plan = planned.value;
    const written = out === undefined ? undefined : await writeInto(world, plan, out, options.replace ?? false);
    if (written && !written.ok) {
      const { code, message } = written.failure;
      const told = code === 'exists' ? message.replace('Replace it', 'Write over it with --replace') : message;
      return refuse({ code: code === 'cancelled' ? 130 : 2, problems: [machineProblem(code, told)] }, json, world);
    }
    const problems = [...found.problems, ...ofFiles(plan.problems, name, options)];
    if (json) {
      await world.say(
        jsonText({ ok: true, ...showData(plan), ...(written ? { files: written.value } : {}), problems }),
      );
    } else {
      const files = written ? `\nWritten: ${written.value.length} files in ${resolve(world.folder, out ?? '')}\n` : '';
      const notes = problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`;
      await world.say(showText(plan, world.columns) + notes + files);
    }
    return 0;
  },
};

/** Which of the files a place in a plan's problem is in: lines are the list's, prices the shelf's. */
function placeOf(at: string): 'list' | 'shelf' | 'pattern' {
  return at.startsWith('line ') ? 'list' : at === 'price' ? 'shelf' : 'pattern';
}

function ofFiles(problems: readonly Problem[], list: string, { pattern, shelf = 'the shelf' }: Options): Problem[] {
  const files = { list, shelf, pattern };
  return problems.flatMap((one) => (one.at === '' ? one : placedIn(files[placeOf(one.at)], [one])));
}

function optionsFrom({
  aim,
  most,
  borderLeast,
  borderGreatest,
  onlyOnShelf,
  allowCustom,
  costBy,
}: Options): ShowOptions {
  return {
    ...(aim === undefined ? {} : { aim }),
    ...(most === undefined ? {} : { most }),
    ...(costBy === undefined ? {} : { by: costBy }),
    range: {
      ...(borderLeast === undefined ? {} : { least: borderLeast }),
      ...(borderGreatest === undefined ? {} : { greatest: borderGreatest }),
    },
    onShelfOnly: onlyOnShelf ?? false,
    allowCustom: allowCustom ?? false,
  };
}

async function writeInto(world: World, plan: ShowPlan, out: string, replace: boolean) {
  const folder = resolve(world.folder, out);
  const made = await makeFolder(folder);
  if (!made.ok) return made;
  const reply = await world.interruptible((signal) =>
    writeTogether(folder, showFiles(plan).map(inBytes), { replace, signal }),
  );
  if (!reply.ok && made.value !== undefined) await removeEmpty(folder, made.value);
  return reply;
}

function inBytes({ name, text }: ShowFile): NamedBytes {
  return { name, bytes: Buffer.from(text, 'utf8') };
}

function readCount(words: string): number {
  const count = /^\d{1,3}$/.test(words) ? Number(words) : NaN;
  if (count >= 1 && count <= MOST_SIZES) return count;
  throw new InvalidArgumentError(`a whole number from 1 to ${MOST_SIZES} is wanted.`);
}

function readBorder(words: string): number {
  const reading = readLength(words, 'mm');
  if (!reading.ok) throw new InvalidArgumentError(`${reading.message}; ${reading.remedy}.`);
  if (reading.bare && reading.mm !== 0) throw new InvalidArgumentError(`say the unit: ${words} in or ${words} mm.`);
  if (reading.mm < 0) throw new InvalidArgumentError('a border can’t be less than nothing.');
  return reading.mm;
}
