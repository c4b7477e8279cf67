/** How far a machine's tool goes: cut and travelled, of each layer and in all. */
import type { OutputKind } from '../../bridge';
import { MACHINE_DEFAULTS, type MachineOptions } from '../../core/cutting/machine-options';
import { planCuts } from '../../core/cutting/plan-cuts';
import { planToolPaths } from '../../core/cutting/tool-paths';
import type { View } from '../../core/cutting/plan';
import { settingText } from '../../core/layout/line-words';
import type { Showing } from '../../core/units';
import { MACHINE_KINDS } from '../machine-options';
import type { FoundJob } from '../read-job';
import { columns } from './text';

/** Lengths in mm. */
export interface PathLengths {
  readonly cutLength: number;
  readonly travel: number;
  readonly layers: readonly { readonly number: number; readonly cutLength: number; readonly travel: number }[];
}

/** Undefined where no file is for a machine, or nothing is cut. */
export function pathLengths(
  { job, layout }: FoundJob,
  only: readonly OutputKind[],
  view: View,
  { corner = MACHINE_DEFAULTS.corner }: Partial<MachineOptions> = {},
): PathLengths | undefined {
  if (layout.layers.length === 0 || !MACHINE_KINDS.some((kind) => only.includes(kind))) return undefined;
  const { cutLength, travel, layers } = planToolPaths(planCuts(job, layout), { view, corner });
  return {
    cutLength,
    travel,
    layers: layers.map(({ layer, cutLength, travel }) => ({ number: layer.number, cutLength, travel })),
  };
}

export function pathLengthsText({ layers, ...whole }: PathLengths, showing: Showing): string {
  const row = (name: string, { cutLength, travel }: Omit<PathLengths, 'layers'>) => [
    name,
    `cut ${settingText(cutLength, showing)}`,
    `travel ${settingText(travel, showing)}`,
  ];
  const rows = [
    ...layers.map((layer) => row(`layer ${layer.number}`, layer)),
    ...(layers.length > 1 ? [row('in all', whole)] : []),
  ];
  return `${columns(rows, { indent: 0, width: 1000 }).join('\n')}\n`;
}
