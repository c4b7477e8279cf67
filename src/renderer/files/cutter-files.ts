/** Cutters from a file into the list, and the list into a file, for another bench or another program. */
import { sameCutter, type Cutters } from '../../core/job/kept-cutters';
import { parseCutters, printCutters } from '../../core/job/cutter-list';
import type { Workbench } from '../workbench';
import { JOB_ENDINGS } from './endings';
import { changeKept, quoted } from './change-kept';
import { writeFile } from './write-file';

export async function takeFromFile(bench: Workbench): Promise<void> {
  const { host, dialogs, cutters } = bench;
  const path = await chooseFile(bench);
  if (path === undefined) return;
  const reply = await host.call('readJob', { path });
  const read = reply.ok ? parseCutters(reply.value.text) : undefined;
  if (!reply.ok || !read?.ok) {
    const text = reply.ok ? path : reply.failure.message;
    const problems = read && !read.ok ? { problems: read.problems } : {};
    await dialogs.tell({ title: 'This file holds no cutters that can be taken', text, ...problems });
    return;
  }
  const wanted = await settleNames(bench, read.value);
  if (wanted === undefined) return;
  const before = cutters.list.length;
  await changeKept(bench, cutters, { keep: wanted }, () => {
    const added = cutters.list.length - before;
    return `Taken from ${path}: ${added} new in your list of cutters, ${wanted.length - added} there already.`;
  });
}

/** Asks once for all that are in the list with other measures; undefined when the user changed their mind. */
async function settleNames({ cutters, dialogs }: Workbench, given: Cutters): Promise<Cutters | undefined> {
  const differ = given.filter((cutter) => {
    const kept = cutters.list.find(({ name }) => name === cutter.name);
    return kept && !sameCutter(kept, cutter);
  });
  if (differ.length === 0) return given;
  const answer = await dialogs.choose({
    title: 'In your list with other measures',
    text: `${differ.map(({ name }) => quoted(name)).join(', ')}: whose measures are to be kept?`,
    choices: [
      { value: 'list', label: "Your list's", weight: 'main' },
      { value: 'file', label: "The file's" },
      { value: 'none', label: 'Take nothing' },
    ],
  });
  if (answer === 'file') return given;
  return answer === 'list' ? given.filter((cutter) => !differ.includes(cutter)) : undefined;
}

async function chooseFile({ host, info, dialogs }: Workbench): Promise<string | undefined> {
  const title = 'Take cutters from a file';
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Take them', endings: JOB_ENDINGS });
  const reply = await host.call('pickJob', { title });
  return reply.ok ? reply.value.path : undefined;
}

export function writeToFile(bench: Workbench): Promise<void> {
  const { cutters, host } = bench;
  const text = printCutters(cutters.list);
  return writeFile(bench, {
    title: 'Write the list of cutters to a file',
    name: 'cutters.json',
    ending: 'json',
    shown: JOB_ENDINGS,
    write: (path, replace) => host.call('saveJob', { path, text, ...(replace ? { replace } : {}) }),
    done: 'Your list of cutters was written to',
    failed: 'The list could not be written',
  });
}
