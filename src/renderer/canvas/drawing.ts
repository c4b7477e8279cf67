/** A drawing as plain data: the shapes a canvas has to show, from the wall up, in millimetres of the front view. */
import type { Box, Point, Side } from '../../core/geometry/box';
import type { QuarterTurn } from '../../core/job/job';

export type Ring = readonly Point[];

/** Rings filled by the even-odd rule, so that a ring within a ring is a hole. */
export interface AreaShape {
  readonly kind: 'area';
  /** Names the shape from one drawing to the next, so that it is moved and not made anew. */
  readonly key: string;
  readonly rings: readonly Ring[];
  /** CSS colour. */
  readonly fill: string;
}

/** A picture file's image stretched over a box and seen only within another. */
export interface ImageShape {
  readonly kind: 'image';
  readonly key: string;
  readonly box: Box;
  /** Degrees anticlockwise by which the image was turned to fill the box. */
  readonly turned: QuarterTurn;
  readonly clip: Box;
  readonly image: HTMLImageElement;
}

export type Shape = AreaShape | ImageShape;

/** The four corners of a box, from the lower left against the clock. */
export function ringOf(box: Box): Ring {
  return [
    { x: box.left, y: box.bottom },
    { x: box.right, y: box.bottom },
    { x: box.right, y: box.top },
    { x: box.left, y: box.top },
  ];
}

/** The mitred strip between two boxes on one side, as a quadrilateral. */
export function mitredSide(outer: Box, inner: Box, side: Side): Ring {
  switch (side) {
    case 'left':
      return [
        corner(outer, 'left', 'bottom'),
        corner(inner, 'left', 'bottom'),
        corner(inner, 'left', 'top'),
        corner(outer, 'left', 'top'),
      ];
    case 'right':
      return [
        corner(outer, 'right', 'bottom'),
        corner(outer, 'right', 'top'),
        corner(inner, 'right', 'top'),
        corner(inner, 'right', 'bottom'),
      ];
    case 'top':
      return [
        corner(outer, 'left', 'top'),
        corner(inner, 'left', 'top'),
        corner(inner, 'right', 'top'),
        corner(outer, 'right', 'top'),
      ];
    case 'bottom':
      return [
        corner(outer, 'left', 'bottom'),
        corner(outer, 'right', 'bottom'),
        corner(inner, 'right', 'bottom'),
        corner(inner, 'left', 'bottom'),
      ];
  }
}

/** The strip between two boxes on two neighbouring sides, as one shape: left and top, or right and bottom. */
export function mitredPair(outer: Box, inner: Box, sides: 'left and top' | 'right and bottom'): Ring {
  const far = (box: Box) => (sides === 'left and top' ? corner(box, 'left', 'top') : corner(box, 'right', 'bottom'));
  return [
    corner(outer, 'left', 'bottom'),
    far(outer),
    corner(outer, 'right', 'top'),
    corner(inner, 'right', 'top'),
    far(inner),
    corner(inner, 'left', 'bottom'),
  ];
}

function corner(box: Box, across: 'left' | 'right', up: 'top' | 'bottom'): Point {
  return { x: box[across], y: box[up] };
}

/** The part two boxes share; undefined when they do not meet. */
export function overlapOf(a: Box, b: Box): Box | undefined {
  const shared = {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  };
  return shared.right > shared.left && shared.top > shared.bottom ? shared : undefined;
}
