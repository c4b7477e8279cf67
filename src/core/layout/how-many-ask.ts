/** What is asked when a blank is to be filled with windows of one size: read from text, or said to be impossible. */
import type { PerSide, Size } from '../geometry/box';
import { Reader } from '../job/reader';
import type { WrittenLength, WrittenPerSide, WrittenSize } from '../job/written';
import { bad, good, isError, type Result } from '../problem';
import type { Showing, Unit } from '../units';

export const FIT_SHAPES = ['rectangle', 'oval'] as const;
export type FitShape = (typeof FIT_SHAPES)[number];

/** Lengths as people type them. */
export interface WrittenHowMany {
  readonly size: WrittenSize;
  readonly on: WrittenSize;
  readonly gap: WrittenLength;
  readonly border: WrittenPerSide<WrittenLength>;
  readonly shape?: FitShape;
}

export interface HowManyAsk {
  /** Of one window, upright. */
  readonly size: Size;
  readonly blank: Size;
  /** Least distance between the outlines of neighbours, mm; more than 0. */
  readonly gap: number;
  /** Least borders, as cut. */
  readonly border: PerSide;
  readonly shape: FitShape;
}

/** The question with its lengths in mm; problems name `size`, `on`, `gap` or `border`. */
export function readHowMany(
  written: WrittenHowMany,
  units: Unit,
  steps: { readonly in: Showing['inchStep']; readonly mm: Showing['metricStep'] } = { in: 16, mm: 0.5 },
): Result<HowManyAsk> {
  const reader = new Reader(units, steps);
  const ask: HowManyAsk = {
    size: reader.size(written.size, 'size', 'the window'),
    blank: reader.size(written.on, 'on', 'the blank'),
    gap: reader.length(written.gap, 'gap', { name: 'Gap', least: 0, above: true }, NaN),
    border: reader.perSide(written.border, 'border', 0, (value, at) =>
      reader.length(value, at, { name: 'Least border', least: 0 }, NaN),
    ),
    shape: written.shape ?? 'rectangle',
  };
  if (reader.problems.length === 0) refuseBorders(ask, reader);
  return reader.problems.some(isError) ? bad(reader.problems) : good(ask);
}

/** Borders that meet leave no board to cut a window in. */
function refuseBorders({ blank, border }: HowManyAsk, reader: Reader): void {
  const axes = [
    ['left and right', border.left + border.right, blank.width, 'wide'],
    ['top and bottom', border.top + border.bottom, blank.height, 'high'],
  ] as const;
  for (const [sides, taken, length, measure] of axes) {
    if (taken < length) continue;
    reader.say({
      code: 'no-room-for-windows',
      at: 'border',
      message: `The least borders ${sides} take ${reader.show(taken)} together, and the blank is ${reader.show(length)} ${measure}: nothing is left for windows.`,
      value: reader.show(taken),
      limit: reader.show(length),
      remedy: `take borders of less than ${reader.show(length)} together, or a larger blank`,
    });
  }
}
