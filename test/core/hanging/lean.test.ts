/** How far a frame leans from the wall: held against a search for the least energy, and kept out of the wall. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hangingAsk } from '../../../src/core/hanging/ask-of';
import { hang } from '../../../src/core/hanging/hang';
import { leanOf } from '../../../src/core/hanging/lean';
import { planned, type Contents } from '../open';
import { FERN, hung } from './hung';

const hanging = (said: Contents['hanging'], more: Contents = {}): Contents => ({ ...FERN, ...more, hanging: said });

describe('the lean from the wall', () => {
  const side = fc.record({
    height: fc.double({ min: 200, max: 1000, noNaN: true }),
    depth: fc.double({ min: 10, max: 60, noNaN: true }),
    downPart: fc.double({ min: 0.15, max: 0.45, noNaN: true }),
    rise: fc.double({ min: 20, max: 150, noNaN: true }),
    standOff: fc.double({ min: 0, max: 10, noNaN: true }),
    bumpers: fc.double({ min: 0, max: 10, noNaN: true }),
    standsOut: fc.option(fc.record({ by: fc.double({ min: 0.1, max: 20, noNaN: true }), inset: fc.double({ min: 5, max: 30, noNaN: true }) }), { nil: undefined }),
  }); // prettier-ignore

  it('is where the middle of the frame lies lowest, by trying leans alone', () => {
    let found = 0;
    fc.assert(
      fc.property(side, ({ downPart, ...rest }) => {
        const ask = { ...rest, down: downPart * rest.height };
        const lean = leanOf(ask);
        if (!lean) return;
        found++;
        const { by = 0, inset = 0 } = ask.standsOut ?? {};
        const [thick, up] = by > ask.bumpers ? [by, inset] : [ask.bumpers, 0];
        // Height of the middle over the hook: the ring hangs on a stiff line, what rests on the wall slides on it.
        const heightAt = (angle: number) => {
          const along = ask.height - ask.down - up;
          const out = thick * Math.cos(angle) + along * Math.sin(angle);
          const ring = -Math.sqrt(ask.rise ** 2 - (out - ask.standOff) ** 2);
          return ring - (along + up - ask.height / 2) * Math.cos(angle) - (ask.depth / 2) * Math.sin(angle);
        };
        const here = heightAt(lean.angle);
        for (const off of [1e-3, 1e-4]) {
          expect(heightAt(lean.angle + off)).toBeGreaterThan(here);
          expect(heightAt(lean.angle - off)).toBeGreaterThan(here);
        }
        expect(lean.top).toBeCloseTo(thick * Math.cos(lean.angle) + (ask.height - up) * Math.sin(lean.angle), 9);
        // Nothing that stands out behind reaches into the wall.
        const offWall = (from: number, behind: number) => (thick - behind) * Math.cos(lean.angle) + (from - up) * Math.sin(lean.angle); // prettier-ignore
        for (const end of [inset, ask.height - inset]) expect(offWall(end, by)).toBeGreaterThan(-1e-6);
      }),
    );
    expect(found).toBeGreaterThan(20);
  });

  it('rests on a canvas that stands out further than the bumpers', () => {
    const canvas = {
      pictures: [{ kind: 'painting on canvas', size: '16 x 20 in', thickness: '3/4 in' }],
      frame: { size: '16 x 20 in', rabbetDepth: '3/8 in', mouldingDepth: '3/4 in' },
      mat: { layers: [] },
    };
    const leanOn = (bumpers: string, standOff: string) => {
      const plan = planned({
        ...canvas,
        hanging: { hanger: 'rings and wire', bumpers, hook: { standOff } },
      } as Contents);
      const answer = hang(hangingAsk(plan.job, plan.layout));
      return answer.ok ? answer.value.hanging.lean : undefined;
    };
    // 3/8 in stands out: thinner bumpers leave the same lean, thicker ones another.
    expect(leanOn('1/8 in', '3/4 in')?.top).toBeGreaterThan(9.525);
    expect(leanOn('1/8 in', '3/4 in')).toEqual(leanOn('1/4 in', '3/4 in'));
    expect(leanOn('1/2 in', '3/4 in')?.top).not.toBe(leanOn('1/4 in', '3/4 in')?.top);
    // Drawn to the wall by its wire it lies flat on what stands out.
    expect(leanOn('1/8 in', '1/8 in')).toBeUndefined();
  });

  it('grows as the rings are set lower', () => {
    const leans = [0.2, 0.3, 0.4, 0.45].map((part) => leanOf({ height: 500, depth: 25, down: 500 * part, rise: 80, standOff: 3, bumpers: 3 })!.angle); // prettier-ignore
    expect(leans.toSorted((a, b) => a - b)).toEqual(leans);
  });

  it('is told only where the depth of the moulding is known', () => {
    expect(hung(hanging({ hanger: 'rings and wire' })).hanging.lean).toBeUndefined();
    const deep = { ...FERN, frame: { ...FERN.frame, mouldingDepth: '1 in' } };
    expect(hung({ ...deep, hanging: { hanger: 'rings and wire' } }).hanging.lean!.angle).toBeGreaterThan(0);
    expect(hung({ ...deep, hanging: { hanger: 'cleat' } }).hanging.lean).toBeUndefined();
  });
});
