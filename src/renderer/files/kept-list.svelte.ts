/** A list that the user keeps, as the host has it: read anew before a change that another program was faster with. */
import type { HostCalls, HostClient, KeptFile, KeptListName, Reply } from '../../bridge';
import {
  changeList,
  goneMeanwhile,
  reversed,
  settle,
  type KeptThings,
  type ListChange,
  type ListWork,
  type Worked,
  type Written,
} from '../../core/kept-list';
import { good, type Problem, type Result } from '../../core/problem';
import { capital } from '../../core/phrases';
import { NO_LINES, type RemovedLines } from '../../core/tables/removed-lines';
import { NoAnswer } from '../host-client';

/** A list as the text of its file, and the lines that went out of it. */
export interface WrittenList {
  readonly text: string;
  readonly removed: RemovedLines;
}

/** How a changed list is written into a text. */
export interface WriteHints {
  /** Lines that may stand again as they stood before. */
  readonly known: RemovedLines;
  /** New names of things to those that they had. */
  readonly were?: ReadonlyMap<string, string>;
}

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
  /** Of a file that may hold more than is read of it: writes the changed list into its text; unless there, it is printed anew. */
  readonly write?: (text: string, things: readonly T[], hints: WriteHints) => Result<WrittenList>;
  /** Of one that is used up by and by: reads the record of its last use. */
  readonly readUse?: (record: string) => Result<KeptUse<T>>;
}

/** The last use of a list, by whichever window or program, as it is kept beside it. */
export interface KeptUse<T> extends Written {
  /** What was done, in lines. */
  readonly words: readonly string[];
  /** Takes it back. */
  readonly back: ListWork<T>;
}

/** Given up by the user, or why not. */
type NotDone = 'given up' | { readonly failure: string; readonly problems?: readonly Problem[] };
export type Outcome = 'done' | NotDone;

/** Asked where another program has changed the very things that a change would, or has taken them out; true: go on. */
type GoOn<T> = (theirs: readonly T[], gone: readonly T[]) => Promise<boolean>;

/** A change that was made, and what takes it back. */
interface Made<T> {
  readonly back: (goOn: GoOn<T>) => Promise<Made<T> | NotDone>;
  /** The record that was kept of it. */
  readonly record?: string;
}

/** What was written, and over which text; undefined: there was none. */
interface Saved extends WrittenList {
  readonly over?: string;
  /** The record that was kept with it, and over which. */
  readonly record?: string;
  readonly recordOver?: string;
}

interface Noted<T> extends Made<T> {
  readonly number: number;
}

/** Another is faster than this only once or twice in a row. */
const MOST_TRIES = 8;

