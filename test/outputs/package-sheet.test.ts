/** The package sheet read back by an independent reader: the section to its scale, and all that is told beside it. */
import { describe, expect, it } from 'vitest';
import { readShelf } from '../../src/core/shelf/read-shelf';
import { exportFiles, makeHangingSheet, makePackageSheet, makeWallTemplate } from '../../src/outputs';
import { contextOf, fonts } from './contexts';
import { BARE, defaults, FERN, FLOAT, jobText } from './jobs';
import { readPdf, type ReadPage, type Stroke } from './read-pdf';
import { fractions } from '../../src/outputs/paper/type';

async function sheetOf(job: object, options: Parameters<typeof contextOf>[1] = {}) {
  const made = await makePackageSheet(contextOf(job, options));
  if (!made.ok) throw new Error('not made');
  const { pages } = readPdf(made.value);
  const text = pages.map(wordsOf).join(' ');
  return { pages, text };
}

/** As a reader would read it: fractions with the plain slash. */
function wordsOf({ words }: ReadPage): string {
  return words.map(({ text }) => text).join(' ').replace(/\u2044/g, '/').replace(/\s+/g, ' '); // prettier-ignore
}

const lengthOf = ({ from, to }: Stroke) => Math.hypot(to.x - from.x, to.y - from.y);

function isStroke(strokes: readonly Stroke[], long: number, way: 'lying' | 'standing'): boolean {
  return strokes.some(
    (stroke) =>
      Math.abs(lengthOf(stroke) - long) < 0.01 &&
      Math.abs(way === 'lying' ? stroke.from.y - stroke.to.y : stroke.from.x - stroke.to.x) < 0.001,
  );
}

/** A moulding 20 wide with a lip of 5, 30 deep in all with a rabbet of 15; board 1.5, glass 2, backing 5 mm. */
const MEASURED = {
  ...FERN,
  units: 'mm',
  frame: {
    size: '400 x 500 mm',
    mouldingWidth: '20 mm',
    mouldingDepth: '30 mm',
    lip: '5 mm',
    rabbetDepth: '15 mm',
    allowance: '2 mm',
  },
  package: { glazing: { thickness: '2 mm' }, backing: { thickness: '5 mm' }, fixing: { room: '3 mm' } },
};

describe('the section', () => {
  it('shows moulding, rabbet, glass and backing to the scale that it says', async () => {
    const { pages, text } = await sheetOf(MEASURED, { units: 'mm' });
    const scale = /section through the lower rail, (\d) : (\d), front to the left/.exec(text);
    const times = Number(scale?.[1]) / Number(scale?.[2]);
    expect(times).toBeGreaterThanOrEqual(1);
    const { strokes } = pages[0]!;
    // Round the moulding: 30 deep below, 15 up its back to the rabbet, 15 in along that, 5 up the lip, 15 along the front of it, 20 up.
    for (const long of [30, 15]) expect(isStroke(strokes, long * times, 'lying')).toBe(true);
    for (const long of [20, 15, 5]) expect(isStroke(strokes, long * times, 'standing')).toBe(true);
    for (const thick of [2, 5]) expect(isStroke(strokes, thick * times, 'lying')).toBe(true);
  });

  it('draws a float frame with its ledge behind the canvas and the gap beside it', async () => {
    const job = {
      ...FLOAT,
      frame: {
        ...FLOAT.frame,
        mouldingWidth: '10 mm',
        mouldingDepth: '36 mm',
        float: { gap: '6 mm', insideDepth: '30 mm', setBack: '4 mm' },
      },
    };
    const { pages, text } = await sheetOf(job);
    const scale = /lower rail, (\d) : (\d),/.exec(text);
    const times = Number(scale?.[1]) / Number(scale?.[2]);
    const { strokes } = pages[0]!;
    // The inside up to the ledge, all of the moulding, the rail's width, the canvas of 3/4 in.
    for (const long of [30, 36, 19.05]) expect(isStroke(strokes, long * times, 'lying')).toBe(true);
    expect(isStroke(strokes, 10 * times, 'standing')).toBe(true);
    // The canvas begins the gap above the rail: its lower side lies 6 mm above the rail's upper.
    const lying = (long: number) => strokes.filter((stroke) => Math.abs(lengthOf(stroke) - long * times) < 0.01 && Math.abs(stroke.from.y - stroke.to.y) < 0.001).map(({ from }) => from.y); // prettier-ignore
    const canvas = Math.min(...lying(19.05));
    const rail = Math.min(...lying(36)) + 10 * times;
    expect(canvas - rail).toBeCloseTo(6 * times, 2);
    // 30 - 4 - 19.05: packing brings the face to its place.
    expect(isStroke(strokes, 6.95 * times, 'lying')).toBe(true);
  });
});

