/** Sizes, sides and upright boxes in millimetres, x to the right and y up from the lower left corner. */

/** Width x height as the piece hangs, mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export const SIDES = ['left', 'top', 'right', 'bottom'] as const;
export type Side = (typeof SIDES)[number];

/** One value for each side, mm. */
export type PerSide<T = number> = Readonly<Record<Side, T>>;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle, mm; `right > left` and `top > bottom` when it holds anything. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** The same value on all four sides. */
export function allSides<T>(value: T): PerSide<T> {
  return { left: value, top: value, right: value, bottom: value };
}

/** A new value for each side, from its name. */
export function eachSide<T>(of: (side: Side) => T): PerSide<T> {
  return { left: of('left'), top: of('top'), right: of('right'), bottom: of('bottom') };
}

/** What is said of each side, between the sides: by how much of each a unit vector faces. */
export function towards({ left, top, right, bottom }: PerSide, { x, y }: Point): number {
  return (x < 0 ? left : right) * x * x + (y < 0 ? bottom : top) * y * y;
}

/** The box of a size with its lower left corner at a point. */
export function boxAt(corner: Point, size: Size): Box {
  return { left: corner.x, bottom: corner.y, right: corner.x + size.width, top: corner.y + size.height };
}

export function widthOf(box: Box): number {
  return box.right - box.left;
}

export function heightOf(box: Box): number {
  return box.top - box.bottom;
}

export function sizeOf(box: Box): Size {
  return { width: widthOf(box), height: heightOf(box) };
}

/** Moves every side outward by its amount (negative: inward). */
export function grow(box: Box, by: number | PerSide): Box {
  const sides = typeof by === 'number' ? allSides(by) : by;
  return {
    left: box.left - sides.left,
    bottom: box.bottom - sides.bottom,
    right: box.right + sides.right,
    top: box.top + sides.top,
  };
}

export function shift(box: Box, by: Point): Box {
  return { left: box.left + by.x, bottom: box.bottom + by.y, right: box.right + by.x, top: box.top + by.y };
}

/** Distance from each side of the outer box inward to the same side of the inner box, mm. */
export function insets(outer: Box, inner: Box): PerSide {
  return {
    left: inner.left - outer.left,
    top: outer.top - inner.top,
    right: outer.right - inner.right,
    bottom: inner.bottom - outer.bottom,
  };
}

/** The smallest box around all of them; undefined for none. */
export function around(boxes: readonly Box[]): Box | undefined {
  if (boxes.length === 0) return undefined;
  return boxes.reduce((a, b) => ({
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  }));
}

/** The box turned over about the vertical axis of a sheet of this width: `x' = width - x`. */
export function mirrorBox(box: Box, sheetWidth: number): Box {
  return { ...box, left: sheetWidth - box.right, right: sheetWidth - box.left };
}

/** A box within a sheet of this height, turned with it a quarter anticlockwise; the sheet's lower left corner stays the origin. */
export function quarterTurnedBox({ left, bottom, right, top }: Box, sheetHeight: number): Box {
  return { left: sheetHeight - top, right: sheetHeight - bottom, bottom: left, top: right };
}
