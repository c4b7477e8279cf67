/** Asks about unsaved work before another job takes its place. */
import type { Workbench } from '../workbench';
import { saveJob } from './save-job';

/** True when the job on the screen may go: it was saved, is saved now, or is given up. */
export async function mayLeave(bench: Workbench): Promise<boolean> {
  if (!bench.file.isDirty) return true;
  const answer = await bench.dialogs.choose({
    title: 'Save the changes first?',
    text: `"${bench.session.written.title ?? 'Untitled'}" has changes that are in no file.`,
    choices: [
      { value: 'save', label: 'Save', weight: 'main' },
      { value: 'leave', label: 'Go on without saving' },
      { value: 'stay', label: 'Stay here' },
    ],
  });
  if (answer === 'save') return saveJob(bench);
  return answer === 'leave';
}
