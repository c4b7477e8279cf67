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
  const outcome = await list.change(change, (theirs, gone) => askGoOn(bench, list, theirs, gone));
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

/**
 * Takes a change of this window back: the last that stands, unless one is named by its number; where there is none, the last use
 * that was made before this window was there or by another program, once it was said which. True where it was done.
 */
export async function takeBack<T extends object>(
  bench: Workbench,
  list: KeptList<T>,
  { number, words }: { readonly number?: number; readonly words?: string } = {},
): Promise<boolean> {
  const { lastUse } = list;
  if (number === undefined && list.lastChange === undefined && lastUse) return takeUseBack(bench, list, lastUse);
  const outcome = await list.takeBack((theirs, gone) => askGoOn(bench, list, theirs, gone), number);
  await tellOutcome(bench, list, outcome, words ?? `The last change of ${list.kind.words} was taken back.`);
  return outcome === 'done';
}

async function takeUseBack<T extends object>(
  bench: Workbench,
  list: KeptList<T>,
  use: NonNullable<KeptList<T>['lastUse']>,
): Promise<boolean> {
  const answer = use.ok
    ? await bench.dialogs.choose({
        title: 'Take the last use back?',
        text: 'It was made before this window was opened, or by another window or program.',
        lines: use.value.words,
        choices: [
          { value: 'back', label: 'Take it back', weight: 'main' },
          { value: 'not', label: 'Not now' },
        ],
      })
    : 'back';
  if (answer !== 'back') return false;
  const outcome = await list.takeUseBack();
  await tellOutcome(bench, list, outcome, 'What the plan took and put was taken back.');
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
  gone: readonly T[],
): Promise<boolean> {
  const words = (things: readonly T[]) => things.map((one) => toldBy(kind, one)).join('; ');
  const was = (things: readonly T[]) => (things.length === 1 ? 'This was' : 'These were');
  const changed = `${was(theirs)} changed in ${kind.words} by another program or window meanwhile, in what you change here. There now: ${words(theirs)}.`;
  const out = `${was(gone)} taken out of ${kind.words} by another program or window meanwhile: ${words(gone)}.`;
  const isOut = theirs.length === 0;
  const answer = await dialogs.choose({
    title: isOut ? 'Taken out by another window' : 'Changed by another window',
    text: [...(gone.length > 0 ? [out] : []), ...(isOut ? [] : [changed])].join(' '),
    choices: [
      { value: 'stay', label: isOut ? 'Leave it out' : 'Leave what is there', weight: 'main' },
      { value: 'over', label: isOut ? 'Add mine anew' : 'Write mine over it' },
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
