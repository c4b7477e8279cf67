/** The viewport: how millimetres of the mat come to pixels of the canvas, and how zooming and panning change that. */
import { heightOf, widthOf, type Box, type Point, type Size } from '../../core/geometry/box';

/** Pixels a millimetre, and where on the canvas the lower left corner of the shown view lies; pixels grow down and right. */
export interface Viewport {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  /** Width of the sheet when it is seen from the back (`x' = width - x`); undefined from the front. */
  readonly mirrorWidth?: number | undefined;
}

/** Room to leave at the canvas's edges when fitting, pixels. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const SMALLEST_SCALE = 0.04;
const LARGEST_SCALE = 80;

export function toScreen(viewport: Viewport, point: Point): Point {
  const x = viewport.mirrorWidth === undefined ? point.x : viewport.mirrorWidth - point.x;
  return { x: viewport.x + x * viewport.scale, y: viewport.y - point.y * viewport.scale };
}

/** Where on the mat, in front view, a pixel lies. */
export function toSheet(viewport: Viewport, pixel: Point): Point {
  const x = (pixel.x - viewport.x) / viewport.scale;
  const y = (viewport.y - pixel.y) / viewport.scale;
  return { x: viewport.mirrorWidth === undefined ? x : viewport.mirrorWidth - x, y };
}

/** A box of the mat as a rectangle of the canvas, pixels. */
export function boxOnScreen(
  viewport: Viewport,
  box: Box,
): { left: number; top: number; width: number; height: number } {
  const a = toScreen(viewport, { x: box.left, y: box.top });
  const b = toScreen(viewport, { x: box.right, y: box.bottom });
  return { left: Math.min(a.x, b.x), top: a.y, width: Math.abs(b.x - a.x), height: b.y - a.y };
}

/** The viewport that shows the whole box in the middle of a canvas. */
export function fitBox(box: Box, canvas: Size, room: Room, mirrorWidth?: number): Viewport {
  const width = Math.max(1, canvas.width - room.left - room.right);
  const height = Math.max(1, canvas.height - room.top - room.bottom);
  const scale = clampScale(Math.min(width / widthOf(box), height / heightOf(box)));
  const left = mirrorWidth === undefined ? box.left : mirrorWidth - box.right;
  return {
    scale,
    x: room.left + (width - widthOf(box) * scale) / 2 - left * scale,
    y: room.top + (height + heightOf(box) * scale) / 2 + box.bottom * scale,
    mirrorWidth,
  };
}

/** Zooms by a factor with the given pixel staying over the same place of the mat. */
export function zoomAt(viewport: Viewport, pixel: Point, factor: number): Viewport {
  const scale = clampScale(viewport.scale * factor);
  const applied = scale / viewport.scale;
  return {
    ...viewport,
    scale,
    x: pixel.x - (pixel.x - viewport.x) * applied,
    y: pixel.y - (pixel.y - viewport.y) * applied,
  };
}

export function panBy(viewport: Viewport, pixels: Point): Viewport {
  return { ...viewport, x: viewport.x + pixels.x, y: viewport.y + pixels.y };
}

function clampScale(scale: number): number {
  return Math.min(LARGEST_SCALE, Math.max(SMALLEST_SCALE, scale));
}
