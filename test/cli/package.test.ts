/** `package` in the words of its help: the stack as a table, what follows from it, its data, and what it refuses. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const job = jobText({
  pictures: [{ title: 'Bracken', size: '8 x 10 in' }],
  frame: { size: '11 x 14 in', rabbetDepth: '1/2 in' },
  package: { glazing: { thickness: '1/8 in' } },
});
const canvas = jobText({
  units: 'mm',
  pictures: [{ kind: 'painting on canvas', size: '400 x 500', thickness: 19 }],
  frame: { size: '400 x 500', rabbetDepth: 10 },
  windows: { kind: 'window', picture: 1, size: '300 x 400' },
});
const run = (input: string, ...words: string[]) => runHere(['package', '-', ...words], { input, folder });

describe('package', () => {
  it('tells the stack as a table, with whose tolerance it is', async () => {
    const { code, out } = await run(job);
    expect(code).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toBe('The stack, from the back of the lip');
    expect(lines.find((line) => line.startsWith('  Layer 1'))).toMatch(/1\/16 in +0\.059 to 0\.067 in \[2\] +1\/8 in$/);
    expect(out).toContain('[2] as usual: board may vary by 4 points: S. Saitzyk, Art Hardware, 1987');
    expect(lines.find((line) => line.startsWith('  In all'))).toMatch(/0\.580 in/);
  });

  it('tells fit, remedies and check list, and the problems apart from the answer', async () => {
    const { out, err } = await run(job);
    expect(out).toContain('It does not go into the rabbet: it is 0.080 in too deep');
    expect(out).toContain('Any one of these is enough:');
    expect(out).toMatch(/- {2}take a frame whose rabbet is 5\/8 in deep or more/);
    expect(out).toContain('Check list: frame with an open back');
    expect(out).toMatch(/\[ \] {3}glazing +glass 1\/8 in thick, 11 x 14 in/);
    expect(err).toContain('frame.rabbetDepth [package-too-deep]');
    expect(out + err).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('takes clips and screws from a shelf, and the distance from the wall', async () => {
    await writeFile(
      join(folder, 'shelf.csv'),
      'kind,name,step,length\nclip,Long clip,12 mm,\nclip,Short clip,6 mm,\nscrew,Fine screw,,6.5 mm\nscrew,Stout screw,,16 mm\n',
    );
    const { code, out } = await run(canvas, '--shelf', 'shelf.csv', '--wall-gap', '15 mm');
    expect(code).toBe(0);
    // The mat of 1.5 mm lies before it.
    expect(out).toContain('stands out 10.5 mm');
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Offset clips of 12 mm step (Long clip), the next above; pack 1.5 mm between each and the stretcher or back that it holds, not under its foot on the frame',
    );
    expect(out.replace(/\s+/g, ' ')).toContain('6.5 mm long, never longer; on the shelf Fine screw, 6.5 mm');
    expect(out.replace(/\s+/g, ' ')).toContain('With the frame 15 mm off the wall it does not touch that.');
  });

  it('compares the rabbet of the frame in hand', async () => {
    const { out } = await run(job, '--rabbet', '11 x 14 in');
    expect(out.replace(/\s+/g, ' ')).toContain('A rabbet of 11 x 14 in takes 10 7/8 x 13 7/8 in');
  });

  it('gives its data in mm', async () => {
    const { code, out } = await run(job, '--json');
    expect(code).toBe(0);
    const data = JSON.parse(out) as { stack: { items: { kind: string }[] }; problems: { code: string }[] };
    expect(data).toMatchObject({ ok: true, lengths: 'mm', fit: { verdict: 'does not fit', room: { depth: 12.7 } } });
    expect(data.stack.items.map(({ kind }) => kind)).toEqual([
      'glazing', 'layer', 'picture', 'hinges', 'mount board', 'backing', 'room for fixing',
    ]); // prettier-ignore
    expect(data.problems.filter(({ code: one }) => one === 'package-too-deep')).toHaveLength(1);
  });

  it.each([
    [['--wall-gap', 'wide'], '[length-unreadable]'],
    [['--wall-gap', '2'], 'write "2 in" or "2 mm"'],
    [['--wall-gap', '-1 mm'], '[length-out-of-range]'],
    [['--rabbet', '16'], '[size-unreadable]'],
    [['--rabbet', '16 x 20'], 'write "16 x 20 in" or "16 x 20 mm"'],
    [['--shelf', 'nowhere.csv'], '[not-found]'],
  ])('%j is refused', async (words, hint) => {
    const { code, out, err } = await run(job, ...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(hint);
  });

  it('refuses a shelf with something wrong, and says in which line', async () => {
    await writeFile(join(folder, 'wrong.csv'), 'kind,name,step\nclip,Flat,\n');
    const { code, err } = await run(canvas, '--shelf', 'wrong.csv');
    expect(code).toBe(2);
    expect(err).toContain('wrong.csv line 2');
  });
});
