/** The stage: how large the canvas is, what part of the mat it shows, and the guides of a gesture going on. */
import type { Box, Point, Size } from '../../core/geometry/box';
import type { Guide } from './snap';
import { fitBox, panBy, zoomAt, type Room, type Viewport } from './viewport';

/** A ruler's thickness at the usual text size, pixels; everything that holds text grows with it. */
const USUAL_RULER = 24;

export class Stage {
  size = $state.raw<Size>({ width: 800, height: 600 });
  /** Thickness of the rulers, pixels. */
  ruler = $state(USUAL_RULER);
  /** How much larger than usual text is. */
  readonly textScale = $derived(this.ruler / USUAL_RULER);
  /** What to fit, and the width to mirror at; set by the canvas. */
  subject = $state.raw<Box>({ left: 0, bottom: 0, right: 300, top: 400 });
  mirrorWidth = $state.raw<number>();
  /** Undefined: fitted, and fitted anew whenever the work changes its size. */
  #chosen = $state.raw<Viewport>();
  guides = $state.raw<readonly Guide[]>([]);
  /** Where the pointer is over the canvas, pixels. */
  pointer = $state.raw<Point>();

  readonly #room = $derived<Room>({
    left: this.ruler + 36,
    top: this.ruler + 36 * Math.min(this.textScale, 1.4),
    right: 36,
    bottom: 56 * Math.min(this.textScale, 1.8),
  });
  readonly viewport = $derived<Viewport>(
    this.#chosen
      ? { ...this.#chosen, mirrorWidth: this.mirrorWidth }
      : fitBox(this.subject, this.size, this.#room, this.mirrorWidth),
  );
  readonly isFitted = $derived(this.#chosen === undefined);

  fit(): void {
    this.#chosen = undefined;
  }

  zoom(factor: number, at: Point = { x: this.size.width / 2, y: this.size.height / 2 }): void {
    this.#chosen = zoomAt(this.viewport, at, factor);
  }

  pan(pixels: Point): void {
    this.#chosen = panBy(this.viewport, pixels);
  }

  /** Holds the view still while something is dragged; the answer lets it go again. */
  hold(): () => void {
    if (this.#chosen) return () => undefined;
    this.#chosen = this.viewport;
    return () => this.fit();
  }
}
