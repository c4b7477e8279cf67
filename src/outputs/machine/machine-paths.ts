/** The table of paths that every format for machines is written from. */
import type { MachineOptions } from '../../core/cutting/machine-options';
import { planToolPaths, type ToolPaths } from '../../core/cutting/tool-paths';
import type { Edge } from '../../core/geometry/edge';
import type { OutputContext } from '../context';
import { chordsOf, withoutSpecks } from './approximate';
import { machineChoices } from './choices';

export interface MachinePaths {
  readonly table: ToolPaths;
  readonly choices: MachineOptions;
  /** Machines count in these; a job in centimetres is written in millimetres. */
  readonly unit: 'in' | 'mm';
}

export function machinePaths({ plan, options }: OutputContext): MachinePaths {
  const choices = machineChoices(options.machine);
  const { view, units } = options;
  const table = planToolPaths(plan, { view, corner: choices.corner });
  const layers = table.layers.map((layer) => ({
    ...layer,
    paths: layer.paths.map((path) => ({ ...path, edges: withoutSpecks(path.edges) })),
  }));
  return {
    table: { ...table, layers },
    choices,
    unit: units === 'in' ? 'in' : 'mm',
  };
}

/** The edges as they are, or as straight pieces where curves are not wanted. */
export function chosenEdges(edges: readonly Edge[], { curves, tolerance }: MachineOptions): readonly Edge[] {
  return curves === 'arcs' ? edges : edges.flatMap((edge) => chordsOf(edge, tolerance));
}
