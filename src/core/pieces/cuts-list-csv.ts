/** The cuts list of one frame or many as comma-separated values: rails first, decimals to calculate with and text to read. */
import type { Size } from '../geometry/box';
import { csvText, type Cell } from '../tables/csv-text';
import { decimalCell, shownCell } from '../tables/length-cells';
import type { Showing } from '../units';
import type { FramePieces } from './pieces';

const LENGTHS = ['width', 'height', 'order width', 'order height', 'thickness'] as const;

const HEADING: readonly string[] = [
  ...['frame', 'title', 'piece', 'layer', 'material', 'count', 'comes with the frame', 'unit'],
  ...LENGTHS.flatMap((name) => [name, `${name} shown`]),
  ...['area (m2)', 'area less windows (m2)', 'how'],
];

/** A row as the file has it. */
interface Line {
  readonly piece: string;
  readonly layer?: number;
  readonly material: string;
  readonly count: number;
  readonly comesWithFrame: boolean;
  readonly cut: Size;
  readonly order?: Size;
  readonly thickness?: number;
  readonly area?: { readonly full: number; readonly net: number };
  readonly how: string;
}

/** @param showings how the lengths of each frame are shown. */
export function cutsListCsv(frames: readonly FramePieces[], showings: readonly Showing[]): string {
  const rows = frames.flatMap((frame, index) => {
    const showing = showings[index];
    return showing ? linesOf(frame).map((line) => cellsOf(line, index + 1, frame.title, showing)) : [];
  });
  return csvText([HEADING, ...rows]);
}

function linesOf({ moulding, pieces }: FramePieces): Line[] {
  const { section, rails, mitreDegrees } = moulding;
  return [
    ...rails.map(({ sides, count, outside }): Line => {
      const across = sides === 'top and bottom';
      const [width, height] = across ? [outside, section.width] : [section.width, outside];
      const material = section.name ?? 'moulding';
      const how = `long point to long point, ${mitreDegrees} degrees at both ends`;
      return { piece: `Rail ${sides}`, material, count, comesWithFrame: false, cut: { width, height }, how };
    }),
    ...pieces.map((piece): Line => {
      const { name, rule, thickness, ...rest } = piece;
      return { ...rest, piece: name, how: rule, ...(thickness ? { thickness: thickness.nominal } : {}) };
    }),
  ];
}

function cellsOf(line: Line, frame: number, title: string, showing: Showing): Cell[] {
  const { piece, layer, material, count, comesWithFrame, cut, order, thickness, area, how } = line;
  const lengths = [cut.width, cut.height, order?.width, order?.height, thickness];
  return [
    ...[frame, title, piece, layer ?? '', material, count, comesWithFrame ? 'yes' : 'no', showing.unit],
    ...lengths.flatMap((mm): Cell[] =>
      mm === undefined ? ['', ''] : [decimalCell(mm, showing), shownCell(mm, showing)],
    ),
    ...[area?.full, area?.net].map((squareMm) => (squareMm === undefined ? '' : squareMm / 1e6)),
    how,
  ];
}
