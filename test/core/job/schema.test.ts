/** The published JSON Schema: the very one that the definition makes, and it takes and refuses what the program does. */
import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod';
import { describe, expect, it } from 'vitest';
import { jobJsonSchema } from '../../../src/core/job/json-schema';
import { readJob } from '../../../src/core/job/read';

const text = readFileSync('resources/job.schema.json', 'utf8');
const published = JSON.parse(text) as Parameters<typeof z.fromJSONSchema>[0];

const samples = readdirSync('resources/samples')
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(`resources/samples/${name}`, 'utf8')) as Record<string, unknown>);

describe('resources/job.schema.json', () => {
  it('is what `npm run -s matwright -- schema` prints', () => {
    expect(text).toBe(`${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
  });

  it('says which draft of JSON Schema it follows, and has a description of every length, size and gap', () => {
    expect(published).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
    for (const name of ['Length', 'Size', 'Overlap', 'Gap', 'Colour']) {
      expect(published).toHaveProperty(`$defs.${name}.description`, expect.stringMatching(/\w{3}/));
    }
  });

  const schema = z.fromJSONSchema(published);
  const minimal = { format: 'matwright-job', version: 1, pictures: [{ size: 'A4' }] };

  it('takes every sample', () => {
    expect(samples.length).toBeGreaterThanOrEqual(3);
    for (const sample of samples) expect(schema.safeParse(sample).error).toBeUndefined();
  });

  it.each([
    ['another format', { ...minimal, format: 'another' }],
    ['no version', { format: 'matwright-job' }],
    ['a newer version', { ...minimal, version: 2 }],
    ['an unknown key', { ...minimal, colour: 'red' }],
    ['a picture without a size', { ...minimal, pictures: [{ title: 'Fern' }] }],
    ['a colour by name', { ...minimal, frame: { size: 'A3', colour: 'red' } }],
    ['five layers', { ...minimal, mat: { layers: [{}, {}, {}, {}, {}] } }],
    ['a group of another kind', { ...minimal, windows: { kind: 'circle', items: ['1'] } }],
    ['an empty row', { ...minimal, windows: { kind: 'row', items: [] } }],
    ['a fault deep in a tree', { ...minimal, windows: { kind: 'row', items: [{ kind: 'column', items: [{}] }] } }],
    ['a spread over one window', { ...minimal, windows: { kind: 'spread', picture: 1, count: 1 } }],
  ])('refuses %s, as the program does', (_, job) => {
    expect(schema.safeParse(minimal).success).toBe(true);
    expect(schema.safeParse(job).success).toBe(false);
    expect(readJob(job).ok).toBe(false);
  });
});
