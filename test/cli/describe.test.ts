/** `describe` and `check`: the lengths they give against arithmetic done here, and text that fits the terminal. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { jobText, runCli, runHere } from './run-cli';

const IN = 25.4;

/** Common practice: a sheet of 11 x 17 in, covered by 1/4 in, in a frame of 16 x 20 in; here with a second layer. */
const chart = jobText({
  title: 'Sea chart',
  pictures: [{ title: 'Harbour', size: '11 x 17 in', overlap: 'covers 1/4 in' }],
  frame: { size: '16 x 20 in' },
  mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }] },
});

interface Answer {
  readonly ok: boolean;
  readonly lengths: string;
  readonly job: object;
  readonly layout: { borders: { cut: Record<string, number>; seen: Record<string, number> }; layers: object[] };
  readonly plan: {
    layers: {
      windows: { opening: Record<string, number>; cuts: { front: Line[]; back: Line[] } }[];
      order: { back: { guideSetting: number }[] };
    }[];
  };
}
interface Line {
  readonly side: string;
  readonly start: { x: number; y: number };
  readonly end: { x: number; y: number };
  readonly guideSetting: number;
}

async function describeJson(text: string): Promise<Answer> {
  const { code, out, err } = await runHere(['describe', '--json', '-'], { input: text });
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Answer;
}

describe('describe --json', () => {
  it('gives every length of layout and plan as they were worked out, none rounded', async () => {
    const opened = parseJobText(chart);
    if (!opened.ok) throw new Error('not read');
    const { job } = opened.value;
    const layout = layOut(job);
    if (!layout.ok) throw new Error('not laid out');
    const { problems: _, ...rest } = layout.value;
    const plan = planCuts(job, layout.value);
    expect(await describeJson(chart)).toEqual(JSON.parse(JSON.stringify({ ok: true, lengths: 'mm', job, layout: rest, plan, problems: layout.problems }))); // prettier-ignore
  });

  it('has the borders of the worked case, as cut and as seen', async () => {
    const { layout } = await describeJson(chart);
    // 16 - 10 1/2 and 20 - 16 1/2, halved.
    expect(layout.borders.cut).toEqual({
      left: expect.closeTo(2.75 * IN, 9),
      right: expect.closeTo(2.75 * IN, 9),
      top: expect.closeTo(1.75 * IN, 9),
      bottom: expect.closeTo(1.75 * IN, 9),
    });
    // Less lip 1/4 and plus half of the allowance of 1/8.
    expect(layout.borders.seen['left']).toBeCloseTo((2.75 - 0.25 + 0.0625) * IN, 9);
  });

  it('has the cuts of both layers, mirrored in the back view', async () => {
    const { plan } = await describeJson(chart);
    const [top, bottom] = plan.layers.map(({ windows }) => windows[0]!);
    expect(bottom!.opening).toEqual({ left: expect.closeTo(2.75 * IN, 9), right: expect.closeTo(13.25 * IN, 9), bottom: expect.closeTo(1.75 * IN, 9), top: expect.closeTo(18.25 * IN, 9) }); // prettier-ignore
    expect(top!.opening['left']).toBeCloseTo(2.5 * IN, 9);
    const { front, back } = bottom!.cuts;
    const left = {
      front: front.find(({ side }) => side === 'left')!,
      back: back.find(({ side }) => side === 'right')!,
    };
    // From the back, x' = 16 in - x, along the opening; from the front along the face edge, a bevel run of 1/16 further out.
    expect(left.back.start.x).toBeCloseTo((16 - 2.75) * IN, 9);
    expect(left.front.start.x).toBeCloseTo((2.75 - 0.0625) * IN, 9);
    expect(Math.abs(left.back.start.y - left.back.end.y)).toBeCloseTo(16.5 * IN, 9);
    expect(left.back.guideSetting).toBeCloseTo(2.75 * IN, 9);
    const settings = plan.layers[0]!.order.back.map(({ guideSetting }) => guideSetting / IN);
    expect(settings).toEqual([2.5, 2.5, 1.5, 1.5].map((inches) => expect.closeTo(inches, 9) as number));
  });

  it('keeps thirds to the last digit', async () => {
    // Common practice: a window of 7 x 4 in in a mat of 10 x 8 in, equal steps: 1 1/2, 1.833, 2.167.
    const steps = jobText({ pictures: [], windows: { kind: 'window', size: '7 x 4 in' }, frame: { size: '10 x 8 in' }, borders: { rule: 'equal-steps' } }); // prettier-ignore
    const { cut } = (await describeJson(steps)).layout.borders;
    expect(cut['top']! / IN).toBeCloseTo(11 / 6, 13);
    expect(cut['bottom']! / IN).toBeCloseTo(13 / 6, 13);
  });

  it('lays out and plans 300 windows', async () => {
    const items = Array.from({ length: 300 }, (_, index) => String(index + 1));
    const many = jobText({
      pictures: items.map((id) => ({ title: `Linocut ${id}`, size: '60 x 80 mm' })),
      units: 'mm',
      windows: { kind: 'grid', columns: 20, gap: '30 mm', items },
      borders: { rule: 'equal', all: '80 mm' },
    });
    const { plan, layout } = await describeJson(many);
    expect(plan.layers[0]!.windows).toHaveLength(300);
    // Windows of 60 - 2 x 3 mm, with gaps of 30 mm between twenty: the last one starts at 80 + 19 x 84.
    expect(plan.layers[0]!.windows[19]!.opening['left']).toBeCloseTo(80 + 19 * 84, 9);
    expect(layout.borders.cut['right']).toBeCloseTo(80, 9);
    const { code, out } = await runHere(['describe', '-'], { input: many });
    expect(code).toBe(0);
    expect(out).toContain('(300 windows)');
  });
});

