/** The table of paths itself as JSON, in millimetres and full precision. */
import { PATH_RULE, type LayerPaths, type ToolPath } from '../../core/cutting/tool-paths';
import { good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { MACHINE_CAUTION } from '../../core/cutting/machine-caution';
import { chosenEdges, machinePaths, type MachinePaths } from './machine-paths';

/** Angles in radians, anticlockwise; an `oval` edge lies `away` from the ellipse `centre + (radii.x cos t, radii.y sin t)`. */
export function makePathJson(context: OutputContext): Promise<Result<Uint8Array>> {
  const paths = machinePaths(context);
  const { view, corner, waste, cutLength, travel, layers } = paths.table;
  const file = {
    format: 'matwright-tool-paths',
    version: 1,
    title: titleOf(context),
    unit: 'mm',
    view,
    origin: corner,
    waste,
    order: PATH_RULE,
    caution: MACHINE_CAUTION.join(' '),
    cutLength,
    travel,
    layers: layers.map((layer) => layerRecord(layer, paths)),
  };
  return Promise.resolve(good(new TextEncoder().encode(`${JSON.stringify(file, plain, 1)}\n`)));
}

function layerRecord({ layer, blank, lowerLeft, paths, cutLength, travel }: LayerPaths, { choices }: MachinePaths) {
  const { number, board, thickness, bevel } = layer;
  const records = paths.map((path: ToolPath) => ({ ...path, edges: chosenEdges(path.edges, choices) }));
  return { number, board, thickness, bevel, blank, lowerLeft, cutLength, travel, paths: records };
}

/** Under a millionth of a millimetre is nothing, and would be written with an exponent. */
function plain(_: string, value: unknown): unknown {
  return typeof value === 'number' && Math.abs(value) < 1e-6 ? 0 : value;
}
