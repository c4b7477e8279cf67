/** Reads the shape of a window. */
import { outlineProblem } from '../outlines/outline-problems';
import { readOutlinePath } from '../outlines/path-outline';
import { DEFAULT_POLYGON_SIDES, defaultLength, type DefaultLength } from './defaults';
import type { WindowShape } from './job';
import type { Reader } from './reader';
import type { WrittenLength } from './written';
import type { WrittenShape } from './written-shape';

type Measured = Exclude<WrittenShape, string>;

/** A word stands for the shape with its usual measures. Whether they fit the window is seen when it has its size. */
export function readShape(written: WrittenShape | undefined, at: string, reader: Reader): WindowShape {
  const shape = typeof written === 'object' ? written : ({ kind: written ?? 'rectangle' } as Measured);
  const measure = (key: string, name: string, of: WrittenLength | undefined, usual: DefaultLength) =>
    reader.length(of, `${at}.${key}`, { name, least: 0, above: true }, defaultLength(usual, reader.units));
  const rise = (of: WrittenLength | undefined) => {
    const length = reader.optionalLength(of, `${at}.rise`, { name: 'Rise of the arch', least: 0, above: true });
    return length === undefined ? {} : { rise: length };
  };
  switch (shape.kind) {
    case 'rectangle':
      return { kind: 'rectangle' };
    case 'oval':
      return { kind: 'oval', reveal: shape.reveal ?? 'parallel' };
    case 'arch':
    case 'pointed':
      return { kind: shape.kind, ...rise(shape.rise) };
    case 'polygon':
      return { kind: 'polygon', sides: shape.sides ?? DEFAULT_POLYGON_SIDES };
    case 'rounded':
      return { kind: 'rounded', radius: measure('radius', 'Radius of the corners', shape.radius, 'cornerRadius') };
    case 'scooped':
      return { kind: 'scooped', radius: measure('radius', 'Radius of the corners', shape.radius, 'hollowRadius') };
    case 'cut-corners':
      return { kind: 'cut-corners', cut: measure('cut', 'Cut of the corners', shape.cut, 'cornerCut') };
    case 'stepped':
      return {
        kind: 'stepped',
        step: measure('step', 'Step of the corners', shape.step, 'cornerStep'),
        count: shape.count ?? 1,
      };
    case 'outline': {
      const { path } = shape;
      const read = readOutlinePath(path);
      if (!read.ok) reader.say(outlineProblem(read.fault, `${at}.path`));
      return { kind: 'outline', path };
    }
  }
}
