/** Whether the back of a frame is closed with paper where the job does not say. */
import { goesBare } from './bare-kinds';
import type { Frame, Job } from './job';
import type { Package } from './package';

/** What double arithmetic may add in sums of thicknesses, mm. */
const SLACK = 1e-6;

/** An open back is, unless something stands out behind it, over which no paper lies flat. */
export function usualDustCover(
  { build, rabbetDepth = Infinity }: Pick<Frame, 'build' | 'rabbetDepth'>,
  held: Omit<Package, 'dustCover'>,
  inside: Pick<Job, 'layers' | 'pictures'>,
): boolean {
  const isOpen = build === 'open back' || build === 'deep';
  return isOpen && depthOf(held, inside) <= rabbetDepth + SLACK;
}

/** As all is named, without the room for what holds it, mm; a picture that floats in its window counts as if it lay behind. */
function depthOf(
  { glazing, spacer, mountBoard, backing, hinging }: Omit<Package, 'dustCover'>,
  { layers, pictures }: Pick<Job, 'layers' | 'pictures'>,
): number {
  const hinges = pictures.every(({ kind }) => goesBare(kind)) ? 0 : hinging.thickness.nominal;
  const flat = [glazing, spacer, mountBoard, backing].map((item) => item?.thickness.nominal ?? 0);
  const thickest = Math.max(0, ...pictures.map(({ thickness }) => thickness));
  return [...flat, ...layers.map(({ thickness }) => thickness), hinges, thickest].reduce((sum, mm) => sum + mm, 0);
}
