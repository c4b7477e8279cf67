/** What files for machines say of grooves and ruled lines: how they are made, or that this view has none of them. */
import type { LayerPlan, View } from '../../core/cutting/plan';
import type { Layout } from '../../core/layout/layout';
import type { Problem } from '../../core/problem';
import { lengthNumber, plainNumber } from './numbers';

/** One sentence for each sort of line on a layer, lengths in the unit of the file. */
export function lineWords({ lines }: LayerPlan, view: View, unit: 'in' | 'mm'): string[] {
  if (lines.length === 0) return [];
  if (view === 'back')
    return ['Grooves and ruled lines are not in here: they are made on the face, so write the front view for them'];
  const length = (mm: number) => `${lengthNumber(mm, unit)} ${unit}`;
  const sentences = lines.map((line) =>
    line.kind === 'groove'
      ? `Grooves ${length(line.width)} wide: two passes ${length(line.depth)} deep, the knife leaning ${plainNumber(line.angleDegrees, 4)} degrees towards the middle, an angle that is set on your machine`
      : `Ruled lines: a pen ${length(line.width)} wide, just touching the face`,
  );
  return [...new Set(sentences)].sort((a, b) => (a.startsWith('R') ? 0 : 1) - (b.startsWith('R') ? 0 : 1));
}

/** A file for a machine that works from the back has no place for what is made on the face. */
export function linesLeftOut({ windows }: Layout, view: View): Problem[] {
  const [first] = windows.flatMap(({ lines }) => lines);
  if (!first || view === 'front') return [];
  return [
    {
      code: 'lines-left-out',
      severity: 'warning',
      at: first.line.at,
      message:
        'The files for machines are in the back view and leave out grooves and ruled lines, which are made on the face. Write them in the front view too, and run its grooves and lines before the board is turned over.',
      remedy: 'write the files for machines in the front view as well',
    },
  ];
}
