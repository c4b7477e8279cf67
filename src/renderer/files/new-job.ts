/** New jobs: in inches, in millimetres, or from one of the samples. */
import { tick } from 'svelte';
import { FORMAT, VERSION, type WrittenJob } from '../../core/job/written';
import type { Workbench } from '../workbench';
import { focusRegion } from '../commands/regions';
import { readText } from './read-text';
import { mayLeave } from './unsaved';

/** What a new job starts from: one picture and a frame around it, in values of its own system of units. */
export function emptyJob(units: 'in' | 'mm'): WrittenJob {
  const head = { format: FORMAT, version: VERSION, units } as const;
  return units === 'in'
    ? { ...head, pictures: [{ size: '8 x 10' }], frame: { size: '11 x 14' } }
    : { ...head, pictures: [{ size: '200 x 250' }], frame: { size: '300 x 400' } };
}

export async function newJob(bench: Workbench): Promise<void> {
  if (!(await mayLeave(bench))) return;
  const units = await bench.dialogs.choose({
    title: 'A new job',
    text: 'Which unit do you measure in? Lengths without a unit will be in it; any other unit can be written out.',
    choices: [
      { value: 'in', label: 'Inches', weight: 'main' },
      { value: 'mm', label: 'Millimetres' },
      { value: 'stay', label: 'Not now' },
    ],
  });
  if (units === 'in' || units === 'mm')
    startFromDialog(bench, emptyJob(units), `A new job in ${units === 'in' ? 'inches' : 'millimetres'}.`);
}

export async function chooseSample(bench: Workbench): Promise<void> {
  if (!(await mayLeave(bench))) return;
  const reply = await bench.host.call('samples', {});
  if (!reply.ok) return bench.notice.fail(reply.failure.message);
  const name = await bench.dialogs.choose({
    title: 'Sample jobs',
    text: 'Each opens as a job of your own; the sample stays as it is.',
    listed: reply.value.map((sample) => ({ value: sample.name, label: sample.title, ...noteOf(sample.text) })),
    choices: [{ value: '', label: 'Not now' }],
  });
  const sample = reply.value.find((each) => each.name === name);
  const read = sample && readText(sample.text);
  if (sample && read?.ok) startFromDialog(bench, read.written, `Opened the sample "${sample.title}".`);
}

/** A sample's own notes, to tell it by. */
function noteOf(text: string): { readonly note?: string } {
  const read = readText(text);
  return read.ok && read.written.notes !== undefined ? { note: read.written.notes } : {};
}

/** The dialog gives the focus back to what opened it; one wants to go on with the picture. */
function startFromDialog(bench: Workbench, written: WrittenJob, said: string): void {
  start(bench, written, said);
  void tick().then(() => focusRegion('panel'));
}

/** Begins with a job that is in no file yet. */
export function start({ session, file, look, stage, notice }: Workbench, written: WrittenJob, said: string): void {
  session.start(written);
  file.startNew();
  look.startJob();
  stage.fit();
  notice.say(said);
}
