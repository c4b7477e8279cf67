/** Files that version 1 saved: they must open in every later version and come to the sizes recorded here. The files are never edited. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/core/geometry/box';
import { parseJobText, printJob } from '../../src/core/job/text';
import { tryPlan } from '../core/open';

interface Recorded {
  /** Width and height, mm. */
  readonly blank: readonly [number, number];
  /** Name, left, bottom, right, top, mm. */
  readonly windows: readonly (readonly [string, number, number, number, number])[];
  /** Opening of the top layer of the first window. */
  readonly top: readonly [number, number, number, number];
  readonly problems: readonly string[];
}

const inches = (...lengths: number[]) => lengths.map((length) => length * 25.4);

/** Worked out by hand from the files. */
const RECORDED: Readonly<Record<string, Recorded>> = {
  // 8 x 10 less 1/8 all round, in 11 x 14.
  short: {
    blank: inches(11, 14) as [number, number],
    windows: [['A', ...(inches(1.625, 2.125, 9.375, 11.875) as [number, number, number, number])]],
    top: inches(1.625, 2.125, 9.375, 11.875) as [number, number, number, number],
    problems: [],
  },
  // Window 20 1/2 x 28 3/4; the frame hides 5/16 of each border: 3 13/16 at the sides and the top, 4 9/16 at the bottom.
  'harbour-double-mat': {
    blank: inches(28.125, 37.125) as [number, number],
    windows: [['A', ...(inches(3.8125, 4.5625, 24.3125, 33.3125) as [number, number, number, number])]],
    top: inches(3.5625, 4.3125, 24.5625, 33.5625) as [number, number, number, number],
    problems: ['size-is-custom'],
  },
  // Widths: row 128 + 40 + 168 = 336, spread 612. Heights: 168 + (30 + 20 below the baseline), 60, 192: 470, so 230 are
  // left over: 103.5 above, 126.5 below. Of the spread's 612 the bars hide 50 and leave 562: 140.5, 281, 140.5.
  'linocut-wall': {
    blank: [1000, 700],
    windows: [
      ['A', 194, 428.5, 322, 596.5],
      ['B', 362, 428.5, 530, 556.5],
      ['C', 366, 378.5, 526, 398.5],
      ['D', 194, 126.5, 334.5, 318.5],
      ['E', 359.5, 126.5, 640.5, 318.5],
      ['F', 665.5, 126.5, 806, 318.5],
      ['G', 880, 40, 960, 55],
    ],
    top: [194, 428.5, 322, 596.5],
    problems: [],
  },
};

const textOf = (name: string) => readFileSync(fileURLToPath(new URL(`v1/${name}.json`, import.meta.url)), 'utf8');
const numbers = ({ left, bottom, right, top }: Box) => [left, bottom, right, top];

describe.each(Object.entries(RECORDED))('%s', (name, { blank, windows, top, problems }) => {
  const opened = parseJobText(textOf(name));
  const value: unknown = JSON.parse(textOf(name));
  const found = tryPlan(value);

  it('opens, and is saved with all that it says', () => {
    expect(opened.ok).toBe(true);
    if (opened.ok) expect(JSON.parse(printJob(opened.value.written))).toEqual(value);
  });

  it('checks as it did', () => expect(found.problems.map(({ code }) => code)).toEqual(problems));

  it('is laid out to the recorded sizes', () => {
    const layout = found.planned?.layout;
    expect(layout?.frame.blank.width).toBeCloseTo(blank[0], 9);
    expect(layout?.frame.blank.height).toBeCloseTo(blank[1], 9);
    expect(layout?.windows.map((window) => window.name)).toEqual(windows.map(([letter]) => letter));
    layout?.windows.forEach(({ window }, index) =>
      numbers(window).forEach((side, place) => expect(side).toBeCloseTo(windows[index]?.[place + 1] as number, 9)),
    );
    const opening = layout?.windows[0]?.layers[0]?.opening;
    numbers(opening as Box).forEach((side, place) => expect(side).toBeCloseTo(top[place] as number, 9));
  });
});
