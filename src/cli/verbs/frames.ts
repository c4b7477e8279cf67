/** `frames`: which frame of the shelf suits a job, ranked with the reasons. */
import { InvalidArgumentError, Option } from 'commander';
import { findFrames } from '../../core/finding/find-frames';
import type { Job } from '../../core/job/job';
import { good, type Result } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import { foundData, foundText } from '../description/frames';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { understandJob } from '../read-job';
import { findShelf, shelfOption } from '../shelf-option';
import { refuse } from '../refuse';
import type { Verb } from '../verb';
import type { World } from '../world';

/** Frames that are told at length, unless the words ask for another number. */
const USUAL = 3;

interface Options {
  readonly shelf?: string;
  readonly top?: number;
  readonly json?: true;
}

export const frames: Verb<Options> = {
  name: 'frames',
  summary: 'rank the frames of your shelf by how they suit a job',
  more: `The job is laid out in every frame, both ways up, whatever frame it has of its own. Those in which
every border lies in range ("borders": "range" in the job) and all goes in as deep as it is named
come first; of these the one with the evenest border, then with the least board, the lowest price,
that is surest to be deep enough, and by name. Frames made to size stand beside them, with what they
take and cost more. A price that is not known is not counted. resources/shelf.md
tells how a shelf is written. Exit code 0 also where no frame will do.`,
  examples: [
    'npm run -s matwright -- frames resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv',
    'npm run -s matwright -- frames resources/samples/3-nine-linocuts.json --top 1',
    'npm run -s matwright -- frames resources/samples/1-sea-chart.json --shelf resources/shelf.csv --json',
  ],
  takesJob: true,
  options: [
    shelfOption('what you have; a generic list of sizes in the job’s units where it is left out'),
    new Option('--top <number>', `how many frames are told at length (default: ${USUAL}; in JSON all)`).argParser(number), // prettier-ignore
    jsonOption('every frame with borders, evenness, areas, price and reasons, lengths in mm'),
  ],
  async run(world, { shelf: file, top, json = false }, name) {
    const opened = await understandJob(name, world);
    if (!opened.ok) return refuse(opened, json, world);
    const shelf = await shelfFor(file, opened.job, world);
    if (!shelf.ok) return refuse({ code: 2, problems: shelf.problems }, json, world);
    const found = findFrames(opened.job, shelf.value);
    const problems = [...opened.problems, ...shelf.problems, ...found.problems];
    const told = problems.filter(({ severity }) => severity !== 'note');
    const named = { name: file ?? genericName(opened.job), isGeneric: file === undefined };
    await world.say(
      json
        ? jsonText({ ok: true, lengths: 'mm', areas: 'mm2', shelf: named, ...foundData(found, top), problems })
        : foundText(found, { shelf: named.name, top: top ?? USUAL, width: world.columns }),
    );
    if (told.length > 0) world.tell(`\n${problemsText(told, world.columns)}`);
    return 0;
  },
};

async function shelfFor(file: string | undefined, { units }: Job, world: World): Promise<Result<Shelf>> {
  if (file === undefined) return good(startShelf(units === 'in' ? 'inch' : 'metric'));
  return findShelf(file, world);
}

function genericName({ units }: Job): string {
  return `the generic list of ${units === 'in' ? 'inch' : 'metric'} sizes (name your own with --shelf)`;
}

function number(written: string): number {
  const value = Number(written);
  if (Number.isInteger(value) && value > 0 && value <= 10_000) return value;
  throw new InvalidArgumentError('a whole number from 1 to 10000 is wanted.');
}
