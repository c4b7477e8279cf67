/** `package`: what goes into the frame behind one another, whether it fits, and what is still needed. */
import { Option } from 'commander';
import type { Job } from '../../core/job/job';
import { answerPackage, type PackageAsk } from '../../core/package/answer';
import { bad, bySeverity, good, type Result } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import { packageText } from '../description/package';
import { lengthOption, sizeOption } from '../length-option';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { findJob } from '../read-job';
import { refuse } from '../refuse';
import { findShelf, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';
import type { World } from '../world';

interface Options {
  readonly shelf?: string;
  readonly wallGap?: string;
  readonly rabbet?: string;
  readonly json?: true;
}

export const packageVerb: Verb<Options> = {
  name: 'package',
  summary: 'say what goes into the frame, whether it fits, and what is still needed',
  more: `The stack from the front with what each item may be at least and at most, the depth left free, and
what to change where it doesn't fit; the air before the picture; how a canvas stands out behind and
is held, or lies in a float frame; and a check list for the kind of frame. Clips, screws and panes
are chosen from the shelf; without one, clips of the steps that are generally had. Lengths have to
say their unit.`,
  examples: [
    'npm run -s matwright -- package resources/samples/1-sea-chart.json',
    'npm run -s matwright -- package resources/samples/2-fern-cyanotype.json --rabbet "16 x 20 in" --json',
  ],
  takesJob: true,
  options: [
    shelfOption('a table of what you have: glazing, clips, screws (resources/shelf.md)'),
    new Option('--wall-gap <length>', 'how far the frame’s back is kept off the wall (default: the job’s bumpers)'),
    new Option('--rabbet <size>', 'width x height of the rabbet of the frame in hand, as measured'),
    jsonOption('"stack", "fit", "remedies", "air", "checkList", all lengths in mm'),
  ],
  async run(world, options, name) {
    const { json = false } = options;
    const found = await findJob(name, world);
    if (!found.ok) return refuse(found, json, world);
    const ask = await readAsk(found.job, options, world);
    if (!ask.ok) return refuse({ code: 2, problems: ask.problems }, json, world);
    const answer = answerPackage(found.job, found.layout, ask.value);
    // The answer tells the package's problems with the remedies that the shelf has.
    const others = found.problems.filter(({ code }) => !answer.problems.some((one) => one.code === code));
    const problems = bySeverity([...ask.problems, ...others, ...answer.problems]);
    if (json) {
      await world.say(jsonText({ ok: true, lengths: 'mm', ...answer, problems }));
    } else {
      await world.say(packageText(found.job, answer, world.columns));
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};

async function readAsk(job: Job, { shelf, wallGap, rabbet }: Options, world: World): Promise<Result<PackageAsk>> {
  const gap = lengthOption('--wall-gap', wallGap, { name: 'Distance from the wall', least: 0, most: 500 });
  const measured = sizeOption('--rabbet', rabbet, 'the rabbet');
  const read = await readShelfOr(job, shelf, world);
  const problems = [gap, measured, read].flatMap((one) => one.problems);
  if (!read.ok || !gap.ok || !measured.ok) return bad(problems);
  return good(
    {
      shelf: read.value,
      ...(gap.value === undefined ? {} : { wallGap: gap.value }),
      ...(measured.value ? { measured: measured.value } : {}),
    },
    problems,
  );
}

async function readShelfOr({ units }: Job, file: string | undefined, world: World): Promise<Result<Shelf>> {
  return file === undefined ? good(startShelf(units === 'in' ? 'inch' : 'metric')) : findShelf(file, world);
}
