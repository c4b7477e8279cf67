/** The outline that path data stands for: whether it can be one, its proportions, and its edges in a size. */
import { heightOf, widthOf, type Point, type Size } from '../geometry/box';
import type { Outline } from '../geometry/outline';
import { crossingOf } from '../geometry/region';
import { contourOf, type Contour, type ContourFault } from './contour';
import { drawnOutline } from './drawn-outline';
import { remembered } from './remembered';

/** Why path data is no outline of a window; places in the path's own numbers. */
export type OutlineFault = ContourFault | { readonly kind: 'crosses'; readonly at: Point };

export type PathOutline =
  | { readonly ok: true; readonly contour: Contour; readonly natural: Size }
  | { readonly ok: false; readonly fault: OutlineFault };

/** Crossings are looked for at this size of the larger side, mm: as large as mats are, and so as finely as any needs. */
const LOOKED_AT = 1000;

/** What path data stands for; `natural` is its size in its own numbers. */
export const readOutlinePath: (path: string) => PathOutline = remembered(50, (path) => {
  const contour = contourOf(path);
  if ('kind' in contour) return { ok: false, fault: contour };
  const natural = { width: widthOf(contour.bounds), height: heightOf(contour.bounds) };
  const scale = LOOKED_AT / Math.max(natural.width, natural.height);
  const crossing = crossingOf(drawnOutline(contour, { width: natural.width * scale, height: natural.height * scale }));
  if (!crossing) return { ok: true, contour, natural };
  const { left, top } = contour.bounds;
  return { ok: false, fault: { kind: 'crosses', at: { x: left + crossing.x / scale, y: top - crossing.y / scale } } };
});

/** In a box of the size; undefined where it is so small that parts of it run into one another, or is no outline at all. */
export function outlineInSize(path: string, { width, height }: Size): Outline | undefined {
  return inSize(`${width} ${height} ${path}`).outline;
}

const inSize = remembered(100, (question): { readonly outline?: Outline } => {
  const [, width, height, path] = /^(\S+) (\S+) ([^]*)$/.exec(question) ?? [];
  const read = readOutlinePath(path ?? '');
  if (!read.ok) return {};
  const outline = drawnOutline(read.contour, { width: Number(width), height: Number(height) });
  return crossingOf(outline) ? {} : { outline };
});
