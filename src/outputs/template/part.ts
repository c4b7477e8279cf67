/** What part of a whole a page shows, and where on it. */
import { shift, type Box, type Point, type Size } from '../../core/geometry/box';
import type { ViewLayer } from './view-geometry';

export interface Place {
  /** All that is tiled. */
  readonly blank: Size;
  /** The page's own part of the blank, which labels keep to. */
  readonly own: Box;
  /** What is drawn of the blank: its own part and the overlap. */
  readonly drawn: Box;
  /** From the blank's lower left corner to the page's. */
  readonly offset: Point;
}

/** A part of a layer. */
export interface Part extends Place {
  readonly layer: ViewLayer;
}

/** A blank's point as it lies on the page. */
export function onPage(part: Place, point: Point): Point {
  return { x: point.x + part.offset.x, y: point.y + part.offset.y };
}

export function boxOnPage(part: Place, box: Box): Box {
  return shift(box, part.offset);
}
