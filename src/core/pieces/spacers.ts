/** Strips that hold the glazing off: hidden under the lip, the long ones whole and the short ones between them. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Problem } from '../problem';
import { lengthText, showingOf, type Showing } from '../units';
import type { FrameMoulding } from './moulding';
import { orderLength } from './order-size';
import { SPACER_STRIP, type Piece } from './piece';

/**
 * Two lines of two strips each, of board as many one upon another as make its thickness; none without a spacer, and none
 * where the lip leaves nothing to hide one under.
 *
 * @param hidden how much of the blank's edge the lip covers, mm.
 */
export function spacerPieces(job: Job, blank: Size, hidden: number, showing: Showing): Piece[] {
  const { spacer } = job.package;
  if (!spacer || hidden <= 0) return [];
  const upon = stripsOneUponAnother(job);
  const lying = blank.width >= blank.height;
  const [long, short] = lying ? [blank.width, blank.height] : [blank.height, blank.width];
  const between = short - 2 * hidden;
  const { least, nominal, greatest } = spacer.thickness;
  const strip = (name: string, length: number, across: boolean, rule: string): Piece => {
    const size = (along: number): Size =>
      across ? { width: along, height: hidden } : { width: hidden, height: along };
    return {
      kind: 'spacer',
      name,
      material: spacer.board ?? SPACER_STRIP,
      count: 2 * upon,
      cut: size(length),
      order: size(orderLength(length, Infinity, showing)),
      thickness: { least: least / upon, nominal: nominal / upon, greatest: greatest / upon },
      area: { full: length * hidden, net: length * hidden },
      comesWithFrame: false,
      rule,
    };
  };
  const many = upon === 1 ? '' : `, ${upon} one upon another`;
  const under = `as wide as the lip hides, ${lengthText(hidden, showing)}, or narrower${many}`;
  const [first, second] = lying
    ? (['top and bottom', 'left and right'] as const)
    : (['left and right', 'top and bottom'] as const);
  return [
    strip(`Spacer ${first}`, long, lying, `the whole side; ${under}`),
    ...(between > 0 ? [strip(`Spacer ${second}`, between, !lying, `between the long strips; ${under}`)] : []),
  ];
}

/** Of a board whose thickness the job says; else one. */
function stripsOneUponAnother({ layers, package: { spacer, mountBoard } }: Job): number {
  if (spacer?.board === undefined) return 1;
  const name = spacer.board.toLowerCase();
  const layer = layers.find(({ board }) => board.toLowerCase() === name)?.thickness;
  const board = layer ?? (mountBoard?.board.toLowerCase() === name ? mountBoard.thickness.nominal : undefined);
  return board === undefined ? 1 : Math.max(1, Math.round(spacer.thickness.nominal / board));
}

/** Where the lip hides nothing of the blank, every strip would be seen. */
export function spacerProblems(job: Job, moulding: FrameMoulding | undefined): Problem[] {
  const { lip } = moulding?.section ?? job.frame;
  const hidden = lip - job.frame.allowance / 2;
  if (!job.package.spacer || hidden > 0) return [];
  const showing = showingOf(job);
  const message = `The spacer of “${job.title}” has no lip to lie under: a lip of ${lengthText(lip, showing)} hides nothing of the package with an allowance of ${lengthText(job.frame.allowance, showing)}. It is not in the cuts list.`;
  return [
    {
      code: 'spacer-not-hidden',
      severity: 'warning',
      at: 'package.spacer',
      message,
      value: lengthText(lip, showing),
      remedy: 'a wider lip, a smaller allowance, or another mat in its place',
    },
  ];
}