describe('what the sheet tells', () => {
  it('tells stack, fit, pieces, weight, check list, care and cautions', async () => {
    const { text } = await sheetOf(MEASURED, { units: 'mm' });
    for (const heading of ['The stack', 'Fit', 'Air before the picture', 'Pieces, from the front', 'Moulding', 'Weight', 'Check list: frame with an open back', 'Care', 'Sources', 'Take care']) {
      expect(text).toContain(heading);
    } // prettier-ignore
    expect(text).toContain('it certifies nothing');
    expect(text).not.toContain('Cost: 0');
  });

  it('sets fractions of an inch true, and leaves the numbers of leaflets alone', () => {
    expect(fractions('5 1/16 in, CCI Notes 11/5, 10/8, 10/10 and 13/17, 29 CFR 1926.251, 2008/0732')).toBe(
      '5 1\u204416 in, CCI Notes 11/5, 10/8, 10/10 and 13/17, 29 CFR 1926.251, 2008/0732',
    );
  });

  it('has prices, and the hanging sheet loads, only of a shelf that was given', async () => {
    const shelf = readShelf(
      'kind,name,thickness,material,price,per,load\nglazing,Priced glass,2.5 mm,glass,3.50,sq ft,\nwire,Rated wire,,,,,7 kg\n',
    );
    if (!shelf.ok) throw new Error(shelf.problems[0]?.message);
    const hangs = { ...FERN, hanging: { hanger: 'rings and wire' } };
    const text = async (make: typeof makePackageSheet, given: object) => {
      const made = await make({ ...contextOf(hangs), ...given });
      return made.ok ? readPdf(made.value).pages.map(wordsOf).join(' ') : '';
    };
    expect(await text(makePackageSheet, {})).not.toContain('Priced glass');
    expect(await text(makePackageSheet, { shelf: shelf.value })).toContain('“Priced glass” at 3.50 per sq ft');
    expect(await text(makeHangingSheet, {})).not.toContain('Rated wire');
    expect(await text(makeHangingSheet, { shelf: shelf.value })).toContain('Rated wire');
  });

  it('is made where nothing is cut, and comes from the export with the rest', async () => {
    const made = await exportFiles(jobText(BARE), 'sea', { ...defaults, only: ['package-sheet'] }, { fonts });
    expect(made.ok && made.value.map(({ name }) => name)).toEqual(['sea-package-sheet.pdf']);
    const text = made.ok ? readPdf(made.value[0]!.bytes).pages.map(wordsOf).join(' ') : '';
    expect(text).toContain('Picture: The sea');
    expect(text).toContain('1 x Dust cover');
    // In a float frame the back stays open, so that there is not even paper to cut.
    expect((await sheetOf(FLOAT)).text).not.toContain('Pieces, from the front');
  });
});

describe('a wall too large to piece together', () => {
  it('warns of many pages', async () => {
    const wall = { frames: [{ size: '300 x 300 mm', count: 60 }], arrangement: 'row' };
    const made = await makeWallTemplate(contextOf({ ...MEASURED, wall }, { units: 'mm' }));
    expect(made.problems).toContainEqual(expect.objectContaining({ code: 'many-pages', severity: 'warning' }));
    const small = await makeWallTemplate(contextOf(MEASURED, { units: 'mm' }));
    expect(small.problems.map(({ code }) => code)).not.toContain('many-pages');
  });
});
