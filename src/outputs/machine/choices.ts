/** The choices about files for machines, whole: what was said, and the defaults for the rest. */
import {
  MACHINE_DEFAULTS,
  MACHINE_LIMITS,
  type MachineMeasure,
  type MachineOptions,
} from '../../core/cutting/machine-options';
import { assert } from '../../core/problem';

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
