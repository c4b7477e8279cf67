/** The pieces of one frame or many as text for a terminal. */
import type { Job } from '../../core/job/job';
import { roundedText } from '../../core/money';
import { mouldingRows, sticksRows } from '../../core/pieces/moulding-words';
import {
  costRows,
  densitySources,
  PIECE_HEADS,
  piecesCaution,
  pieceRow,
  sizeRules,
  weightRows,
} from '../../core/pieces/piece-words';
import type { FramePieces, MouldingSticks, Pieces } from '../../core/pieces/pieces';
import { lengthText, showingOf, sizeText, type Showing } from '../../core/units';
import { columns, paragraph, wrap } from './text';

/** @param notes said at the end. */
export function piecesText(
  { frames, sticks }: Pieces,
  jobs: readonly Job[],
  notes: readonly string[],
  width: number,
): string {
  const showings = jobs.map((job) => showingOf(job));
  const parts = [
    ...frames.map((frame, index) => frameText(frame, index, frames.length, showings[index] ?? showingOf(USUAL), width)),
    ...sticks.map((group) => sticksText(group, frames, showings[group.frames[0] ?? 0] ?? showingOf(USUAL), width)),
  ];
  parts.push([...notes, piecesCaution(frames.flatMap(({ pieces }) => pieces))].flatMap((line) => wrap(line, width)));
  return `${parts.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const USUAL = { units: 'in', steps: { in: 16, mm: 0.5 } } as const;

function frameText(frame: FramePieces, index: number, count: number, showing: Showing, width: number): string[] {
  const { title, moulding, pieces, weight, costs } = frame;
  const number = count === 1 ? '' : `${index + 1}  `;
  const head = `${number}${title}: ${sizeText(moulding.outside, showing)} outside`;
  const rows = (lines: readonly (readonly string[])[]) => columns(lines, { indent: 4, width });
  return [
    ...wrap(head, width),
    '  Moulding',
    ...rows(mouldingRows(moulding, showing)),
    '  Cuts list, from the front',
    ...pieceLines(pieces, showing, width),
    '  Weight',
    ...rows(weightRows(weight, showing.unit)),
    ...densitySources(weight).flatMap((line) => paragraph(line, 4, width)),
    ...(costs ? ['  Cost', ...rows(costRows(costs))] : []),
  ];
}

function pieceLines(pieces: FramePieces['pieces'], showing: Showing, width: number): string[] {
  if (pieces.length === 0) return ['    nothing to cut but the rails'];
  return [
    ...columns([PIECE_HEADS, ...pieces.map((piece) => pieceRow(piece, showing))], { indent: 4, width }),
    ...sizeRules(pieces).flatMap((rule) => paragraph(rule, 4, width)),
  ];
}

function sticksText(group: MouldingSticks, frames: readonly FramePieces[], showing: Showing, width: number): string[] {
  const { section, cost } = group;
  const what = section.name === undefined ? `moulding ${lengthText(section.width, showing)} wide` : `“${section.name}”`;
  return [
    `Sticks of ${what}`,
    ...columns(sticksRows(group, frames, showing), { indent: 4, width }),
    ...(cost ? paragraph(`Bought whole they cost ${roundedText(cost)}.`, 4, width) : []),
  ];
}
