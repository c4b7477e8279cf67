/** `pieces`: what one frame or several are made of: rails, cuts list, weights, sticks of moulding, costs. */
import { Option } from 'commander';
import { cutsListCsv } from '../../core/pieces/cuts-list-csv';
import { piecesOf, type Pieces } from '../../core/pieces/pieces';
import { bad, good, type Problem, type Result } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { readLength, showingOf } from '../../core/units';
import { jsonOption } from '../options';
import { piecesText } from '../print/pieces';
import { jsonText, problemsText } from '../print/problems';
import type { FoundJob } from '../read-job';
import { findJobs } from '../read-jobs';
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
    const made = piecesOf({ jobs: found.jobs, ...asked.value });
    if (!made.ok) return refuse({ code: 2, problems: made.problems }, json, world);
    const problems = [...asked.problems, ...found.problems, ...made.problems];
    const told = problems.filter(({ severity }) => severity !== 'note');
    if (told.length > 0) world.tell(`${problemsText(told, world.columns)}\n`);
    await world.say(answer({ made: made.value, notes: made.problems }, found.jobs, options, problems, world.columns));
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

interface Asked {
  readonly shelf?: Shelf;
  readonly moulding?: string;
  readonly kerf?: number;
  readonly stick?: number;
}

async function ask({ shelf, moulding, kerf, stick }: Options, world: World): Promise<Result<Asked>> {
  const read = shelf === undefined ? good(undefined) : await findShelf(shelf, world);
  const lengths = [lengthOption('kerf', kerf, true), lengthOption('stick', stick, false)];
  const problems = [...read.problems, ...lengths.flatMap((one) => one.problems)];
  if (!read.ok || lengths.some(({ ok }) => !ok)) return bad(problems);
  const values = Object.assign({}, ...lengths.map((one) => (one.ok ? one.value : {}))) as Pick<Asked, 'kerf' | 'stick'>;
  return good(
    { ...(read.value ? { shelf: read.value } : {}), ...(moulding === undefined ? {} : { moulding }), ...values },
    problems,
  );
}

/** A length that says its unit; nothing where none is written. */
function lengthOption(
  name: 'kerf' | 'stick',
  written: string | undefined,
  mayBeNothing: boolean,
): Result<Partial<Asked>> {
  if (written === undefined) return good({});
  const reading = readLength(written, 'mm');
  const isRight =
    reading.ok && reading.mm >= 0 && (mayBeNothing || reading.mm > 0) && (!reading.bare || reading.mm === 0);
  if (isRight) return good({ [name]: reading.mm });
  const remedy = `a length ${mayBeNothing ? '' : 'above nothing '}with its unit, such as ${name === 'kerf' ? '"1/8 in" or "3 mm"' : '"10 ft" or "3000 mm"'}`;
  const why = reading.ok ? `“${written.slice(0, 40)}” will not do` : reading.message;
  return bad([{ code: 'length-unreadable', severity: 'error', at: `--${name}`, message: `--${name}: ${why}; write ${remedy}.`, value: written.slice(0, 40), remedy }]); // prettier-ignore
}