describe('describe', () => {
  const fern = readFileSync('resources/samples/2-fern-cyanotype.json', 'utf8');

  it('tells each size with how it was reached, and borders that add up to the blank', async () => {
    const { code, out, err } = await runHere(['describe', '-'], { input: fern });
    expect([code, err]).toEqual([0, '']);
    // 16 - (7 1/2 + 2 x 3/8), halved; 20 - (10 + 3/8 + 1/2) less 3/4, halved.
    expect(out).toContain('3 7/8 in + 8 1/4 in + 3 7/8 in = 16 in');
    expect(out).toContain('4 3/16 in + 10 7/8 in + 4 15/16 in = 20 in');
    expect(out).toMatch(/Rabbet +16 1\/8 x 20 1\/8 in +width: 16 in \+ allowance 1\/8 in/);
    expect(out).toMatch(/Strip shown +3\/16 in +on every side: reveal 1\/4 in − bevel 1\/16 in/);
    expect(out).toMatch(/Window +8 1\/4 x 10 7\/8 in +width: image 7 1\/2 in \+ 3\/8 in shown \+ 3\/8 in shown/);
    expect(out).toMatch(/In layer 1 +8 3\/4 x 11 3\/8 in/);
    expect(out).toMatch(/1 +4 11\/16 in +A bottom +set the guide/);
  });

  it('adds up even where every part is rounded', async () => {
    // 11/6 + 4 + 13/6 in shown to 1/16 in: 1 13/16, and the remainder below.
    const steps = jobText({ pictures: [], windows: { kind: 'window', size: '7 x 4 in' }, frame: { size: '10 x 8 in' }, borders: { rule: 'equal-steps' } }); // prettier-ignore
    const { out } = await runHere(['describe', '-'], { input: steps });
    expect(out).toContain('1 13/16 in + 4 in + 2 3/16 in = 8 in');
    expect(out).toMatch(/As cut +1 1\/2 in +≈ 1 13\/16 in +1 1\/2 in +≈ 2 3\/16 in/);
  });

  it('names left and right as they are from the side that is cut', async () => {
    const aside = jobText({ units: 'mm', frame: { size: '500 x 500 mm' }, free: [{ size: '200 x 100 mm', at: { left: '40 mm', bottom: '60 mm' } }] }); // prettier-ignore
    const back = await runHere(['describe', '-'], { input: aside });
    const front = await runHere(['describe', '--view', 'front', '-'], { input: aside });
    // 40 mm from the left of the front; from the back the opening's left is 500 - 240 from the edge, its right 40.
    expect(back.out).toMatch(/260 mm +A left/);
    expect(back.out).toMatch(/40 mm +A right/);
    // From the front a standard bevel is cut along the face edge, 1.5 mm further out.
    expect(front.out).toMatch(/38\.5 mm +A left/);
  });

  it.each([80, 120])('fits a terminal of %i columns, with nothing trailing', async (width) => {
    for (const name of ['1-sea-chart', '2-fern-cyanotype', '3-nine-linocuts']) {
      const { out } = await runCli(['describe', `resources/samples/${name}.json`], { env: { COLUMNS: String(width) } });
      expect(out.split('\n').filter((line) => line.length > width || line.endsWith(' '))).toEqual([]);
      expect(Math.max(...out.split('\n').map((line) => line.length))).toBeGreaterThan(width - 12);
    }
  });
});

