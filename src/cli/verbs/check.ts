/** `check`: what is wrong with a job, and what would be right. */
import { bySeverity, isError } from '../../core/problem';
import { pictureFileProblems } from '../../host/picture-problems';
import { jsonOption } from '../options';
import { jsonText, problemsText, tally } from '../print/problems';
import { findJob } from '../read-job';
import { refuse } from '../refuse';
import type { Verb } from '../verb';

export const check: Verb<{ json?: true }> = {
  name: 'check',
  summary: 'say what is wrong with a job, where, and what would be right',
  more: `Each problem has a severity (error: nothing can be cut; warning: look here; note: worth
knowing), the path of the value in the file, a code, and, where they apply, the value,
the limit it passed and a remedy. Only errors make the exit code 1.`,
  examples: [
    'npm run -s matwright -- check resources/samples/1-sea-chart.json',
    'npm run -s matwright -- check --json resources/samples/3-nine-linocuts.json',
    'cat resources/samples/2-fern-cyanotype.json | npm run -s matwright -- check -',
  ],
  takesJob: true,
  options: [jsonOption('"ok" and the list of "problems"')],
  async run(world, { json = false }, name) {
    const found = await findJob(name, world);
    if (!found.ok && found.code === 2) return refuse(found, json, world);
    const problems = bySeverity(
      found.ok ? [...found.problems, ...(await pictureFileProblems(found.job, found.path))] : found.problems,
    );
    if (json) {
      await world.say(jsonText({ ok: found.ok, problems }));
    } else {
      const verdict = problems.some(isError)
        ? 'The job can’t be cut'
        : sound(found.ok && found.job.layers.length === 0);
      const list = problems.length === 0 ? '' : `${problemsText(problems, world.columns)}\n`;
      await world.say(`${list}${verdict}: ${tally(problems)}.\n`);
    }
    return found.ok ? 0 : 1;
  },
};

/** Without a mat there is nothing to cut. */
function sound(isBare: boolean): string {
  return isBare ? 'The picture can be framed, with nothing to cut' : 'The job can be cut';
}
