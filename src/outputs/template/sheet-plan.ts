/** How a page is divided: border, header, footer, the strip of the upright check bar, and the room that is left. */
import type { Box, Size } from '../../core/geometry/box';
import { safeBox } from '../paper/page';

/** Width of the border's band and the air inside it, mm. */
export const BAND = 1.6;
const AIR = 1.4;
export const HEADER = 14.5;
export const FOOTER = 19;
/** Strip of the upright check bar. */
export const BAR_STRIP = 10;
/** Room of the scales left of and below a tile, with their numbers, and of the bare scales right and above. */
export const SCALE_ROOM = 5;
export const BARE_SCALE_ROOM = 2.5;

export interface SheetPlan {
  /** The border's outer edge; half a line inside the safe margin. */
  readonly border: Box;
  readonly header: Box;
  readonly footer: Box;
  readonly barStrip: Box;
  /** What is left for the page's matter. */
  readonly body: Box;
}

export function planSheet(paper: Size): SheetPlan {
  const safe = safeBox(paper);
  const border = { left: safe.left + 0.2, bottom: safe.bottom + 0.2, right: safe.right - 0.2, top: safe.top - 0.2 };
  const inset = BAND + AIR;
  const inside = {
    left: border.left + inset,
    bottom: border.bottom + inset,
    right: border.right - inset,
    top: border.top - inset,
  };
  const body = { ...inside, left: inside.left + BAR_STRIP, bottom: inside.bottom + FOOTER, top: inside.top - HEADER };
  return {
    border,
    header: { ...inside, bottom: body.top },
    footer: { ...inside, top: body.bottom },
    barStrip: { left: inside.left, right: body.left, bottom: body.bottom, top: body.top },
    body,
  };
}

/** Where a tile with its overlap is drawn on a page. */
export function tileArea(paper: Size): Box {
  const { body } = planSheet(paper);
  return {
    left: body.left + SCALE_ROOM,
    bottom: body.bottom + SCALE_ROOM,
    right: body.right - BARE_SCALE_ROOM,
    top: body.top - BARE_SCALE_ROOM,
  };
}
