/** Turning, by hand or by key, what is chosen or the whole mat: one step of the history, and a word on what came of it. */
import { MOTIONS, type MotionName } from '../../core/job/motion';
import { turnItem } from '../../core/job/turn-in-job';
import type { WrittenJob } from '../../core/job/written';
import { turnJob } from '../../core/layout/turn-job';
import { isError, type Result } from '../../core/problem';
import { arrangementOf } from '../edits/tree';
import type { Workbench } from '../workbench';

type Bench = Pick<Workbench, 'session' | 'notice'>;

/** Turns the window, spread or group at a path. */
export function turnAt(bench: Bench, at: string, name: MotionName): void {
  const written = bench.session.committed;
  keep(bench, turnItem(written, arrangementOf(written), at, MOTIONS[name]), MOTIONS[name].words);
}

/** Turns all there is; what is held by hand is taken from the layout. */
export function turnMat(bench: Bench, name: MotionName): void {
  const { session, notice } = bench;
  const { picture, committed: written } = session;
  const { words } = MOTIONS[name];
  if (!picture || picture.stale) return notice.fail('Mend the errors first: only what can be laid out can be turned.');
  const moved = turnJob({ written, job: picture.job }, picture.layout, MOTIONS[name]);
  keep(bench, moved, `${words}, the whole mat`);
  // What was chosen may stand elsewhere in its group now.
  if (moved.ok) session.selected = undefined;
}

function keep({ session, notice }: Bench, moved: Result<WrittenJob>, label: string): void {
  const told = moved.problems.filter((problem) => moved.ok || isError(problem)).map(({ message }) => message);
  if (!moved.ok) return notice.fail(told.join(' '));
  if (JSON.stringify(moved.value) === JSON.stringify(session.committed)) {
    return notice.say(`${label}: it is the same turned so; nothing changes.`);
  }
  session.replace(moved.value, label);
  notice.say([`${label}: done.`, ...told].join(' '));
}
