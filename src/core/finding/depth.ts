/** Whether a rabbet is deep enough for what goes into it. */
import type { Job } from '../job/job';
import type { Thickness } from '../job/package';

/** Least and greatest thickness of all that lies in the rabbet, mm, without room for the fixing behind it. */
export function contentsDepth({ package: parts, layers, pictures }: Job): Pick<Thickness, 'least' | 'greatest'> {
  const { glazing, spacer, hinging, mountBoard, backing } = parts;
  const flat = [glazing, spacer, mountBoard, backing].flatMap((part) => part?.thickness ?? []);
  const hinged = pictures.length > 0 ? [hinging.thickness] : [];
  const all = [
    ...flat,
    ...hinged,
    ...layers.map(({ thinnest, thickest }) => ({ least: thinnest, greatest: thickest })),
  ];
  const sum = (end: 'least' | 'greatest') => all.reduce((total, part) => total + part[end], 0);
  return {
    least: sum('least') + Math.max(0, ...pictures.map(({ thinnest }) => thinnest)),
    greatest: sum('greatest') + Math.max(0, ...pictures.map(({ thickest }) => thickest)),
  };
}
