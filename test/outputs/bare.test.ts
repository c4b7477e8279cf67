/** Outputs of a job without a mat: the proof, and in words that there is nothing to cut. */
import { describe, expect, it } from 'vitest';
import type { OutputKind } from '../../src/bridge';
import { exportFiles, outputNames } from '../../src/outputs';
import { fonts } from './contexts';
import { BARE, defaults, jobText } from './jobs';

const CUTS: readonly OutputKind[] = ['template', 'cut-card', 'cut-list', 'dxf', 'svg', 'hpgl', 'gcode', 'csv', 'json'];

const made = (only: readonly OutputKind[]) => exportFiles(jobText(BARE), 'sea', { ...defaults, only }, { fonts });

describe('a job without a mat', () => {
  it('gives the proof alone, and says what is left out and why', async () => {
    const all = await made([...CUTS, 'proof']);
    if (!all.ok) throw new Error('not made');
    expect(all.value.map(({ name }) => name)).toEqual(['sea-proof.svg']);
    expect(outputNames(jobText(BARE), 'sea', [...CUTS, 'proof'])).toEqual(['sea-proof.svg']);
    expect(all.problems).toEqual([expect.objectContaining({ code: 'nothing-to-cut', severity: 'warning' })]);
    expect(all.problems[0]?.message).toBe(
      'The picture goes into its frame without a mat, so there is nothing to cut. Left out, since nothing would stand in it: the template, the cut cards, the cutting list and the files for machines.',
    );
    const proof = await made(['proof']);
    expect([proof.ok, proof.problems]).toEqual([true, []]);
  });

  it.each(CUTS)('writes no empty file for %s', async (kind) => {
    const none = await made([kind]);
    expect(none).toMatchObject({ ok: false, problems: [{ code: 'nothing-to-cut', severity: 'error' }] });
    expect(outputNames(jobText(BARE), 'sea', [kind])).toEqual([]);
  });

  it('describes the proof as what it shows', async () => {
    const proof = await made(['proof']);
    const text = proof.ok ? new TextDecoder().decode(proof.value[0]?.bytes) : '';
    expect(text).toContain('the picture in its frame without a mat, 16 in × 20 in.');
    expect(text).not.toContain('class="layer"');
  });
});
