/** What is done with the things on the shelf; each deed says what it did. */
import type { ListChange } from '../../core/kept-list';
import { KEPT_SHELF } from '../../core/shelf/kept-shelf';
import { counted } from '../../core/phrases';
import { printShelf } from '../../core/shelf/print-shelf';
import { readShelf } from '../../core/shelf/read-shelf';
import type { ShelfItem } from '../../core/shelf/shelf';
import type { Workbench } from '../workbench';
import { changeKept, quoted } from './change-kept';
import { columnsLeft } from './columns-left';
import { writeFile } from './write-file';

const ENDINGS = ['csv', 'txt'] as const;

/** Puts a thing on the shelf, in the place of what it was before it was changed. */
export async function keepItem(bench: Workbench, item: ShelfItem, before?: ShelfItem): Promise<boolean> {
  const { nameOf } = KEPT_SHELF;
  const isRenamed = before !== undefined && nameOf(before) !== nameOf(item);
  const change = {
    keep: [item],
    ...(isRenamed ? { remove: [nameOf(before)] } : {}),
    ...(before ? { of: [nameOf(before)] } : {}),
  };
  return changeKept(bench, bench.shelf, change, `${quoted(item.name)} is on your shelf.`);
}

export async function removeItem(bench: Workbench, item: ShelfItem): Promise<boolean> {
  const answer = await bench.dialogs.choose({
    title: `Take ${quoted(item.name)} off the shelf?`,
    text: 'It goes from your shelf for all jobs. Jobs keep the sizes they have.',
    choices: [
      { value: 'off', label: 'Take it off', weight: 'main' },
      { value: 'stay', label: 'Leave it' },
    ],
  });
  if (answer !== 'off') return false;
  const change = { remove: [KEPT_SHELF.nameOf(item)] };
  return changeKept(bench, bench.shelf, change, `${quoted(item.name)} was taken off your shelf.`);
}

/** Things from a file, in the place of those of the same name or of the whole shelf. */
export async function takeShelfFromFile(bench: Workbench): Promise<void> {
  const { host, dialogs, shelf } = bench;
  const path = await chooseFile(bench);
  if (path === undefined) return;
  const reply = await host.call('readJob', { path });
  const read = reply.ok ? readShelf(reply.value.text) : undefined;
  if (!reply.ok || !read?.ok) {
    const text = reply.ok ? path : reply.failure.message;
    const problems = read && !read.ok ? { problems: read.problems } : {};
    await dialogs.tell({ title: 'This file holds no shelf that can be taken', text, ...problems });
    return;
  }
  const change = await settleWhole(bench, read.value, columnsLeft(read.problems));
  if (change === undefined) return;
  const done = await changeKept(
    bench,
    shelf,
    change,
    () =>
      `Taken from ${path}: ${counted(read.value.length, 'thing')}. Your shelf now holds ${shelf.list.length}.${columnsLeft(read.problems)}`,
  );
  if (done && read.problems.length > 0) {
    await dialogs.tell({ title: 'Taken, but look here', text: path, problems: read.problems });
  }
}

/** Asks whether what is there stays; undefined when the user changed their mind. @param left columns that are not taken, in words. */
async function settleWhole(
  { shelf, dialogs }: Workbench,
  given: readonly ShelfItem[],
  left: string,
): Promise<ListChange<ShelfItem> | undefined> {
  const names = new Set(given.map(KEPT_SHELF.nameOf));
  const others = shelf.list.filter((item) => !names.has(KEPT_SHELF.nameOf(item)));
  if (others.length === 0) return { keep: given };
  const whose = shelf.isKept ? 'of your shelf' : 'of the generic shelf';
  const answer = await dialogs.choose({
    title: 'What happens to the things that are not in the file?',
    text: `${counted(others.length, 'thing')} ${whose} ${others.length === 1 ? 'is' : 'are'} not in the file: ${others
      .slice(0, 6)
      .map(({ name }) => name)
      .join(', ')}${others.length > 6 ? ' …' : '.'}${left}`,
    choices: [
      { value: 'stay', label: 'They stay', weight: 'main' },
      { value: 'go', label: 'They go' },
      { value: 'none', label: 'Take nothing' },
    ],
  });
  if (answer === 'stay') return { keep: given };
  return answer === 'go' ? { keep: given, remove: others.map(KEPT_SHELF.nameOf) } : undefined;
}

async function chooseFile({ host, info, dialogs }: Workbench): Promise<string | undefined> {
  const title = 'Take a shelf from a file';
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Take it', endings: ENDINGS });
  const reply = await host.call('pickJob', { title, of: 'table' });
  return reply.ok ? reply.value.path : undefined;
}

export function writeShelfToFile(bench: Workbench): Promise<void> {
  const { shelf, host } = bench;
  const text = printShelf(shelf.list);
  return writeFile(bench, {
    title: 'Write the shelf to a file',
    name: 'shelf.csv',
    ending: 'csv',
    shown: ENDINGS,
    write: (path, replace) => host.call('saveJob', { path, text, ...(replace ? { replace } : {}) }),
    done: 'Your shelf was written to',
    failed: 'The shelf could not be written',
  });
}
