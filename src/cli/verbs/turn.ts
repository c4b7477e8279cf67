/** `turn`: a job, or a window or group of it, turned by a quarter or turned over, as a job file. */
import { resolve } from 'node:path';
import { Option } from 'commander';
import { MOTIONS, type MotionName } from '../../core/job/motion';
import { readJob } from '../../core/job/read';
import { printJob } from '../../core/job/text';
import { turnItem } from '../../core/job/turn-in-job';
import type { WrittenJob } from '../../core/job/written';
import { layOut } from '../../core/layout/lay-out';
import { turnJob } from '../../core/layout/turn-job';
import { isError, type Problem, type Result } from '../../core/problem';
import { saveJob } from '../../host/job-files';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { findJob, type FoundJob } from '../read-job';
import { machineProblem, refuse } from '../refuse';
import type { Verb } from '../verb';
import type { World } from '../world';

const MIRRORS = ['left-right', 'top-bottom'] as const satisfies readonly MotionName[];

interface Options {
  readonly left?: true;
  readonly right?: true;
  readonly mirror?: (typeof MIRRORS)[number];
  readonly item?: string;
  readonly out?: string;
  readonly replace?: true;
  readonly json?: true;
}

export const turn: Verb<Options> = {
  name: 'turn',
  summary: 'turn a job, or a window or group of it, a quarter round or over',
  more: `The answer is the job's file, with all that the motion leaves alone in the words it was
written in. Pictures turn with their windows. Turned over are only the openings: a sheet of
paper can't be. A rule that weights the bottom gives way to the same borders by hand, which
is told. What can't be turned is refused with what would do.`,
  examples: [
    'npm run -s matwright -- turn resources/samples/1-sea-chart.json',
    'npm run -s matwright -- turn resources/samples/1-sea-chart.json --right --out turned.json',
    'npm run -s matwright -- turn resources/samples/3-nine-linocuts.json --mirror top-bottom --item windows',
  ],
  takesJob: true,
  options: [
    new Option('--left', 'a quarter anticlockwise, as it hangs (what is done when nothing is said)'),
    new Option('--right', 'a quarter clockwise').conflicts(['left', 'mirror']),
    new Option('--mirror <way>', 'over: left for right, or top for bottom').choices(MIRRORS).conflicts('left'),
    new Option('--item <path>', 'only the window or group at this path, such as windows.items[1] or free[0]'),
    new Option('--out <file>', 'where to write the job (default: standard output)'),
    new Option('--replace', 'write over a file of that name; without it none is ever touched'),
    jsonOption('the turned "job", and the "problems" it has'),
  ],
  async run(world, options, name) {
    const { json = false, left, right, mirror } = options;
    const found = await findJob(name, world);
    if (!found.ok) return refuse(found, json, world);
    const moved = move(found, mirror ?? (right && !left ? 'right' : 'left'), options.item);
    if (!moved.ok) {
      const isMisuse = moved.problems.some(({ code }) => code === 'item-unknown');
      return refuse({ code: isMisuse ? 2 : 1, problems: moved.problems }, json, world);
    }
    const after = problemsAfter(moved.value);
    const saved = options.out === undefined ? undefined : await save(world, options.out, moved.value, options);
    if (saved) return refuse({ code: 2, problems: [saved] }, json, world);
    const isWrong = after.some(isError);
    const problems = [...moved.problems, ...after];
    const told = [...moved.problems, ...after.filter(({ severity }) => severity !== 'note')];
    if (told.length > 0) world.tell(`${problemsText(told, world.columns)}\n`);
    await world.say(json ? jsonText({ ok: !isWrong, job: moved.value, problems }) : answer(moved.value, options.out));
    return isWrong ? 1 : 0;
  },
};

function move({ written, job, layout }: FoundJob, motion: MotionName, item: string | undefined): Result<WrittenJob> {
  if (item === undefined) return turnJob({ written, job }, layout, MOTIONS[motion]);
  return turnItem(written, written.windows ?? job.impliedWindows, item, MOTIONS[motion]);
}

/** What the turned job has against it: a group that no longer fits its frame, say. */
function problemsAfter(written: WrittenJob): readonly Problem[] {
  const opened = readJob(written);
  const layout = opened.ok ? layOut(opened.value.job) : undefined;
  return [...opened.problems, ...(layout?.problems ?? [])];
}

function answer(written: WrittenJob, out: string | undefined): string {
  return out === undefined ? printJob(written) : `The turned job is in ${out}.\n`;
}

async function save(
  world: World,
  out: string,
  written: WrittenJob,
  { replace }: Options,
): Promise<Problem | undefined> {
  const path = resolve(world.folder, out);
  const saved = await saveJob({ path, text: printJob(written), replace: replace ?? false });
  if (saved.ok) return undefined;
  const { code, message } = saved.failure;
  return machineProblem(code, message.replace('Replace it', 'Write over it with --replace'));
}
