/** What a machine does for a groove or a ruled line: the passes of a groove as strokes of its blade, a ruled line in one stroke of the pen. */
import { bladePath } from './outline-cuts';
import type { LinePlan } from './plan';
import { strokesOf, type Stroke } from './strokes';

export function lineStrokes(line: LinePlan): Stroke[] {
  return line.passes.flatMap(({ name, cuts }): Stroke[] => {
    // A pen turns corners without being lifted.
    if (name === 'line') return [penStroke(line, cuts)];
    return strokesOf(cuts, line.width / 2).map((stroke) => ({
      ...stroke,
      cuts: stroke.cuts.map((cut) => `${line.name}, ${name} ${cut}`),
    }));
  });
}

function penStroke({ name }: LinePlan, cuts: LinePlan['passes'][number]['cuts']): Stroke {
  return {
    cuts: [name],
    edges: cuts.flatMap(bladePath),
    overcutStart: 0,
    overcutEnd: 0,
    closed: true,
    bevelSide: 'none',
    slopesTo: 'none',
  };
}
