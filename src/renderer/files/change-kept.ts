/** Changes a kept list and says what came of it; asks where another program was faster with the same things. */
import type { ListChange } from '../../core/kept-list';
import { capital } from '../fields/words';
import type { Workbench } from '../workbench';
import type { KeptList, Outcome } from './kept-list.svelte';

/** True where it was done. @param words said then. */
export async function changeKept<T extends { readonly name: string }>(
  bench: Workbench,
  list: KeptList<T>,
  change: ListChange<T>,
  words: string | (() => string),
): Promise<boolean> {
  const outcome = await list.change(change, (theirs) => askGoOn(bench, list, theirs));
  await tellOutcome(bench, list, outcome, typeof words === 'string' ? words : words());
  return outcome === 'done';
}

/** Begins a list anew beside one that cannot be read. */
export async function beginAnew<T>(bench: Workbench, list: KeptList<T>): Promise<void> {
  const words = `${capital(list.kind.words)} is begun anew; the old file is kept beside it under another name.`;
  await tellOutcome(bench, list, await list.beginAnew(), words);
}

async function askGoOn<T extends { readonly name: string }>(
  { dialogs }: Workbench,
  { kind }: KeptList<T>,
  theirs: readonly T[],
): Promise<boolean> {
  const answer = await dialogs.choose({
    title: 'Changed by another window',
    text: `${theirs.map(({ name }) => quoted(name)).join(', ')} ${theirs.length === 1 ? 'was' : 'were'} changed in ${kind.words} by another program or window meanwhile.`,
    choices: [
      { value: 'stay', label: 'Leave what is there', weight: 'main' },
      { value: 'over', label: 'Go on all the same' },
    ],
  });
  return answer === 'over';
}

async function tellOutcome<T>(
  { notice, dialogs }: Workbench,
  { kind }: KeptList<T>,
  outcome: Outcome,
  words: string,
): Promise<void> {
  if (outcome === 'done') notice.say(words);
  else if (outcome === 'given up') notice.say(`${capital(kind.words)} was left as it is.`);
  else await dialogs.tell({ title: `${capital(kind.words)} was not changed`, text: outcome.failure });
}

export function quoted(name: string): string {
  return `“${name}”`;
}