describe('check', () => {
  it('tells severity, path, code, message, value, limit and remedy', async () => {
    const small = jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '9 x 9 in' } });
    const { code, out, err } = await runHere(['check', '-'], { input: small });
    expect([code, err]).toEqual([1, '']);
    // The window is 10 - 2 x 1/8 = 9 3/4 in high.
    expect(out).toMatch(/^error +frame\.size \[windows-do-not-fit\]\n/);
    expect(out).toContain('value 9 in, limit 9 3/4 in');
    expect(out).toMatch(/remedy: .*9 3\/4 in/);
    expect(out).toContain('The job can’t be cut: 1 error.\n');
    const json = JSON.parse((await runHere(['check', '--json', '-'], { input: small })).out) as unknown;
    expect(json).toMatchObject({
      ok: false,
      problems: [{ code: 'windows-do-not-fit', severity: 'error', at: 'frame.size', value: '9 in', limit: '9 3/4 in' }],
    });
  });

  it('counts what it found', async () => {
    const { out } = await runHere(['check', '-'], { input: jobText({ pictures: [{ size: '8 x 10 in' }] }) });
    expect(out).toMatch(/note +frame \[size-is-custom\]/);
    expect(out).toMatch(/The job can be cut: \d+ notes?\.\n$/);
  });

  it('takes an emoji for a title, and says how long one may be', async () => {
    const titled = (title: string) =>
      jobText({ title, pictures: [{ size: '8 x 10 in' }], frame: { size: '11 x 14 in' } });
    expect(await runHere(['check', '-'], { input: titled('🌿🦔') })).toMatchObject({ code: 0 });
    expect((await runHere(['describe', '-'], { input: titled('🌿🦔') })).out).toMatch(/^🌿🦔\n/);
    const { code, out } = await runHere(['check', '-'], { input: titled('x'.repeat(3000)) });
    expect(code).toBe(1);
    expect(out).toContain('200 characters');
  });

  it('lets no title steer the terminal', async () => {
    const steering = jobText({ title: '\u001b[2J\u009b31mred', pictures: [{ size: 'A4' }], frame: { size: 'A3' } });
    const { code, out } = await runCli(['describe', '-'], { input: steering });
    expect(code).toBe(0);
    // eslint-disable-next-line no-control-regex
    expect(out).not.toMatch(/[\u001b\u009b]/);
  });
});

describe('a spread in words', () => {
  const job = (bars: string) =>
    jobText({
      pictures: [{ size: '24 x 10 in' }],
      windows: { kind: 'spread', picture: 1, count: 3, bars },
      frame: { size: '20 x 30 in', hung: 'landscape', rabbetDepth: '1/2 in' },
    });
  it.each(['hide', 'split'])('tells only where the picture ends what is covered, when bars %s', async (bars) => {
    const { out } = await runHere(['describe', '-'], { input: job(bars) });
    const told = [...out.matchAll(/On the image\s+(.*)/g)].map(([, words]) => words);
    expect(told).toEqual([
      'covers left 1/8 in, top 1/8 in, bottom 1/8 in',
      'covers top 1/8 in, bottom 1/8 in',
      'covers top 1/8 in, right 1/8 in, bottom 1/8 in',
    ]);
  });
  it('has the frame turned as it hangs, the depth of its rabbet, and where the gaps come from', async () => {
    const { out } = await runHere(['describe', '-'], { input: job('hide') });
    expect(out).toMatch(/Frame size \(blank\)\s+30 x 20 in\s+as given, turned to hang landscape/);
    expect(out).toMatch(/Rabbet depth\s+1\/2 in/);
    expect(out).toMatch(/1 in\s+1 in\s+7\/8 in\s+across\s+A–B, B–C\s+as given/);
  });
});

describe('check', () => {
  it('looks for the pictures’ files as export does', async () => {
    const input = jobText({ pictures: [{ title: 'Fern', size: '8 x 10 in', file: '/nowhere/fern.png' }] });
    const { code, out } = await runHere(['check', '-'], { input });
    expect(code).toBe(0);
    expect(out).toMatch(/^warning .*\n/);
    expect(out).toMatch(/pictures\[0\]\.file \[picture-file-unreadable\]/);
    expect(out.replace(/\s+/g, ' ')).toContain('“/nowhere/fern.png” is not there');
  });
});

describe('how much of a picture stays in sight', () => {
  const shown = async (window: object) => {
    const pictures = [{ id: 'fern', size: '8 x 10 in', overlap: 'covers 1/4 in' }];
    const input = jobText({
      pictures,
      frame: { size: '14 x 16 in' },
      windows: { kind: 'window', picture: 'fern', ...window },
    });
    return /; (\S+ %) of it stays in sight/.exec(
      (await runHere(['describe', '-'], { input })).out.replace(/\s+/g, ' '),
    )?.[1];
  };

  it('is a share of areas: of a rectangle, of an oval, of a drawn triangle', async () => {
    expect(await shown({})).toBe(`${((100 * 7.5 * 9.5) / 80).toFixed(1)} %`);
    expect(await shown({ shape: 'oval' })).toBe(`${((25 * Math.PI * 7.5 * 9.5) / 80).toFixed(1)} %`);
    const triangle = { kind: 'outline', path: 'M0 10H10L5 0Z' };
    expect(await shown({ shape: triangle })).toBe(`${((50 * 7.5 * 9.5) / 80).toFixed(1)} %`);
  });

  it('is not told of a shape that reaches past the image', async () => {
    expect(await shown({ shape: 'oval', size: '9 x 9 in' })).toBeUndefined();
  });
});
