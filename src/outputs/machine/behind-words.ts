/** What an export for machines says of layers that are cut behind one another: its files know of no trimmed board. */
import type { CutPlan } from '../../core/cutting/plan';
import type { Problem } from '../../core/problem';
import { lengthText, sizeText, type Showing } from '../../core/units';

/** Every layer stands in its file on the full blank, from whose corner a machine counts. */
export function fullBlanks({ way, layers, blank }: CutPlan, showing: Showing): Problem[] {
  const trimmed = layers.find(({ trim }) => trim > 0);
  if (way === 'apart' || !trimmed) return [];
  const size = sizeText(blank, showing);
  const trim = lengthText(trimmed.trim, showing);
  return [
    {
      code: 'machine-blank-full',
      severity: 'warning',
      at: 'cutting.layers',
      message: `The files for machines hold every layer by itself on the full blank of ${size}, though the boards of lower layers are trimmed by ${trim} or more on every side to be cut behind layer 1. Never put a trimmed board at the origin: its windows would lie ${trim} off. Put the edges of layer 1 there, with the lower board fixed behind it, or cut each layer from a full board.`,
      value: trim,
      remedy: 'put the edges of layer 1 at the origin, or cut each layer from a full board',
    },
  ];
}
