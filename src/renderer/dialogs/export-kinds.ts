/** The files an export can make, as the dialog words them. */
import type {
  CostPaperKind,
  MachineKind,
  OutputKind,
  PaperName,
  SheetPaperKind,
  SheetPapersOptions,
} from '../../bridge';
import type { WrittenJob } from '../../core/job/written';

interface KindWords<K extends OutputKind> {
  readonly value: K;
  readonly label: string;
}

export const PAPER_KINDS: readonly KindWords<OutputKind>[] = [
  { value: 'template', label: 'Cutting template (PDF, full scale)' },
  { value: 'cut-card', label: 'Cut cards for a guided cutter (PDF)' },
  { value: 'cut-list', label: 'Coordinates of the cuts (CSV)' },
  { value: 'proof', label: 'Proof picture (SVG)' },
  { value: 'package-sheet', label: 'Package sheet: stack, pieces, check list (PDF)' },
  { value: 'hanging-sheet', label: 'Hanging sheet: wire, loads, places on the wall (PDF)' },
  { value: 'wall-template', label: 'Wall template of the nails (PDF, full scale)' },
];

export const MACHINE_KINDS: readonly KindWords<MachineKind>[] = [
  { value: 'dxf', label: 'DXF drawing' },
  { value: 'svg', label: 'SVG paths' },
  { value: 'hpgl', label: 'HPGL, for each layer' },
  { value: 'gcode', label: 'G-code, for each layer' },
  { value: 'csv', label: 'CSV of the paths' },
  { value: 'json', label: 'JSON of the paths' },
];

export const PAPERS: readonly { value: PaperName; label: string }[] = [
  { value: 'letter', label: 'Letter, 8 1/2 x 11 in, in tiles' },
  { value: 'legal', label: 'Legal, 8 1/2 x 14 in, in tiles' },
  { value: 'tabloid', label: 'Tabloid, 11 x 17 in, in tiles' },
  { value: 'a4', label: 'A4, 210 x 297 mm, in tiles' },
  { value: 'a3', label: 'A3, 297 x 420 mm, in tiles' },
  { value: 'blank', label: "One page of the blank's own size" },
];

/** What a plan of sheets comes to on paper. */
export const SHEET_PAPER_KINDS: readonly { readonly value: SheetPaperKind; readonly label: string }[] = [
  { value: 'sheet-plan', label: 'Plan of the sheets with the order of cuts (PDF)' },
  { value: 'labels', label: 'Labels for the pieces (PDF)' },
  { value: 'sheet-cuts', label: 'Lists of the pieces and of the cuts (CSV)' },
  { value: 'sheet-drawings', label: 'A drawing of each sheet (SVG)' },
];

/** What costs come to on paper. */
export const COST_PAPER_KINDS: readonly { readonly value: CostPaperKind; readonly label: string }[] = [
  { value: 'proposal', label: 'Proposal for the customer, with prices (PDF)' },
  { value: 'proposal-without-prices', label: 'Proposal for the customer, without prices (PDF)' },
  { value: 'cost-sheet', label: 'Cost sheet for the shop, every line with its basis (PDF)' },
];

export const SHEET_PAPERS: readonly { readonly value: SheetPapersOptions['paper']; readonly label: string }[] = [
  { value: 'letter', label: 'Letter, 8 1/2 x 11 in' },
  { value: 'legal', label: 'Legal, 8 1/2 x 14 in' },
  { value: 'tabloid', label: 'Tabloid, 11 x 17 in' },
  { value: 'a4', label: 'A4, 210 x 297 mm' },
  { value: 'a3', label: 'A3, 297 x 420 mm' },
];

/** What can be made where there is no mat to cut. */
export const UNCUT_KINDS: readonly OutputKind[] = ['proof', 'package-sheet', 'hanging-sheet', 'wall-template'];

const ORDER: readonly OutputKind[] = [...PAPER_KINDS, ...MACHINE_KINDS].map(({ value }) => value);

/** The same kinds with one more or one less, in the order they are offered in. */
export function withKind(chosen: readonly OutputKind[], kind: OutputKind, wanted: boolean): readonly OutputKind[] {
  return ORDER.filter((each) => (each === kind ? wanted : chosen.includes(each)));
}

/** What is offered first: paper for the wall only where the job says something of hanging. */
export function usualKinds({ hanging, wall }: WrittenJob): readonly OutputKind[] {
  const usual: readonly OutputKind[] = ['template', 'cut-list', 'proof'];
  return hanging || wall ? [...usual, 'hanging-sheet', 'wall-template'] : usual;
}

export function isForMachines(chosen: readonly OutputKind[]): boolean {
  return MACHINE_KINDS.some(({ value }) => chosen.includes(value));
}
