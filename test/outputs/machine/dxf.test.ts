/** DXF read by ezdxf: nothing for its audit to find, units and layers named, each form with the entity that is meant for it. */
import { describe, expect, it } from 'vitest';
import { fileOf, GRID, jobOf, machineFiles, SHAPES } from './fixtures';
import { noReader, readDxf, type ReadDxf } from './read-dxf';

if (noReader !== undefined) console.warn(noReader);

async function textOf(job: object, options: Parameters<typeof machineFiles>[2] = {}): Promise<string> {
  return fileOf(await machineFiles(job, ['dxf'], options), 'mat-cuts.dxf');
}

function kindsOf({ entities }: ReadDxf, layer: string): string[] {
  return [...new Set(entities.filter((entity) => entity.layer === layer).map(({ kind }) => kind))].sort();
}

describe.skipIf(noReader !== undefined)('DXF', () => {
  it('of every job passes the audit, whatever is asked for', async () => {
    const jobs = [...Object.values(SHAPES).map((shape) => jobOf(shape)), GRID];
    const texts = await Promise.all(
      jobs.flatMap((job) => [
        textOf(job),
        textOf(job, { units: 'mm', view: 'front', machine: { curves: 'lines', corner: 'upper-right' } }),
      ]),
    );
    for (const drawing of readDxf(texts)) {
      expect(drawing.errors).toEqual([]);
      expect(drawing.release).toBe('AC1015');
      expect(new Set(drawing.entities.map(({ handle }) => handle)).size).toBe(drawing.entities.length);
    }
  });

  it('says its unit, how far it reaches, and what each layer holds', async () => {
    const job = jobOf('arch');
    const [inches, metric] = readDxf([
      await textOf(job),
      await textOf(job, { units: 'mm', machine: { corner: 'lower-right' } }),
    ]);
    expect([inches?.units, inches?.metric]).toEqual([1, 0]);
    expect([metric?.units, metric?.metric]).toEqual([4, 1]);
    expect(inches?.extent).toEqual([
      [0, 0],
      [11, 14],
    ]);
    expect(metric?.extent).toEqual([
      [-279.4, 0],
      [0, 355.6],
    ]);
    expect(inches?.layers).toEqual(
      expect.arrayContaining(['LAYER1_CUT', 'LAYER1_BLANK', 'LAYER2_CUT', 'LAYER2_BLANK']),
    );
    const blank = metric?.entities.find(({ layer }) => layer === 'LAYER2_BLANK');
    expect(blank?.pieces).toHaveLength(4);
    expect(blank?.pieces[0]).toMatchObject({ from: { x: -279.4, y: 0 }, to: { x: 0, y: 0 } });
  });

  it('uses the entity that is meant for each form', async () => {
    const [oval, arch, rounded, lines] = readDxf([
      await textOf(jobOf('oval')),
      await textOf(jobOf('arch')),
      await textOf(jobOf('rounded')),
      await textOf(jobOf('oval'), { machine: { curves: 'lines' } }),
    ]);
    expect(kindsOf(oval!, 'LAYER2_CUT')).toEqual(['ELLIPSE']);
    // The layer above follows the oval at a distance, and is none itself.
    expect(kindsOf(oval!, 'LAYER1_CUT')).toEqual(['LWPOLYLINE']);
    expect(kindsOf(arch!, 'LAYER1_CUT')).toEqual(['ARC', 'LINE']);
    expect(kindsOf(rounded!, 'LAYER1_CUT')).toEqual(['ARC', 'LINE']);
    expect(kindsOf(lines!, 'LAYER2_CUT')).toEqual(['LWPOLYLINE']);
  });
});

describe('the text of a DXF', () => {
  it('is ASCII, with other signs in the way of DXF', async () => {
    const text = await textOf({ ...jobOf('oval'), title: 'Fougère 漢 😀 \\P {x}' });
    expect(text).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(text.split('\r\n')[1]).toContain('Foug\\U+00E8re \\U+6F22 \\U+D83D\\U+DE00 \\U+005CP {x}');
  });

  it('has no exponent and no comma in its numbers', async () => {
    const lines = (await textOf(jobOf('oval'))).trimEnd().split('\r\n');
    const numbers = lines.filter((_, index) => index % 2 === 1 && /^(1|2|3|4|5)\d$/.test(lines[index - 1]!.trim()));
    expect(numbers.length).toBeGreaterThan(100);
    for (const number of numbers) expect(number).toMatch(/^-?\d+(\.\d+)?$/);
  });
});
