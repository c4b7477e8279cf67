/** The user's kept cutters as the host has them: read anew before a change that another program was faster with. */
import type { HostClient, KeptCutters, Reply } from '../../bridge';
import { changeCutters, changedMeanwhile, type CutterChange, type Cutters } from '../../core/job/cutter-changes';
import { parseCutters, printCutters } from '../../core/job/cutter-list';
import { NoAnswer } from '../host-client';

/** Done, given up by the user, or why not. */
export type Outcome = 'done' | 'given up' | { readonly failure: string };

/** Another is faster than this only once or twice in a row. */
const MOST_TRIES = 8;

export class CutterList {
  list = $state.raw<Cutters>([]);
  /** Why the list cannot be read; it is then left as it is. */
  damage = $state.raw<string>();
  #stamp: string | undefined;

  constructor(private readonly host: HostClient) {}

  async load(): Promise<void> {
    this.#take(await this.#asked(() => this.host.call('readCutters', {})));
  }

  /**
   * Changes the list on disk.
   *
   * @param goOn asked where another program has changed the very cutters that this would.
   */
  async change(change: CutterChange, goOn: (theirs: Cutters) => Promise<boolean>): Promise<Outcome> {
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      if (this.damage !== undefined) return { failure: this.damage };
      const text = printCutters(changeCutters(this.list, change));
      const stamp = this.#stamp === undefined ? {} : { stamp: this.#stamp };
      const reply = await this.#asked(() => this.host.call('saveCutters', { text, ...stamp }));
      if (reply.ok) {
        this.#take(reply);
        return 'done';
      }
      if (reply.failure.code !== 'changed-on-disk') return { failure: reply.failure.message };
      const before = this.list;
      await this.load();
      const theirs = changedMeanwhile(before, this.list, change);
      if (theirs.length > 0 && !(await goOn(theirs))) return 'given up';
    }
    return { failure: 'Another program goes on changing the list of cutters; close it and try again.' };
  }

  /** Begins an empty list; what lay there is kept beside it under another name. */
  async beginAnew(): Promise<Outcome> {
    const reply = await this.#asked(() => this.host.call('saveCutters', { text: printCutters([]), setAside: true }));
    if (!reply.ok) return { failure: reply.failure.message };
    this.#take(reply);
    return 'done';
  }

  #take(reply: Reply<KeptCutters>): void {
    if (!reply.ok) {
      this.damage = reply.failure.message;
      return;
    }
    const { text, stamp, path } = reply.value;
    const read = text === undefined ? undefined : parseCutters(text);
    this.damage = read?.ok === false ? `${path}: ${read.problems[0]?.message ?? 'it is no list'}` : undefined;
    this.list = read?.ok ? read.value : [];
    this.#stamp = stamp;
  }

  async #asked(call: () => Promise<Reply<KeptCutters>>): Promise<Reply<KeptCutters>> {
    try {
      return await call();
    } catch (fault) {
      if (!(fault instanceof NoAnswer)) throw fault;
      return {
        ok: false,
        failure: { code: 'failed', message: `The list of cutters is out of reach: ${fault.message}.` },
      };
    }
  }
}
