/** A list that the user keeps, as the host has it: read anew before a change that another program was faster with. */
import type { HostClient, KeptFile, KeptListName, Reply } from '../../bridge';
import { changeList, reversed, settle, type KeptThings, type ListChange, type ListWork } from '../../core/kept-list';
import type { Problem, Result } from '../../core/problem';
import { capital } from '../../core/phrases';
import { NoAnswer } from '../host-client';

/** What is particular to one of the lists. */
export interface ListKind<T> extends KeptThings<T> {
  readonly name: KeptListName;
  /** What messages call a thing. */
  readonly call: (thing: T) => string;
  /** What a thing is, in a line, where its name does not tell two of them apart. */
  readonly tell?: (thing: T) => string;
  /** As messages call it: "the list of cutters". */
  readonly words: string;
  /** What it holds while nothing was ever kept. */
  readonly start: () => readonly T[];
  readonly read: (text: string) => Result<readonly T[]>;
  readonly print: (things: readonly T[]) => string;
}

/** Done, given up by the user, or why not. */
export type Outcome = 'done' | 'given up' | { readonly failure: string; readonly problems?: readonly Problem[] };

/** Asked where another program has changed the very things that a change would; true: go on. */
type GoOn<T> = (theirs: readonly T[]) => Promise<boolean>;

/** Another is faster than this only once or twice in a row. */
const MOST_TRIES = 8;

export class KeptList<T extends object> {
  #kept = $state.raw<readonly T[]>();
  readonly list = $derived.by<readonly T[]>(() => this.#kept ?? this.kind.start());
  /** True once the user has kept anything. */
  readonly isKept = $derived(this.#kept !== undefined);
  /** Why the list cannot be read; it is then left as it is. */
  damage = $state.raw<string>();
  /** What would take the last change back. */
  #takesBack = $state.raw<(goOn: GoOn<T>) => Promise<Outcome>>();
  readonly canTakeBack = $derived(this.#takesBack !== undefined);
  /** Goes up with every change of this window. */
  changes = 0;
  #stamp: string | undefined;

  constructor(
    private readonly host: HostClient,
    readonly kind: ListKind<T>,
  ) {}

  async load(): Promise<void> {
    this.#take(await this.#asked(() => this.host.call('readKept', { list: this.kind.name })));
  }

  /** Changes the list on disk. */
  async change(asked: ListChange<T>, goOn: GoOn<T>): Promise<Outcome> {
    let change = asked;
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      const before = this.list;
      const saved = await this.#trySave(changeList(before, change, this.kind));
      if (saved === 'saved') {
        const back = reversed(before, change, this.kind);
        this.#takesBack = (askGoOn) => this.change(back, askGoOn);
        this.changes += 1;
        return 'done';
      }
      if (saved !== 'late') return saved;
      const settled = settle(before, this.list, change, this.kind);
      if (settled.conflicts.length > 0 && !(await goOn(settled.conflicts))) return 'given up';
      change = settled.change;
    }
    return this.#tooOften();
  }

  /**
   * Changes the list on disk by what is worked out anew on each list that is found there, so that two windows that take of
   * one row both count; its problems are the failure, and nothing is changed then.
   */
  async changeBy(work: ListWork<T>): Promise<Outcome> {
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      const worked = work(this.list);
      if (!worked.ok) return { failure: `${capital(this.kind.words)} is left as it is.`, problems: worked.problems };
      const saved = await this.#trySave(worked.value.list);
      if (saved === 'saved') {
        this.#takesBack = () => this.changeBy(worked.value.back);
        this.changes += 1;
        return 'done';
      }
      if (saved !== 'late') return saved;
    }
    return this.#tooOften();
  }

  /** Takes the last change of this window back; what others changed since is asked about as with any change. */
  async takeBack(goOn: GoOn<T>): Promise<Outcome> {
    return this.#takesBack?.(goOn) ?? 'done';
  }

  /** Begins the list anew; what lay there is kept beside it under another name. */
  async beginAnew(): Promise<Outcome> {
    const reply = await this.#asked(() => this.#save({ text: this.kind.print(this.kind.start()), setAside: true }));
    if (!reply.ok) return { failure: reply.failure.message };
    this.#take(reply);
    return 'done';
  }

  /** `late`: another program was faster; what it left is loaded. */
  async #trySave(list: readonly T[]): Promise<'saved' | 'late' | { readonly failure: string }> {
    if (this.damage !== undefined) return { failure: this.damage };
    const stamp = this.#stamp === undefined ? {} : { stamp: this.#stamp };
    const reply = await this.#asked(() => this.#save({ text: this.kind.print(list), ...stamp }));
    if (reply.ok) this.#take(reply);
    else if (reply.failure.code !== 'changed-on-disk') return { failure: reply.failure.message };
    else await this.load();
    return reply.ok ? 'saved' : 'late';
  }

  #tooOften(): Outcome {
    return { failure: `Another program goes on changing ${this.kind.words}; close it and try again.` };
  }

  #save(request: { readonly text: string; readonly stamp?: string; readonly setAside?: boolean }) {
    return this.host.call('saveKept', { list: this.kind.name, ...request });
  }

  #take(reply: Reply<KeptFile>): void {
    if (!reply.ok) {
      this.damage = reply.failure.message;
      return;
    }
    const { text, stamp, path } = reply.value;
    const read = text === undefined ? undefined : this.kind.read(text);
    this.damage = read?.ok === false ? `${path}: ${read.problems[0]?.message ?? 'it is no list'}` : undefined;
    this.#kept = read === undefined ? undefined : read.ok ? read.value : [];
    this.#stamp = stamp;
  }

  async #asked(call: () => Promise<Reply<KeptFile>>): Promise<Reply<KeptFile>> {
    try {
      return await call();
    } catch (fault) {
      if (!(fault instanceof NoAnswer)) throw fault;
      return {
        ok: false,
        failure: { code: 'failed', message: `${capital(this.kind.words)} is out of reach: ${fault.message}.` },
      };
    }
  }
}
