/** The shape of one window: its outline in the size it was given, and whether its measures fit that size. */
import type { Size } from '../geometry/box';
import { boundsOf, boxOutline, mirrorOutline, quarterTurned, shiftOutline, type Outline } from '../geometry/outline';
import { outlineOf, polygonHeight, type Shape } from '../geometry/shapes';
import type { QuarterTurn, WindowShape } from '../job/job';
import { outlineInSize } from '../outlines/path-outline';

/** The measure of a shape that a window must have room for, mm. */
export interface Measure {
  readonly key: 'radius' | 'rise' | 'cut' | 'step';
  readonly value: number;
  readonly least?: number;
  readonly most: number;
}

export interface Drawn {
  /** In a box of the size, its lower left corner at the origin; of a shape without room for its measure the plain box. */
  readonly outline: Outline;
  /** Where there is no room for it: the measure that needs more, or nothing that a measure would mend. */
  readonly misfit?: Measure | 'too small';
}

/** Of an equilateral pointed arch over its half width. */
const EQUILATERAL = Math.sqrt(3);

export function drawnIn(shape: WindowShape, size: Size): Drawn {
  const plain = boxOutline({ left: 0, bottom: 0, right: size.width, top: size.height });
  if (shape.kind === 'rectangle') return { outline: plain };
  if (shape.kind === 'outline') {
    const outline = outlineInSize(shape.path, size);
    return outline ? { outline } : { outline: plain, misfit: 'too small' };
  }
  const misfit = misfitOf(shape, size);
  if (misfit) return { outline: plain, misfit };
  return { outline: outlineOf(withMeasures(shape, size), fittedTo(shape, size)) };
}

/** All but those that are drawn already. */
type Drawable = Exclude<WindowShape, { kind: 'outline' }>;

/** The outline of a window of this size, turned over and turned; its lower left corner stays the origin. */
export function turnedOutline(outline: Outline, { width }: Size, turned: QuarterTurn, mirrored: boolean): Outline {
  let made = mirrored ? mirrorOutline(outline, width) : outline;
  for (let turn = 0; turn < turned; turn += 90) {
    made = quarterTurned(made);
    made = shiftOutline(made, { x: -boundsOf(made).left, y: 0 });
  }
  return made;
}

function withMeasures(shape: Drawable, { width }: Size): Shape {
  if (shape.kind === 'oval') return { kind: 'oval' };
  if (shape.kind === 'arch') return { kind: 'arch', rise: shape.rise ?? usualRise('arch', width) };
  if (shape.kind === 'pointed') return { kind: 'pointed', rise: shape.rise ?? usualRise('pointed', width) };
  return shape;
}

function usualRise(kind: 'arch' | 'pointed', width: number): number {
  return kind === 'arch' ? width / 2 : (width / 2) * EQUILATERAL;
}

/** A regular polygon keeps its proportions: the largest that the size holds. */
function fittedTo(shape: WindowShape, size: Size): Size {
  if (shape.kind !== 'polygon') return size;
  const high = polygonHeight(1, shape.sides);
  const width = Math.min(size.width, size.height / high);
  return { width, height: width * high };
}

const SLACK = 1e-9;

function misfitOf(shape: WindowShape, size: Size): Measure | undefined {
  const measure = measureOf(shape, size);
  const fits = !measure || (measure.value <= measure.most + SLACK && measure.value >= (measure.least ?? 0) - SLACK);
  return fits ? undefined : measure;
}

/** The measure of a shape in a window of this size, and between what it must lie; undefined of shapes that have none. */
export function measureOf(shape: WindowShape, { width, height }: Size): Measure | undefined {
  const half = Math.min(width, height) / 2;
  const within = (key: Measure['key'], value: number, most: number, least?: number): Measure => ({
    key,
    value,
    most,
    ...(least === undefined ? {} : { least }),
  });
  switch (shape.kind) {
    case 'rounded':
    case 'scooped':
      return within('radius', shape.radius, half);
    case 'cut-corners':
      return within('cut', shape.cut, half);
    case 'stepped':
      // A strip of half a step at the least stays between the steps of two corners.
      return within('step', shape.step, half / (shape.count + 1 / 4));
    case 'arch':
      return within('rise', shape.rise ?? usualRise('arch', width), Math.min(width / 2, height));
    case 'pointed':
      return within('rise', shape.rise ?? usualRise('pointed', width), height, width / 2);
    case 'rectangle':
    case 'oval':
    case 'polygon':
    case 'outline':
      return undefined;
  }
}
