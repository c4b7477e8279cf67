/** The shapes a window can be given: their names, and an outline of each to choose it by. */
import type { Outline } from '../../core/geometry/outline';
import { shiftOutline } from '../../core/geometry/outline';
import { outlineOf, polygonHeight, type Shape } from '../../core/geometry/shapes';
import type { WindowShape } from '../../core/job/job';
import { outlineInSize, readOutlinePath } from '../../core/outlines/path-outline';
import { sizeLike } from '../../core/outlines/proportions';

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
  outline: 'Own outline',
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

interface Sample {
  readonly kind: Kind;
  readonly outline: Outline;
  readonly height: number;
}

export const SHAPE_SAMPLES: readonly Sample[] = SAMPLES.map((shape) => {
  const height = shape.kind === 'polygon' ? polygonHeight(SAMPLE_SIZE.width, shape.sides) : SAMPLE_SIZE.height;
  return { kind: shape.kind, height, outline: outlineOf(shape, { width: SAMPLE_SIZE.width, height }) };
});

/** An outline of one's own, in its proportions; empty of a path that is none. */
export function outlineSample(path: string): Sample {
  const read = readOutlinePath(path);
  if (!read.ok) return { kind: 'outline', outline: [], height: SAMPLE_SIZE.height };
  const high = sizeLike(read.natural, { width: SAMPLE_SIZE.width });
  const size = high.height <= SAMPLE_SIZE.height ? high : sizeLike(read.natural, { height: SAMPLE_SIZE.height });
  const outline = outlineInSize(path, size) ?? [];
  return {
    kind: 'outline',
    outline: shiftOutline(outline, { x: (SAMPLE_SIZE.width - size.width) / 2, y: 0 }),
    height: size.height,
  };
}