export class KeptList<T extends object> {
  #kept = $state.raw<readonly T[]>();
  readonly list = $derived.by<readonly T[]>(() => this.#kept ?? this.kind.start());
  /** True once the user has kept anything. */
  readonly isKept = $derived(this.#kept !== undefined);
  /** Why the list cannot be read; it is then left as it is. */
  damage = $state.raw<string>();
  /** What this window has changed and not taken back, the last at the end. */
  #changes = $state.raw<readonly Noted<T>[]>([]);
  /** The record of the last use as it lies there. */
  #record = $state.raw<string>();
  /**
   * The last use of the list that is none of this window's changes: of an earlier start, or by another program. Undefined also
   * where the record is of a use that was never made.
   */
  readonly lastUse = $derived.by<Result<KeptUse<T>> | undefined>(() => {
    const record = this.#record;
    if (record === undefined || this.#changes.some((one) => one.record === record)) return undefined;
    const read = this.kind.readUse?.(record);
    return read?.ok && read.value.before === this.#stamp ? undefined : read;
  });
  readonly canTakeBack = $derived(this.#changes.length > 0 || this.lastUse !== undefined);
  /** Number of the last change of this window that stands. */
  readonly lastChange = $derived(this.#changes.at(-1)?.number);
  #count = 0;
  #text: string | undefined;
  #stamp = $state.raw<string>();

  constructor(
    private readonly host: HostClient,
    readonly kind: ListKind<T>,
  ) {}

  async load(): Promise<void> {
    this.#take(await this.#asked(() => this.host.call('readKept', { list: this.kind.name })));
  }

  /** Changes the list on disk. */
  async change(change: ListChange<T>, goOn: GoOn<T>): Promise<Outcome> {
    return this.#note(await this.#change(change, this.list, goOn));
  }

  /**
   * Changes the list on disk by what is worked out anew on each list that is found there, so that two windows that take of
   * one row both count; its problems are the failure, and nothing is changed then.
   */
  async changeBy(work: ListWork<T>): Promise<Outcome> {
    return this.#note(await this.#changeBy(work));
  }

  /** Whether a change of this window was not taken back yet. */
  stands(number: number): boolean {
    return this.#changes.some((one) => one.number === number);
  }

  /**
   * Takes a change of this window back, and with each further call the one before it; what others changed since stays, and
   * is asked about where it is the very same.
   *
   * @param number unless given, of the last that stands.
   */
  async takeBack(goOn: GoOn<T>, number = this.lastChange): Promise<Outcome> {
    const change = this.#changes.find((one) => one.number === number);
    if (!change) return 'given up';
    const made = await change.back(goOn);
    if (!isMade(made)) return made;
    this.#changes = this.#changes.filter((one) => one.number !== number);
    return 'done';
  }

  /** Takes the last use back that was made before this window was there, or by another program. */
  async takeUseBack(): Promise<Outcome> {
    const [record, use] = [this.#record, this.lastUse];
    if (record === undefined || !use) return 'given up';
    if (!use.ok) return this.#leftAsIs(use.problems);
    const { removed, back } = use.value;
    const made = await this.#changeBy(back, { text: '', removed, record });
    return isMade(made) ? 'done' : made;
  }

  /** Begins the list anew; what lay there is kept beside it under another name. */
  async beginAnew(): Promise<Outcome> {
    const reply = await this.#asked(() => this.#save({ text: this.kind.print(this.kind.start()), setAside: true }));
    if (!reply.ok) return { failure: reply.failure.message };
    this.#take(reply);
    // They were made to a list that is no longer there.
    this.#changes = [];
    return 'done';
  }

  #note(made: Made<T> | NotDone): Outcome {
    if (!isMade(made)) return made;
    this.#count += 1;
    this.#changes = [...this.#changes, { ...made, number: this.#count }];
    return 'done';
  }

  /**
   * @param asked of the list as it was `asOf`, which others may have changed since.
   * @param undone what is taken back by it.
   */
  async #change(asked: ListChange<T>, asOf: readonly T[], goOn: GoOn<T>, undone?: Saved): Promise<Made<T> | NotDone> {
    let [change, before] = [asked, asOf];
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      const gone = goneMeanwhile(before, this.list, change, this.kind);
      if (before !== this.list || gone.length > 0) {
        const settled = settle(before, this.list, change, this.kind);
        const isAsked = settled.conflicts.length > 0 || gone.length > 0;
        if (isAsked && !(await goOn(settled.conflicts, gone))) return 'given up';
        // What is put in anew is asked about once.
        [change, before] = [gone.length > 0 ? { ...settled.change, of: [] } : settled.change, this.list];
      }
      const saved = await this.#trySave(changeList(before, change, this.kind), undone, change.were);
      if (saved === 'late') continue;
      if ('failure' in saved) return saved;
      const [back, after] = [reversed(before, change, this.kind), this.list];
      return { back: (askGoOn) => this.#change(back, after, askGoOn, saved) };
    }
    return this.#tooOften();
  }

  async #changeBy(work: ListWork<T>, undone?: Saved): Promise<Made<T> | NotDone> {
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      if (this.#isTakenBack(undone)) return { failure: 'That use was taken back by another window or program meanwhile.' }; // prettier-ignore
      const worked = work(this.list);
      if (!worked.ok) return this.#leftAsIs(worked.problems);
      const saved = await this.#trySave(worked.value.list, undone, undefined, worked.value.record);
      if (saved === 'late') continue;
      if ('failure' in saved) return saved;
      const { record } = saved;
      return { back: () => this.#changeBy(worked.value.back, saved), ...(record === undefined ? {} : { record }) };
    }
    return this.#tooOften();
  }

  /** What was used is put back once: its record goes with that, whoever does it. A later use has its record there instead. */
  #isTakenBack(undone: Saved | undefined): boolean {
    return undone?.record !== undefined && this.#record === undefined;
  }

  /** `late`: another program was faster; what it left is loaded. */
  async #trySave(
    list: readonly T[],
    undone: Saved | undefined,
    were?: WriteHints['were'],
    recordOf?: Worked<T>['record'],
  ): Promise<Saved | 'late' | Exclude<NotDone, string>> {
    if (this.damage !== undefined) return { failure: this.damage };
    const over = this.#text;
    const written = this.#written(list, undone, were);
    if (!written.ok) return this.#leftAsIs(written.problems);
    const stamp = this.#stamp === undefined ? {} : { stamp: this.#stamp };
    const recordOver = this.#record;
    const record = recordOf?.({ before: this.#stamp ?? '', removed: written.value.removed });
    // What is taken back was the last use no longer, or the one before it is the last again.
    const undoes = undone?.record !== undefined && undone.record === recordOver;
    const lastUse = record ?? (undoes ? (undone.recordOver ?? '') : undefined);
    const reply = await this.#asked(() =>
      this.#save({ text: written.value.text, ...stamp, ...(lastUse === undefined ? {} : { lastUse }) }),
    );
    if (reply.ok) this.#take(reply);
    else if (reply.failure.code !== 'changed-on-disk') return { failure: reply.failure.message };
    else await this.load();
    if (!reply.ok) return 'late';
    const kept = record === undefined ? {} : { record, ...(recordOver === undefined ? {} : { recordOver }) };
    return { ...written.value, ...(over === undefined ? {} : { over }), ...kept };
  }

  /** Where nothing came between, what is undone leaves the very text that was there before it. */
  #written(list: readonly T[], undone: Saved | undefined, were: WriteHints['were']): Result<WrittenList> {
    const { write, print } = this.kind;
    const text = this.#text;
    if (undone?.over !== undefined && undone.text === text) return good({ text: undone.over, removed: NO_LINES });
    if (!write || text === undefined) return good({ text: print(list), removed: NO_LINES });
    return write(text, list, { known: undone?.removed ?? NO_LINES, ...(were ? { were } : {}) });
  }

  #leftAsIs(problems: readonly Problem[]) {
    return { failure: `${capital(this.kind.words)} is left as it is.`, problems };
  }

  #tooOften() {
    return { failure: `Another program goes on changing ${this.kind.words}; close it and try again.` };
  }

  #save(request: Omit<HostCalls['saveKept']['request'], 'list'>) {
    return this.host.call('saveKept', { list: this.kind.name, ...request });
  }

  #take(reply: Reply<KeptFile>): void {
    if (!reply.ok) {
      this.damage = reply.failure.message;
      return;
    }
    const { text, stamp, path, lastUse } = reply.value;
    const read = text === undefined ? undefined : this.kind.read(text);
    this.damage = read?.ok === false ? `${path}: ${read.problems[0]?.message ?? 'it is no list'}` : undefined;
    this.#kept = read === undefined ? undefined : read.ok ? read.value : [];
    this.#text = text;
    this.#stamp = stamp;
    this.#record = lastUse;
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

function isMade<T>(made: Made<T> | NotDone): made is Made<T> {
  return typeof made === 'object' && 'back' in made;
}
