/** Jobs without a mat on the command line: what each verb says where there is nothing to cut. */
import { readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const sea = resolve('resources/samples/6-painted-sea.json');
const canvas = {
  title: 'The sea',
  pictures: [{ title: 'The sea', kind: 'painting on canvas', size: '16 x 20 in' }],
  frame: { readyMade: '16x20 in' },
  mat: { layers: [] },
};
const input = jobText(canvas);

describe('a job without a mat', () => {
  it('is checked', async () => {
    expect(await runHere(['check', sea])).toMatchObject({
      code: 0,
      out: 'The picture can be framed, with nothing to cut: nothing to report.\n',
    });
    const through = jobText({ ...canvas, pictures: [{ size: '15 x 20 in' }] });
    const ran = await runHere(['check', '-'], { input: through });
    expect([ran.code, ran.out]).toEqual([1, expect.stringContaining('[picture-falls-through]')]);
  });

  it('is described by what the frame covers, and no cuts', async () => {
    const { out, code } = await runHere(['describe', '-'], { input, env: { COLUMNS: '100' } });
    expect(code).toBe(0);
    expect(out).toContain('There is nothing to');
    expect(out).toMatch(/Seen +15 5\/8 x 19 5\/8 in +width: picture 16 in − 2 × 3\/16 in under the lip/);
    expect(out).toMatch(/Under the lip +3\/16 in on every side; 95\.8 % of the image stays in sight/);
    expect(out).toMatch(/Play +1\/8 in across and 1\/8 in up and down/);
    expect(out).not.toMatch(/Borders|Windows|Layers|cutting order|Hidden border|covers/);
  });

  it('in a float frame is described by its gap', async () => {
    const { out } = await runHere(['describe', sea]);
    expect(out).toMatch(/Inside +20 1\/2 x 16 1\/2 in +width: 20 in \+ 2 × gap 1\/4 in/);
    expect(out).toMatch(/Outside +21 1\/2 x 17 1\/2 in/);
    expect(out).toMatch(/Seen +20 x 16 in +the whole face of the picture/);
    expect(out).toMatch(/Gap +1\/4 in on every side, with the picture in the middle/);
    expect(out).not.toMatch(/Sight|Rabbet|lip/);
  });

  it('is described for machines with no layer and one window', async () => {
    const { out } = await runHere(['describe', '--json', sea]);
    const told = JSON.parse(out) as { layout: { windows: object[]; frame: object }; plan: { layers: object[] } };
    expect(told.plan.layers).toEqual([]);
    expect(told.layout.windows).toMatchObject([{ layers: [], window: { left: 0, bottom: 0, right: 508, top: 406.4 } }]);
    expect(told.layout.frame).toMatchObject({ isFloat: true, lip: 0 });
  });

  it('is exported as a proof, and refused where only cuts are asked for', async () => {
    const folder = await makeTempFolder();
    const ran = await runHere(['export', '-', '--out', folder, '--only', 'proof,template,machine'], { input });
    expect(ran).toMatchObject({ code: 0, err: expect.stringContaining('[nothing-to-cut]') as string });
    expect(ran.out).not.toContain('travel');
    expect(await readdir(folder)).toEqual(['The sea-proof.svg']);
    const out = join(folder, 'cuts');
    const none = await runHere(['export', '-', '--out', out, '--only', 'template,cut-card,gcode'], { input });
    expect([none.code, none.out]).toEqual([1, '']);
    expect(none.err).toContain('the template, the cut cards and the files for machines');
    expect(await readdir(folder)).toEqual(['The sea-proof.svg']);
  });

  it('is turned with its frame', async () => {
    const { out, code } = await runHere(['turn', sea]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      frame: { readyMade: '16x20 in', build: 'float' },
      windows: { kind: 'window', picture: 'sea', turned: 90 },
    });
    expect(await runHere(['check', '-'], { input: out })).toMatchObject({ code: 0 });
    const over = await runHere(['turn', sea, '--mirror', 'top-bottom', '--item', 'windows']);
    expect(JSON.parse(over.out)).not.toHaveProperty('windows.turned');
  });
});
