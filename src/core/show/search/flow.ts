/** Pictures as they go into frames that may run out: one more finds a place where others can move on. */
import type { Kind } from './choosing';

export class Flow {
  readonly #kindsOf: readonly (readonly number[])[];
  /** How many pictures of a kind are in a frame, kind after kind. */
  readonly #placed: Int32Array;
  /** Frames that hold, or held, pictures of a kind. */
  readonly #framesOf: readonly number[][];
  /** Pictures of each kind that have no frame yet. */
  readonly #open: Int32Array;

  /** @param kindsOf the kinds that each frame fits. */
  constructor(kinds: readonly Kind[], kindsOf: readonly (readonly number[])[]) {
    this.#kindsOf = kindsOf;
    this.#placed = new Int32Array(kinds.length * kindsOf.length);
    this.#framesOf = kinds.map(() => []);
    this.#open = Int32Array.from(kinds, ({ count }) => count);
  }

  openOf(kind: number): number {
    return this.#open[kind] ?? 0;
  }

  sharesOf(kind: number): { readonly frame: number; readonly count: number }[] {
    return (this.#framesOf[kind] ?? []).flatMap((frame) => {
      const count = this.#countOf(kind, frame);
      return count > 0 ? [{ frame, count }] : [];
    });
  }

  /** Fills up to `count` frames of a sort; those that were filled before stay filled. */
  pour(frame: number, count: number): void {
    for (let left = this.#pourOpen(frame, count); left > 0;) {
      const poured = this.#push(frame, left);
      if (poured === 0) return;
      left -= poured;
    }
  }

  /** The same as long as no picture has to move; what is left of the count. */
  #pourOpen(frame: number, count: number): number {
    let left = count;
    for (const kind of this.#kindsOf[frame] ?? []) {
      const moved = Math.min(left, this.openOf(kind));
      if (moved === 0) continue;
      this.#open[kind] = this.openOf(kind) - moved;
      this.#add(kind, frame, moved);
      left -= moved;
    }
    return left;
  }

  /** Finds the shortest way to pictures without a frame, over frames that let one kind go for another; how many went. */
  #push(start: number, most: number): number {
    /** Kinds that were reached, each with the frame that would take it. */
    const takenBy = new Map<number, number>();
    /** Frames that were reached, each with the kind that would leave it; no kind leaves the first. */
    const leftBy = new Map<number, number>([[start, -1]]);
    for (const frame of leftBy.keys()) {
      for (const kind of this.#kindsOf[frame] ?? []) {
        if (takenBy.has(kind)) continue;
        takenBy.set(kind, frame);
        if (this.openOf(kind) > 0) return this.#move(kind, takenBy, leftBy, most);
        for (const other of this.#framesOf[kind] ?? []) {
          if (!leftBy.has(other) && this.#countOf(kind, other) > 0) leftBy.set(other, kind);
        }
      }
    }
    return 0;
  }

  /** Goes back along the way: each frame takes the kind it reached and lets go of the kind it was reached by. */
  #move(end: number, takenBy: ReadonlyMap<number, number>, leftBy: ReadonlyMap<number, number>, most: number): number {
    const steps: { readonly frame: number; readonly takes: number; readonly leaves: number }[] = [];
    for (let takes = end; takes >= 0;) {
      const frame = takenBy.get(takes) ?? -1;
      const leaves = leftBy.get(frame) ?? -1;
      steps.push({ frame, takes, leaves });
      takes = leaves;
    }
    const moved = steps.reduce(
      (least, { frame, leaves }) => (leaves < 0 ? least : Math.min(least, this.#countOf(leaves, frame))),
      Math.min(most, this.openOf(end)),
    );
    this.#open[end] = this.openOf(end) - moved;
    for (const { frame, takes, leaves } of steps) {
      this.#add(takes, frame, moved);
      if (leaves >= 0) this.#add(leaves, frame, -moved);
    }
    return moved;
  }

  #countOf(kind: number, frame: number): number {
    return this.#placed[kind * this.#kindsOf.length + frame] ?? 0;
  }

  #add(kind: number, frame: number, by: number): void {
    const frames = this.#framesOf[kind];
    if (frames && !frames.includes(frame)) frames.push(frame);
    this.#placed[kind * this.#kindsOf.length + frame] = this.#countOf(kind, frame) + by;
  }
}
