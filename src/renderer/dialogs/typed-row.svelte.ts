/** One row of a kept list as it is typed: its cells, what is wrong with each at every letter, and keeping it once nothing is. */
import type { KeptList } from '../files/kept-list.svelte';

type Cells<K extends string> = Readonly<Partial<Record<K, string>>>;

interface Ground<K extends string, T extends object> {
  readonly list: KeptList<T>;
  /** What is changed; undefined: a new row. */
  readonly was: T | undefined;
  /** What is typed at first. */
  readonly cells: Cells<K>;
  readonly read: (cells: Cells<K>) => { readonly thing: T | undefined; readonly wrong: ReadonlyMap<K, string> };
  /** Said where the list has another of its name, and at which cell. */
  readonly taken: readonly [K, string];
  /** Of those that may take the place of another of their name. */
  readonly replaces?: (thing: T, twin: T) => boolean;
  /** True where it was done. */
  readonly keep: (thing: T, was: T | undefined) => Promise<boolean>;
  readonly remove: (was: T) => Promise<boolean>;
  /** Of the dialog. */
  readonly close: () => void;
}

export class TypedRow<K extends string, T extends object> {
  cells: Cells<K>;
  /** What is missing is said once it was left empty on purpose. */
  #tried = $state(false);
  readonly #read = $derived.by(() => this.ground.read(this.cells));
  /** Another of its name. */
  readonly twin = $derived.by(() => {
    const { list, was } = this.ground;
    const { nameOf } = list.kind;
    const { thing } = this.#read;
    // By name: what the list holds may have been read anew since the dialog was opened.
    if (!thing || (was && nameOf(thing) === nameOf(was))) return undefined;
    return list.list.find((one) => nameOf(one) === nameOf(thing));
  });
  readonly isTaken = $derived.by(() => {
    const { thing } = this.#read;
    return this.twin !== undefined && !(thing && this.ground.replaces?.(thing, this.twin));
  });

  constructor(private readonly ground: Ground<K, T>) {
    this.cells = $state.raw(ground.cells);
  }

  /** True once something is typed that is not kept. */
  get isTouched(): boolean {
    const { cells } = this.ground;
    const keys = [...Object.keys(cells), ...Object.keys(this.cells)] as K[];
    return keys.some((key) => (this.cells[key] ?? '') !== (cells[key] ?? ''));
  }

  get isNew(): boolean {
    return this.ground.was === undefined;
  }

  set(key: K, text: string): void {
    this.cells = { ...this.cells, [key]: text };
  }

  /** Of a cell that is empty only once the whole was to be kept. */
  wrong(key: K): string | undefined {
    const message = this.#read.wrong.get(key);
    const [at, words] = this.ground.taken;
    if (key === at && this.isTaken) return words;
    return message !== undefined && (this.#tried || (this.cells[key] ?? '') !== '') ? message : undefined;
  }

  /** A cell as its field shows and hears it. */
  cell(key: K) {
    return {
      text: this.cells[key] ?? '',
      wrong: this.wrong(key),
      onhear: (text: string) => this.set(key, text),
      onenter: () => void this.keep(),
    };
  }

  async keep(): Promise<void> {
    this.#tried = true;
    const { keep, was } = this.ground;
    const { thing } = this.#read;
    if (thing && !this.isTaken && (await keep(thing, was))) this.close();
  }

  async remove(): Promise<void> {
    const { remove, was } = this.ground;
    if (was && (await remove(was))) this.close();
  }

  close(): void {
    this.ground.close();
  }
}
