/** What an empty frame weighs: as weighed, by its wood, or by the metre of its moulding. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { FrameSizes } from '../layout/layout';
import type { FrameMoulding } from './moulding';
import { exactly, type Range } from './range';

export interface FrameWeight {
  /** kg. */
  readonly kg: Range;
  readonly how: string;
}

/** Undefined where nothing says what it weighs. */
export function frameWeight({ frame }: Job, sizes: FrameSizes, moulding: FrameMoulding): FrameWeight | undefined {
  if (frame.weight !== undefined) return { kg: exactly(frame.weight), how: 'as the job says' };
  const { depth, weight } = moulding.section;
  // Inside a float frame is a ledge, and how large it is is not known.
  const isPlain = frame.build !== 'float';
  if (isPlain && frame.density !== undefined && depth !== undefined)
    return byWood(frame.density, depth, sizes.rabbet, moulding);
  return weight === undefined ? undefined : byMetre(weight, moulding);
}

/** Cubic mm in a litre, which weighs as many kg as its density says. */
const LITRE = 1e6;

/** A plain moulding: its face times its depth, less the rabbet; mitred, so that ring lies in ring. */
function byWood(density: number, depth: number, rabbet: Size, { outside, section }: FrameMoulding): FrameWeight {
  const { lip, rabbetDepth } = section;
  const sight = areaOf({ width: rabbet.width - 2 * lip, height: rabbet.height - 2 * lip });
  const whole = (areaOf(outside) - sight) * depth;
  const hollow = areaOf(rabbet) - sight;
  const kg = (hollowDepth: number) => ((whole - hollow * hollowDepth) * density) / LITRE;
  const plain = 'face x depth less the rabbet; a moulding with a profile weighs less';
  if (rabbetDepth !== undefined) return { kg: exactly(kg(rabbetDepth)), how: `${density} g/cm³ x ${plain}` };
  const how = `${density} g/cm³ x ${plain}; its rabbet depth is not known: at the least all through, else none`;
  return { kg: { least: kg(depth), nominal: kg(0), greatest: kg(0) }, how };
}

/** Where across its face a metre has its weight is not known: somewhere between the sight edge and the outside. */
function byMetre(weight: number, { rails }: FrameMoulding): FrameWeight {
  const metres = (edge: 'sight' | 'outside') => rails.reduce((sum, rail) => sum + rail.count * rail[edge], 0) / 1000;
  const [least, greatest] = [weight * metres('sight'), weight * metres('outside')];
  return { kg: { least, nominal: (least + greatest) / 2, greatest }, how: `${weight} kg/m of moulding x its rails` };
}

function areaOf({ width, height }: Size): number {
  return width * height;
}
