/** The pins of pieces on sheets, with their own way back and forth: no part of the job, and so not of its history. */
import type { HeldPin } from '../edits/pins';

interface Step {
  readonly pins: readonly HeldPin[];
  /** What was done. */
  readonly label: string;
}

export class PinHistory {
  #past = $state.raw<readonly Step[]>([]);
  #now = $state.raw<Step>({ pins: [], label: '' });
  #future = $state.raw<readonly Step[]>([]);
  readonly held = $derived(this.#now.pins);
  readonly canUndo = $derived(this.#past.length > 0);
  readonly canRedo = $derived(this.#future.length > 0);
  readonly undoLabel = $derived(this.#now.label);
  readonly redoLabel = $derived(this.#future[0]?.label);

  /** Begins with these; there is no way back before them. */
  start(pins: readonly HeldPin[]): void {
    this.#past = [];
    this.#now = { pins, label: '' };
    this.#future = [];
  }

  put(pins: readonly HeldPin[], label: string): void {
    this.#past = [...this.#past, this.#now];
    this.#now = { pins, label };
    this.#future = [];
  }

  undo(): void {
    const last = this.#past.at(-1);
    if (!last) return;
    this.#future = [this.#now, ...this.#future];
    this.#past = this.#past.slice(0, -1);
    this.#now = last;
  }

  redo(): void {
    const [next, ...future] = this.#future;
    if (!next) return;
    this.#past = [...this.#past, this.#now];
    this.#now = next;
    this.#future = future;
  }

  /** As if the last had never been put: there is no way forth to it. */
  drop(): void {
    this.undo();
    this.#future = this.#future.slice(1);
  }
}
