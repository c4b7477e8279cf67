/** `pieces`: what one frame or several are made of: rails, cuts list, weights, sticks of moulding, costs. */
import { Option } from 'commander';
import { cutsListCsv } from '../../core/pieces/cuts-list-csv';
import { piecesOf, type Pieces } from '../../core/pieces/pieces';
import { bad, good, type Problem, type Result } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { showingOf } from '../../core/units';
import { lengthOption } from '../length-option';
import { jsonOption } from '../options';
import { piecesText } from '../print/pieces';
import { jsonText, problemsText } from '../print/problems';
import type { FoundJob } from '../read-job';
import { findJobs, oneByOne } from '../read-jobs';
import { refuse } from '../refuse';
import { findShelf, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';
import type { World } from '../world';

interface Options {
  readonly shelf?: string;
  readonly moulding?: string;
  readonly kerf?: string;
  readonly stick?: string;
  readonly json?: true;
  readonly csv?: true;
}

export const pieces: Verb<Options> = {
  name: 'pieces',
  summary: 'list what frames are made of: rails, sticks, pieces to cut, weights and costs',
  more: `Several jobs may be named; their rails are cut from the same sticks. Sticks are planned where
their length is known, from --stick or from the moulding on the shelf: as few as there can be,
and the answer says whether that is proven. Rails are counted at their long points, with a saw
cut at either end. What has no published density, or no price, is "not counted", never nothing.
Lengths have to say their unit.`,
  examples: [
    'npm run -s matwright -- pieces resources/samples/2-fern-cyanotype.json --stick "9 ft"',
    'npm run -s matwright -- pieces resources/samples/1-sea-chart.json resources/samples/3-nine-linocuts.json --shelf resources/shelf.csv --moulding "Ash stick"',
    'npm run -s matwright -- pieces resources/samples/4-oval-fern.json --csv',
  ],
  takesJob: true,
  takesSeveral: true,
  options: [
    shelfOption('what you have, as comma-separated values: mouldings, boards and glazing with their prices'),
    new Option('--moulding <name>', 'make the frames of this moulding of the shelf in place of the jobs’ own'),
    new Option('--kerf <length>', 'what one saw cut takes (default: "1/8 in", or "3 mm" for a metric job)'),
    new Option('--stick <length>', 'of a stick of moulding (default: that of the shelf)'),
    jsonOption('"frames" and "sticks", lengths in mm, areas in mm², weights in kg'),
    new Option('--csv', 'answer with the cuts list as comma-separated values').conflicts('json'),
  ],
  async run(world, options, first, more) {
    const { json = false } = options;
    const asked = await ask(options, world);
    if (!asked.ok) return refuse({ code: 2, problems: asked.problems }, json, world);
    const found = await findJobs([first, ...more], world);
    if (!found.ok) return refuse(found, json, world);
    const jobs = oneByOne(found.jobs);
    const made = piecesOf({ jobs, ...asked.value });
    if (!made.ok) return refuse({ code: 2, problems: made.problems }, json, world);
    const problems = [...asked.problems, ...found.problems, ...made.problems];
    const told = problems.filter(({ severity }) => severity !== 'note');
    if (told.length > 0) world.tell(`${problemsText(told, world.columns)}\n`);
    await world.say(answer({ made: made.value, notes: made.problems }, jobs, options, problems, world.columns));
    return 0;
  },
};

function answer(
  { made, notes }: { readonly made: Pieces; readonly notes: readonly Problem[] },
  jobs: readonly FoundJob[],
  { json, csv }: Options,
  problems: readonly Problem[],
  width: number,
): string {
  if (json) return jsonText({ ok: true, lengths: 'mm', areas: 'mm²', weights: 'kg', ...made, problems });
  if (csv) return cutsListCsv(made.frames, jobs.map(({ job }) => showingOf(job))); // prettier-ignore
  return piecesText(made, jobs.map(({ job }) => job), notes.filter(({ severity }) => severity === 'note').map(({ message }) => message), width); // prettier-ignore
}

/** No blade is thicker, mm. */
const MOST_KERF = 50;

interface Asked {
  readonly shelf?: Shelf;
  readonly moulding?: string;
  readonly kerf?: number;
  readonly stick?: number;
}

async function ask({ shelf, moulding, kerf, stick }: Options, world: World): Promise<Result<Asked>> {
  const read = shelf === undefined ? good(undefined) : await findShelf(shelf, world);
  const saw = lengthOption('--kerf', kerf, { name: 'What a saw cut takes', least: 0, most: MOST_KERF });
  const long = lengthOption('--stick', stick, { name: 'Length of a stick', least: 0, above: true });
  const problems = [read, saw, long].flatMap((one) => one.problems);
  if (!read.ok || !saw.ok || !long.ok) return bad(problems);
  return good(
    {
      ...(read.value ? { shelf: read.value } : {}),
      ...(moulding === undefined ? {} : { moulding }),
      ...(saw.value === undefined ? {} : { kerf: saw.value }),
      ...(long.value === undefined ? {} : { stick: long.value }),
    },
    problems,
  );
}
