/** Answers for a job that can't be used, the same for every verb. */
import type { Problem } from '../core/problem';
import { jsonText, problemsText } from './print/problems';
import type { NoJob } from './read-job';
import type { ExitCode, World } from './world';

/** Tells the problems on standard error; a machine gets them as its answer too. */
export async function refuse({ code, problems }: Omit<NoJob, 'ok'>, json: boolean, world: World): Promise<ExitCode> {
  world.tell(problemsText(problems, world.columns));
  if (json) await world.say(jsonText({ ok: false, problems }));
  return code;
}

/** What went wrong on this machine, in the form of a problem. */
export function machineProblem(code: string, message: string): Problem {
  return { code, severity: 'error', at: '', message };
}
