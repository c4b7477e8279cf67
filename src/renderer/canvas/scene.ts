/** The scene: the only file that knows paper; shows a drawing and moves what has changed since the last one. */
import paper from 'paper/dist/paper-core';
import { heightOf, widthOf, type Size } from '../../core/geometry/box';
import type { AreaShape, ImageShape, Shape } from './drawing';
import type { Viewport } from './viewport';

/** What paper's types leave out: its own way to make a kind of item, and what one does to draw itself. */
interface ItemKind {
  extend(members: object): new (area: AreaShape) => RingsItem;
}

interface RingsItem extends paper.Item {
  area: AreaShape;
  _initialize(): boolean;
}

/**
 * All rings of a shape in one item. A compound path would hold, place and draw each ring as an item of its own, which
 * with sixty windows in three layers is what a drag mostly spent its time on.
 */
const Rings = (paper.Item as unknown as ItemKind).extend({
  _class: 'Rings',
  // A function and no method, since paper calls it as a constructor.
  initialize: function (this: RingsItem, area: AreaShape) {
    this.area = area;
    this._initialize();
  },
  _draw(this: RingsItem, context: CanvasRenderingContext2D) {
    const { rings, fill } = this.area;
    context.beginPath();
    for (const ring of rings) {
      ring.forEach(({ x, y }, index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
      context.closePath();
    }
    context.fillStyle = fill;
    context.fill('evenodd');
  },
});

interface Shown {
  readonly item: paper.Item;
  shape: Shape;
}

export class Scene {
  readonly #scope = new paper.PaperScope();
  #shown = new Map<string, Shown>();
  #order: readonly string[] = [];

  constructor(canvas: HTMLCanvasElement) {
    this.#scope.setup(canvas);
    this.#scope.settings.insertItems = false;
    this.#scope.view.autoUpdate = false;
  }

  /** Size of the canvas, CSS pixels. */
  resize(size: Size): void {
    this.#scope.view.viewSize = new this.#scope.Size(size.width, size.height);
  }

  look(viewport: Viewport): void {
    const { scale, x, y, mirrorWidth } = viewport;
    const across = mirrorWidth === undefined ? scale : -scale;
    const left = mirrorWidth === undefined ? x : x + mirrorWidth * scale;
    this.#scope.view.matrix.set(across, 0, 0, -scale, left, y);
    // paper keeps what it derived from the old matrix until one of its own setters is used.
    this.#scope.view.matrix = this.#scope.view.matrix.clone();
  }

  /** Shows these shapes, the first one lowest. */
  show(shapes: readonly Shape[]): void {
    const next = new Map<string, Shown>();
    for (const shape of shapes) next.set(shape.key, this.#keepOrMake(shape));
    const order = [...next.keys()];
    if (order.length !== this.#order.length || order.some((key, index) => key !== this.#order[index])) {
      this.#scope.project.activeLayer.removeChildren();
      this.#scope.project.activeLayer.addChildren([...next.values()].map((shown) => shown.item));
    } else {
      this.#replaceChanged(next);
    }
    this.#shown = next;
    this.#order = order;
  }

  /** Draws now; the caller has the frame. */
  paint(): void {
    this.#scope.view.update();
  }

  remove(): void {
    this.#scope.view.remove();
    this.#scope.project.remove();
  }

  #keepOrMake(shape: Shape): Shown {
    const old = this.#shown.get(shape.key);
    if (old !== undefined && moveItem(old, shape)) return old;
    return { item: shape.kind === 'area' ? new Rings(shape) : makeImage(this.#scope, shape), shape };
  }

  #replaceChanged(next: ReadonlyMap<string, Shown>): void {
    for (const [key, shown] of next) {
      const old = this.#shown.get(key);
      if (old !== undefined && old !== shown) old.item.replaceWith(shown.item);
    }
  }
}

function makeImage(scope: paper.PaperScope, shape: ImageShape): paper.Item {
  const raster = new scope.Raster(shape.image);
  const { box, clip, turned } = shape;
  const [width, height] = turned % 180 === 0 ? [widthOf(box), heightOf(box)] : [heightOf(box), widthOf(box)];
  // The view is drawn y up, an image y down.
  raster.matrix = new scope.Matrix(1, 0, 0, 1, (box.left + box.right) / 2, (box.top + box.bottom) / 2)
    .rotate(turned, 0, 0)
    .scale(width / shape.image.naturalWidth, -height / shape.image.naturalHeight);
  const mask = new scope.Path.Rectangle(new scope.Point(clip.left, clip.bottom), new scope.Point(clip.right, clip.top));
  return new scope.Group({ children: [mask, raster], clipped: true });
}

/** Moves an item to where its shape now lies; false when it has to be made anew. */
function moveItem(shown: Shown, shape: Shape): boolean {
  const old = shown.shape;
  if (shape.kind === 'image' || old.kind === 'image') return shape === old || sameImage(old, shape);
  (shown.item as RingsItem).area = shape;
  shown.shape = shape;
  return true;
}

function sameImage(a: Shape, b: Shape): boolean {
  return (
    a.kind === 'image' &&
    b.kind === 'image' &&
    a.image === b.image &&
    a.turned === b.turned &&
    sameBox(a.box, b.box) &&
    sameBox(a.clip, b.clip)
  );
}

function sameBox(a: ImageShape['box'], b: ImageShape['box']): boolean {
  return a.left === b.left && a.right === b.right && a.top === b.top && a.bottom === b.bottom;
}
