/** Changes a kept list and says what came of it; asks where another program was faster with the same things. */
import type { ListChange, ListWork } from '../../core/kept-list';
import { capital } from '../../core/phrases';
import type { Workbench } from '../workbench';
import type { KeptList, Outcome } from './kept-list.svelte';

/** True where it was done. @param words said then. */
export async function changeKept<T extends object>(
  bench: Workbench,
  list: KeptList<T>,
  change: ListChange<T>,
  words: string | (() => string),
): Promise<boolean> {
  const outcome = await list.change(change, (theirs) => askGoOn(bench, list, theirs));
  await tellOutcome(bench, list, outcome, typeof words === 'string' ? words : words());
  return outcome === 'done';
}

/** As `changeKept`, by what is worked out anew on the list as it is then. */
export async function changeKeptBy<T extends object>(
  bench: Workbench,
  list: KeptList<T>,
  work: ListWork<T>,
  words: string,
): Promise<boolean> {
  const outcome = await list.changeBy(work);
  await tellOutcome(bench, list, outcome, words);
  return outcome === 'done';
}

/** Takes a change of this window back: the last that stands, unless one is named by its number. True where it was done. */
export async function takeBack<T extends object>(
  bench: Workbench,
  list: KeptList<T>,
  { number, words }: { readonly number?: number; readonly words?: string } = {},
): Promise<boolean> {
  const outcome = await list.takeBack((theirs) => askGoOn(bench, list, theirs), number);
  await tellOutcome(bench, list, outcome, words ?? `The last change of ${list.kind.words} was taken back.`);
  return outcome === 'done';
}

/** Begins a list anew beside one that cannot be read. */
export async function beginAnew<T extends object>(bench: Workbench, list: KeptList<T>): Promise<void> {
  const words = `${capital(list.kind.words)} is begun anew; the old file is kept beside it under another name.`;
  await tellOutcome(bench, list, await list.beginAnew(), words);
}

async function askGoOn<T extends object>(
  { dialogs }: Workbench,
  { kind }: KeptList<T>,
  theirs: readonly T[],
): Promise<boolean> {
  const answer = await dialogs.choose({
    title: 'Changed by another window',
    text: `${theirs.length === 1 ? 'This was' : 'These were'} changed in ${kind.words} by another program or window meanwhile, in what you change here. There now: ${theirs.map((one) => toldBy(kind, one)).join('; ')}.`,
    choices: [
      { value: 'stay', label: 'Leave what is there', weight: 'main' },
      { value: 'over', label: 'Write mine over it' },
    ],
  });
  return answer === 'over';
}

async function tellOutcome<T extends object>(
  { notice, dialogs }: Workbench,
  { kind }: KeptList<T>,
  outcome: Outcome,
  words: string,
): Promise<void> {
  if (outcome === 'done') notice.say(words);
  else if (outcome === 'given up') notice.say(`${capital(kind.words)} was left as it is.`);
  else {
    const { failure: text, problems } = outcome;
    await dialogs.tell({ title: `${capital(kind.words)} was not changed`, text, ...(problems ? { problems } : {}) });
  }
}

function toldBy<T extends object>(kind: KeptList<T>['kind'], thing: T): string {
  const more = kind.tell?.(thing) ?? '';
  return more === '' ? quoted(kind.call(thing)) : `${quoted(kind.call(thing))}, ${more}`;
}

export function quoted(name: string): string {
  return `“${name}”`;
}
