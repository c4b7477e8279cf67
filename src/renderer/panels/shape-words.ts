/** The shapes a window can be given: their names, and an outline of each to choose it by. */
import type { Outline } from '../../core/geometry/outline';
import { outlineOf, polygonHeight, type Shape } from '../../core/geometry/shapes';
import type { WindowShape } from '../../core/job/job';

type Kind = WindowShape['kind'];

export const SHAPE_WORDS: Readonly<Record<Kind, string>> = {
  rectangle: 'Rectangle',
  rounded: 'Rounded',
  oval: 'Oval',
  arch: 'Arch',
  pointed: 'Pointed arch',
  polygon: 'Polygon',
  'cut-corners': 'Cut corners',
  stepped: 'Stepped',
  scooped: 'Scooped',
  outline: 'Your outline',
};

/** What the outlines to choose from are drawn in. */
export const SAMPLE_SIZE = { width: 24, height: 30 };

const SAMPLES: readonly Shape[] = [
  { kind: 'rectangle' },
  { kind: 'rounded', radius: 6 },
  { kind: 'oval' },
  { kind: 'arch', rise: 12 },
  { kind: 'pointed', rise: 18 },
  { kind: 'polygon', sides: 8 },
  { kind: 'cut-corners', cut: 7 },
  { kind: 'stepped', step: 4, count: 2 },
  { kind: 'scooped', radius: 8 },
];

export const SHAPE_SAMPLES: readonly { readonly kind: Kind; readonly outline: Outline; readonly height: number }[] =
  SAMPLES.map((shape) => {
    const height = shape.kind === 'polygon' ? polygonHeight(SAMPLE_SIZE.width, shape.sides) : SAMPLE_SIZE.height;
    return { kind: shape.kind, height, outline: outlineOf(shape, { width: SAMPLE_SIZE.width, height }) };
  });
