/** The one door to the outputs: names, problems, progress, and a cancel that is heard between pages. */
import { describe, expect, it } from 'vitest';
import type { Progress } from '../../src/bridge';
import { bad, good } from '../../src/core/problem';
import { exportFiles } from '../../src/outputs';
import { fonts } from './contexts';
import { CHART, defaults, FERN, jobText, LINOCUTS } from './jobs';

describe('exportFiles', () => {
  it('makes the chosen outputs, in the order of the table, under the base name', async () => {
    const made = await exportFiles(jobText(FERN), 'fern', defaults, { fonts });
    if (!made.ok) throw new Error('not made');
    expect(made.value.map(({ kind, name }) => [kind, name])).toEqual([
      ['template', 'fern-template.pdf'],
      ['cut-list', 'fern-cut-list.csv'],
      ['proof', 'fern-proof.svg'],
    ]);
    const starts = made.value.map(({ bytes }) => new TextDecoder('latin1').decode(bytes.slice(0, 5)));
    expect(starts).toEqual(['%PDF-', 'job,v', '<?xml']);
    const one = await exportFiles(jobText(FERN), 'fern', { ...defaults, only: ['proof'] }, { fonts });
    expect(one.ok && one.value.map(({ kind }) => kind)).toEqual(['proof']);
  });

  it('gives the same bytes for the same text and options', async () => {
    const [first, second] = await Promise.all(
      [0, 1].map(() => exportFiles(jobText(CHART), 'chart', defaults, { fonts })),
    );
    if (!first?.ok || !second?.ok) throw new Error('not made');
    expect(first.value.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(
      second.value.map(({ bytes }) => Buffer.from(bytes).toString('base64')),
    );
  });

  it('gives problems, not files, for a text that is no job or a job that cannot be cut', async () => {
    const torn = await exportFiles(jobText(FERN).slice(0, 40), 'fern', defaults, { fonts });
    expect(torn.ok).toBe(false);
    const tooLarge = { ...FERN, frame: { size: '6 x 6 in' } };
    const impossible = await exportFiles(jobText(tooLarge), 'fern', defaults, { fonts });
    expect(impossible.ok).toBe(false);
    expect(impossible.problems.some(({ severity }) => severity === 'error')).toBe(true);
  });

  it('shows the pictures that can be read in the proof, and warns of the others', async () => {
    const job = {
      ...FERN,
      pictures: [
        { size: '5 x 5 in', file: 'a.png' },
        { size: '5 x 5 in', file: 'gone.png' },
      ],
      frame: {},
    };
    const readPicture = (file: string) =>
      Promise.resolve(
        file === 'a.png'
          ? good('data:image/png;base64,AAAA')
          : bad<string>([{ code: 'not-found', severity: 'error', at: '', message: 'There is no "gone.png".' }]),
      );
    const made = await exportFiles(jobText(job), 'two', { ...defaults, only: ['proof'] }, { fonts, readPicture });
    if (!made.ok) throw new Error('not made');
    expect(new TextDecoder().decode(made.value[0]?.bytes).match(/<image /g)).toHaveLength(1);
    expect(made.problems.filter(({ code }) => code === 'picture-file-unreadable')).toMatchObject([
      { severity: 'warning', at: 'pictures[1].file', message: expect.stringContaining('gone.png') as string },
    ]);
  });

  it('tells its progress from 0 to 1, never backwards, in words', async () => {
    const heard: Progress[] = [];
    await exportFiles(jobText(LINOCUTS), 'linocuts', defaults, {
      fonts,
      onProgress: (progress) => heard.push(progress),
    });
    expect(heard.length).toBeGreaterThan(10);
    expect(heard.at(-1)?.done).toBe(1);
    heard.reduce((before, { done, step }) => {
      expect(done).toBeGreaterThanOrEqual(before);
      expect(step).not.toBe('');
      return done;
    }, 0);
  });

  it('stops between pages when it is cancelled, with other work let in on the way', async () => {
    const cancel = new AbortController();
    let pages = 0;
    const large = { title: 'Large', frame: { size: '40 x 60 in' }, pictures: [{ size: '30 x 50 in' }] };
    setTimeout(() => cancel.abort(), 0);
    const work = exportFiles(jobText(large), 'large', defaults, {
      fonts,
      signal: cancel.signal,
      onProgress: () => pages++,
    });
    await expect(work).rejects.toMatchObject({ name: 'AbortError' });
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThan(15);
  });
});
