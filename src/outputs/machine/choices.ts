/** What may be chosen about files for machines, within which limits, and what holds where nothing is said. */
import type { MachineOptions } from '../../bridge';
import { assert } from '../../core/problem';

export const MACHINE_DEFAULTS: MachineOptions = {
  corner: 'lower-left',
  curves: 'arcs',
  tolerance: 0.01,
  safeHeight: 5,
  depth: undefined,
  feed: 1500,
  rotary: undefined,
  liftAngleDegrees: 20,
};

/** Least and greatest, mm, mm per minute and degrees: beyond them a slip of the pen is likelier than a machine. */
export const MACHINE_LIMITS = {
  tolerance: [0.001, 1],
  safeHeight: [0.5, 200],
  depth: [0.05, 50],
  feed: [10, 100_000],
  liftAngleDegrees: [1, 180],
} as const satisfies Partial<Record<keyof MachineOptions, readonly [number, number]>>;

export type MachineMeasure = keyof typeof MACHINE_LIMITS;

/** With the defaults filled in. Hosts refuse what lies beyond the limits before it comes here. */
export function machineChoices(given: Partial<MachineOptions> = {}): MachineOptions {
  const said = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  const choices: MachineOptions = { ...MACHINE_DEFAULTS, ...said };
  for (const [name, [least, greatest]] of Object.entries(MACHINE_LIMITS)) {
    const value = choices[name as MachineMeasure];
    assert(value === undefined || (value >= least && value <= greatest), `${name} lies beyond its limits`);
  }
  return choices;
}
