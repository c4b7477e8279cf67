/** What is done with the job's cutter and the list of kept ones; each says what it did. */
import { sameCutter } from '../../core/job/kept-cutters';
import { checkCutters } from '../../core/job/cutter-list';
import type { WrittenCutter } from '../../core/job/written-cutter';
import { isError } from '../../core/problem';
import { sayUnits } from '../edits/units';
import type { Workbench } from '../workbench';
import { changeKept, quoted } from './change-kept';

/** The job's own cutter with its units said, as it would stand in the list. */
export function ownCutter({ session }: Workbench): WrittenCutter | undefined {
  const cutter = session.written.cutting?.cutter;
  return cutter && sayUnits(cutter, session.units);
}

/** Copies a cutter's measures into the job. */
export function cutWith({ session }: Workbench, cutter: WrittenCutter | undefined): void {
  session.edit(
    [{ at: 'cutting.cutter', value: cutter }],
    cutter ? `Cut with ${cutter.name}` : 'Cut with no cutter said',
  );
}

/** Puts the job's cutter into the list. */
export async function keepCutter(bench: Workbench): Promise<void> {
  const { cutters, dialogs } = bench;
  const cutter = ownCutter(bench);
  if (!cutter) return;
  const wrong = checkCutters([cutter], '').problems.filter(isError);
  if (wrong.length > 0) {
    await dialogs.tell({ title: 'The cutter cannot be kept yet', text: 'Mend this first:', problems: wrong });
    return;
  }
  const kept = cutters.list.find(({ name }) => name === cutter.name);
  if (kept && !sameCutter(kept, cutter) && !(await mayWriteOver(bench, cutter.name))) return;
  await changeKept(bench, cutters, { keep: [cutter] }, `${quoted(cutter.name)} is kept in your list of cutters.`);
}

async function mayWriteOver({ dialogs }: Workbench, name: string): Promise<boolean> {
  const answer = await dialogs.choose({
    title: 'Change the kept cutter?',
    text: `${quoted(name)} is in your list with other measures. They would be replaced by those of this job.`,
    choices: [
      { value: 'over', label: 'Change the kept one', weight: 'main' },
      { value: 'stay', label: 'Leave it' },
    ],
  });
  return answer === 'over';
}

export async function removeCutter(bench: Workbench, name: string): Promise<void> {
  const answer = await bench.dialogs.choose({
    title: 'Take the cutter out of the list?',
    text: `${quoted(name)} goes from your list of cutters. Jobs that were cut with it keep its measures.`,
    choices: [
      { value: 'out', label: 'Take it out', weight: 'main' },
      { value: 'stay', label: 'Leave it' },
    ],
  });
  if (answer !== 'out') return;
  const words = `${quoted(name)} was taken out of your list of cutters; this job keeps its measures.`;
  await changeKept(bench, bench.cutters, { remove: [name] }, words);
}
