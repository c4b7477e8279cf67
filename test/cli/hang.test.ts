/** `hang`: its answer in words and as data, with a shelf and without, and what it refuses. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const fern = { title: 'Lady fern', pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } };
const hang = (job: object, words: readonly string[] = []) =>
  runHere(['hang', '-', ...words], { input: jobText({ ...fern, ...job }), folder });

describe('hang', () => {
  it('tells hanger, places, wire, loads, the wall and cautions', async () => {
    const { code, out, err } = await hang({
      hanging: { hanger: 'rings and wire', hooks: 1, hangerDown: '5 in', wireBelowTop: '2 in', weight: '10 lb', hook: { seat: '1/2 in' } },
      wall: { frames: [{}, { title: 'Chart', size: '20 x 16 in', drop: '3 in' }] },
    }); // prettier-ignore
    expect([code, err]).toEqual([0, '']);
    // Outside 12 1/8 x 15 1/8 in; rings 1/4 in from the edges: half the span is 5 13/16 in, the rise 3 in.
    const lines = out.split('\n').map((line) => line.trim().replace(/ +/g, ' '));
    expect(lines).toContain('Between the rings 11 5/8 in 12 1/8 in − 2 × 1/4 in');
    expect(lines).toContain('Rise 3 in from the rings to the hooks');
    expect(lines.find((line) => line.startsWith('Angle'))).toContain('27°');
    // 5 / sin(atan(3 / 5.8125)) = 10.9 lb.
    expect(lines.find((line) => line.startsWith('Wire 1.'))).toContain('1.09 x the weight, 10.9 lb');
    expect(out).toMatch(/1 +Lady fern +middle +6 1\/16 in +62 9\/16 in +63 1\/16 in/);
    expect(out).toContain('Take care');
    expect(out).toContain('cables and pipes');
    expect(out).toContain('ADAAG 4.4.1');
  });

  it('never tells an unknown weight as none', async () => {
    const { out, err } = await hang({});
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /Weight at least [\d.]+ lb without .*the backing.*the frame, which are not known/,
    );
    expect(out).not.toMatch(/\b0(\.0)? (lb|oz|kg|g)\b/);
    expect(err).toContain('[weight-not-known]');
  });

  it('gives its data in mm and kg', async () => {
    const { code, out } = await hang({ hanging: { weight: '2 kg', hooksApart: '100 mm' } }, ['--json']);
    expect(code).toBe(0);
    const data = JSON.parse(out) as { hanging: { wire: { level: { tension: number; apart: number } } } };
    expect(data).toMatchObject({
      ok: true,
      lengths: 'mm',
      weights: 'kg',
      hanging: { weight: { kg: { greatest: 2 } } },
    });
    expect(data.hanging.wire.level.apart).toBe(100);
    expect(data.hanging.wire.level.tension).toBeGreaterThan(0.5);
  });

  it('takes wire, hooks and rings from a shelf', async () => {
    await writeFile(join(folder, 'shelf.csv'), 'kind,name,load,seat\nwire,Thin,3 lb,\nwire,Stout,40 lb,\nhook,Brass hook,30 lb,12 mm\n');
    const { code, out, err } = await hang({ hanging: { weight: '10 lb' } }, ['--shelf', 'shelf.csv']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Wire: Stout +40\.0 lb/);
    expect(out).toMatch(/Hook: Brass hook +30\.0 lb/);
    expect(out).not.toMatch(/not known/);
    await writeFile(join(folder, 'wrong.csv'), 'kind,name,load\nwire,Thin,3\n');
    const wrong = await hang({}, ['--shelf', 'wrong.csv']);
    expect([wrong.code, wrong.out]).toEqual([2, '']);
    expect(wrong.err).toMatch(/wrong\.csv line 2/);
    expect((await hang({}, ['--shelf', 'nowhere.csv'])).err).toContain('is not there');
  }); // prettier-ignore

  it('refuses what can’t hang, with 1', async () => {
    const { code, out, err } = await hang({ hanging: { hanger: 'rings and wire', hooksApart: '30 in' } });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('[hooks-too-far-apart]');
  });
});

describe('check', () => {
  const check = (job: object) => runHere(['check', '-'], { input: jobText({ ...fern, ...job }) });

  it('says of hanging what is wrong, where the job says anything of it', async () => {
    const { code, out } = await check({ hanging: { hanger: 'rings and wire', hooksApart: '30 in' } });
    expect(code).toBe(0);
    expect(out).toContain('warning  hanging.hooksApart [hooks-too-far-apart]');
    expect((await check({ wall: { width: '10 in' } })).out).toContain('[frame-off-wall]');
    expect((await check({})).out).not.toContain('weight-not-known');
  });
});
