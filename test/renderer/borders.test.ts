/** Giving a border a length: whatever the rule, that border becomes just that, and the others are kept as far as they can be. */
import { describe, expect, it } from 'vitest';
import { SIDES, type PerSide, type Side } from '../../src/core/geometry/box';
import { setAll } from '../../src/core/job/edit';
import { readJob } from '../../src/core/job/read';
import type { WrittenBorders, WrittenJob } from '../../src/core/job/written';
import { BORDER_RULES } from '../../src/core/job/written-borders';
import { layOut } from '../../src/core/layout/lay-out';
import { changeBorder, chooseRule, measuredBorders } from '../../src/renderer/edits/borders';

const base = (frame: WrittenJob['frame'], borders: WrittenBorders): WrittenJob => ({
  format: 'matwright-job',
  version: 1,
  pictures: [{ size: '8 x 10' }],
  ...(frame ? { frame } : {}),
  borders,
});

function laid(written: WrittenJob) {
  const read = readJob(written);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const layout = layOut(read.value.job);
  if (!layout.ok) throw new Error(layout.problems[0]?.message);
  const { job } = read.value;
  return { job, layout: layout.value, borders: measuredBorders(job, layout.value) };
}

/** The job with one border given, and its borders before and after. */
function given(written: WrittenJob, side: Side, text: string, mm: number): { before: PerSide; after: PerSide } {
  const { job, layout, borders } = laid(written);
  const change = changeBorder(job, layout, side, text, mm);
  return { before: borders, after: laid(setAll(written, change.edits)).borders };
}

const RULES = BORDER_RULES.filter((rule) => rule !== 'equal');

describe.each(['as cut', 'as seen'] as const)('borders measured %s', (measured) => {
  it.each(RULES.flatMap((rule) => SIDES.map((side) => [rule, side] as const)))(
    'in a given frame, %s: %s becomes what is typed',
    (rule, side) => {
      const written = base({ size: '16 x 20' }, { rule, measured });
      const { before, after } = given(written, side, '3 5/16', 3.3125 * 25.4);
      expect(after[side]).toBeCloseTo(3.3125 * 25.4, 6);
      const across = side === 'left' || side === 'right';
      const kept = (across ? ['top', 'bottom'] : ['left', 'right']) as readonly Side[];
      for (const other of kept) expect(after[other]).toBeCloseTo(before[other], 6);
    },
  );

  it.each(BORDER_RULES.flatMap((rule) => SIDES.map((side) => [rule, side] as const)))(
    'made to fit, %s: %s becomes what is typed',
    (rule, side) => {
      const { after } = given(base(undefined, { rule, measured }), side, '3 5/16', 3.3125 * 25.4);
      expect(after[side]).toBeCloseTo(3.3125 * 25.4, 6);
    },
  );

  it.each([undefined, { size: '16 x 20' }])('by hand starts from the borders as they are (frame %o)', (frame) => {
    const written = base(frame, { rule: 'bottom-amount', measured, amount: '3/4' });
    const { job, layout, borders } = laid(written);
    const after = laid(setAll(written, chooseRule(job, layout, 'by-hand'))).borders;
    for (const side of SIDES) expect(after[side]).toBeCloseTo(borders[side], 6);
  });
});

it('another rule in a given frame drops the lengths it has no use for', () => {
  const written = base({ size: '11 x 14' }, { rule: 'by-hand', left: '1', top: '2' });
  const { job, layout } = laid(written);
  expect(setAll(written, chooseRule(job, layout, 'centred')).borders).toEqual({ rule: 'centred' });
});

it('says in words when the rule has to change, and only then', () => {
  const weighted = laid(base({ size: '11 x 14' }, { rule: 'bottom-amount' }));
  expect(changeBorder(weighted.job, weighted.layout, 'left', '1', 25.4).switches).toMatch(/each by hand/);
  expect(changeBorder(weighted.job, weighted.layout, 'top', '1', 25.4).switches).toBeUndefined();
});
