/** `describe` of windows that are no rectangles: measures, area and length against closed forms worked out here. */
import { describe, expect, it } from 'vitest';
import { jobText, runHere } from './run-cli';

const IN = { frame: { size: '16 x 20 in' } };
const MM = { units: 'mm', frame: { size: '400 x 500 mm' } };

async function told(window: object, job: object = IN): Promise<string> {
  const input = jobText({ ...job, windows: { kind: 'window', ...window } });
  const { code, out } = await runHere(['describe', '-'], { input });
  expect(code).toBe(0);
  return out.replace(/[ \n]+/g, ' ');
}

const inches = (value: number) => `${value.toFixed(3)} in`;

describe('the shape of a window in words', () => {
  it('tells an oval by its axes, and a circle as one', async () => {
    const oval = await told({ size: '5 x 7 in', shape: 'oval' });
    expect(oval).toContain(`Shape oval axes 5 in and 7 in Opening ${((Math.PI * 35) / 4).toFixed(2)} sq in`);
    const circle = await told({ size: '5 x 5 in', shape: 'oval' });
    expect(circle).toContain(`Shape circle 5 in across`);
    expect(circle).toContain(`${((Math.PI * 25) / 4).toFixed(2)} sq in edge ${inches(5 * Math.PI)} long`);
  });

  it('tells the radius that follows from the rise of an arch, round or pointed', async () => {
    const round = await told({ size: '5 x 7 in', shape: 'arch' });
    expect(round).toContain('Shape arch rise 2 1/2 in, radius 2 1/2 in');
    // 5 x 4 1/2 with half a circle on it.
    expect(round).toContain(`${(22.5 + (Math.PI * 6.25) / 2).toFixed(2)} sq in edge ${inches(14 + 2.5 * Math.PI)}`);
    const flat = await told({ size: '6 x 7 in', shape: { kind: 'arch', rise: '1 in' } });
    // A chord of 6 and a rise of 1: r = (3² + 1²) / 2.
    expect(flat).toContain('rise 1 in, radius 5 in');
    const pointed = await told({ size: '6 x 9 in', shape: { kind: 'pointed', rise: '4 in' } });
    // From the spring through the point, with its centre at the height of the spring: (3² + 4²) / 6.
    expect(pointed).toContain('Shape pointed arch rise 4 in, radius 4.167 in');
  });

  it('tells sides, cuts, steps and radii', async () => {
    const six = await told({ size: '6 x 7 in', shape: { kind: 'polygon', sides: 6 } });
    expect(six).toContain(`6 sides of 3 in Opening ${(13.5 * Math.sqrt(3)).toFixed(2)} sq in edge 18 in long`);
    const cut = await told({ size: '5 x 7 in', shape: 'cut-corners' });
    expect(cut).toContain(`1 in off each side Opening 33.00 sq in edge ${inches(16 + 4 * Math.SQRT2)} long`);
    const steps = await told({ size: '5 x 7 in', shape: { kind: 'stepped', count: 2 } });
    // Three squares of half an inch from each corner; steps leave the way round as it is.
    expect(steps).toContain('2 steps of 1/2 in Opening 32.00 sq in edge 24 in long');
    const hollow = await told({ size: '5 x 7 in', shape: 'scooped' });
    expect(hollow).toContain(`radius 1 in Opening ${(35 - Math.PI).toFixed(2)} sq in`);
  });

  it('says how a shape is turned, and tells its measures as they were before', async () => {
    const lying = await told({ size: '7 x 5 in', shape: 'arch', turned: 90 });
    expect(lying).toContain('rise 2 1/2 in, radius 2 1/2 in, turned 90°');
    const drawn = await told({ size: '4 x 6 in', mirrored: true, shape: { kind: 'outline', path: 'M0 0H1V1Z' } });
    expect(drawn).toContain('Shape own outline mirrored Opening 12.00 sq in');
  });

  it('tells what is joined to a window', async () => {
    const joined = await told({
      size: '5 x 7 in',
      joined: [{ size: '2 x 2 in', shape: 'oval', at: { top: '-1 in' } }],
    });
    // A circle half of which lies outside.
    expect(joined).toContain('Shape rectangle Joined to it circle 2 in across');
    expect(joined).toContain(`Opening ${(35 + Math.PI / 2).toFixed(2)} sq in edge ${inches(22 + Math.PI)} long`);
  });

  it('says where measures hold that were given at the face, and areas in the unit of the job', async () => {
    const face = { ...MM, mat: { measuredAt: 'face', layers: [{ thickness: '2 mm' }] } };
    const round = await told({ size: '100 x 100 mm', shape: 'oval' }, face);
    expect(round).toContain('100 mm across, at the face');
    // The bevel of 45° takes 2 mm of the radius.
    expect(round).toContain(`Opening ${(Math.PI * 48 ** 2).toFixed(0)} mm² edge ${(Math.PI * 96).toFixed(2)} mm long`);
    const cm = await told({ size: '10 x 10 cm', shape: 'oval' }, { ...MM, units: 'cm' });
    expect(cm).toContain(`${(Math.PI * 25).toFixed(2)} cm²`);
  });

  it('says nothing of rectangles', async () => {
    expect(await told({ size: '5 x 7 in' })).not.toMatch(/Shape|Opening \d/);
  });
});
