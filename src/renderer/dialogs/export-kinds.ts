/** The files an export can make, as the dialog words them. */
import type { MachineKind, OutputKind } from '../../bridge';

interface KindWords<K extends OutputKind> {
  readonly value: K;
  readonly label: string;
}

export const PAPER_KINDS: readonly KindWords<OutputKind>[] = [
  { value: 'template', label: 'Cutting template (PDF, full scale)' },
  { value: 'cut-card', label: 'Cut cards for a guided cutter (PDF)' },
  { value: 'cut-list', label: 'Coordinates of the cuts (CSV)' },
  { value: 'proof', label: 'Proof picture (SVG)' },
];

export const MACHINE_KINDS: readonly KindWords<MachineKind>[] = [
  { value: 'dxf', label: 'DXF drawing' },
  { value: 'svg', label: 'SVG paths' },
  { value: 'hpgl', label: 'HPGL, for each layer' },
  { value: 'gcode', label: 'G-code, for each layer' },
  { value: 'csv', label: 'CSV table' },
  { value: 'json', label: 'JSON data' },
];

const ORDER: readonly OutputKind[] = [...PAPER_KINDS, ...MACHINE_KINDS].map(({ value }) => value);

/** The same kinds with one more or one less, in the order they are offered in. */
export function withKind(chosen: readonly OutputKind[], kind: OutputKind, wanted: boolean): readonly OutputKind[] {
  return ORDER.filter((each) => (each === kind ? wanted : chosen.includes(each)));
}

export function isForMachines(chosen: readonly OutputKind[]): boolean {
  return MACHINE_KINDS.some(({ value }) => chosen.includes(value));
}
