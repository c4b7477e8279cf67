/** The proof read by a real browser: strict XML, true size in millimetres, every opening where the layout has it. */
import { describe, expect, it } from 'vitest';
import { makeProof } from '../../src/outputs/proof/proof';
import type { OutputContext } from '../../src/outputs/context';
import { ASIDE, BARE, CHART, FERN, FLOAT, LINOCUTS, planContext } from './jobs';

const fonts = { regular: new Uint8Array(), bold: new Uint8Array() };

function contextOf(job: object): OutputContext {
  const context = planContext(job, {}, fonts);
  if (!context) throw new Error('the job of this test has errors');
  return context;
}

async function proofOf(context: OutputContext): Promise<SVGSVGElement> {
  const made = await makeProof(context);
  if (!made.ok) throw new Error('not made');
  const parsed = new DOMParser().parseFromString(new TextDecoder().decode(made.value), 'image/svg+xml');
  expect(parsed.querySelector('parsererror')).toBeNull();
  return document.importNode(parsed.documentElement, true) as unknown as SVGSVGElement;
}

const PIXEL = 'data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs=';

const number = (element: Element, name: string) => Number(element.getAttribute(name));

describe('the proof', () => {
  for (const [name, job] of Object.entries({ FERN, CHART, LINOCUTS, ASIDE })) {
    it(`${name}: true size, and every opening of every layer within 0.00001 mm`, async () => {
      const context = contextOf(job);
      const svg = await proofOf(context);
      const { outside, blank } = context.layout.frame;
      expect(svg.getAttribute('width')).toBe(`${Number(outside.width.toFixed(6))}mm`);
      expect(svg.getAttribute('viewBox')?.split(' ').map(Number)[3]).toBeCloseTo(outside.height, 5);
      const left = (outside.width - blank.width) / 2;
      const above = (outside.height - blank.height) / 2;
      for (const layer of context.layout.layers) {
        const drawn = [...svg.querySelectorAll(`[data-layer="${layer.number}"] .opening`)];
        expect(drawn).toHaveLength(context.layout.windows.length);
        context.layout.windows.forEach((window, index) => {
          const opening = window.layers[layer.number - 1]?.opening;
          const rect = drawn[index];
          if (!opening || !rect) throw new Error('an opening is missing');
          expect(number(rect, 'x')).toBeCloseTo(left + opening.left, 5);
          expect(number(rect, 'y')).toBeCloseTo(above + blank.height - opening.top, 5);
          expect(number(rect, 'width')).toBeCloseTo(opening.right - opening.left, 5);
          expect(number(rect, 'height')).toBeCloseTo(opening.top - opening.bottom, 5);
        });
      }
    });
  }

  it('without a mat shows the picture as far as the frame leaves it free', async () => {
    const of = async (job: object) => {
      const svg = await proofOf(contextOf(job));
      const box = (selector: string) => {
        const rect = svg.querySelector(selector);
        return rect && ['x', 'y', 'width', 'height'].map((name) => number(rect, name) / 25.4);
      };
      expect(svg.querySelectorAll('.layer, .opening, .bevel')).toHaveLength(0);
      expect(svg.querySelectorAll('.member')).toHaveLength(4);
      const inner = svg.querySelector('.member[data-side="left"]')?.getAttribute('d') ?? '';
      const across = [...inner.matchAll(/[ML]\s*(-?[\d.]+)/g)].map(([, x]) => Number(x) / 25.4);
      return { sheet: box('.sheet'), well: box('.well'), width: svg.getAttribute('width'), face: Math.max(...across) };
    };
    const near = (numbers: number[]) => numbers.map((each) => expect.closeTo(each, 5) as number);
    // Outside 17 1/8 x 21 1/8 in: the canvas lies 9/16 in inside that, and the face of 3/4 in covers 3/16 in of it.
    const plain = await of(BARE);
    expect(plain.sheet).toEqual(near([9 / 16, 9 / 16, 16, 20]));
    expect([plain.well, plain.face]).toEqual([null, expect.closeTo(0.75, 5)]);
    // Outside 18 x 22 in: a face of 3/4 in, then the gap of 1/4 in all round.
    const float = await of(FLOAT);
    expect(float.sheet).toEqual(near([1, 1, 16, 20]));
    expect(float.well).toEqual(near([0.75, 0.75, 16.5, 20.5]));
    expect(float.face).toBeCloseTo(0.75, 5);
  });

  it('has bevels lit from the upper left: shade on the upper and left, light on the lower and right', async () => {
    const svg = await proofOf(contextOf(FERN));
    const light = (side: string) => {
      const fill = svg.querySelector(`.bevel[data-side="${side}"]`)?.getAttribute('fill') ?? '';
      return (
        Number.parseInt(fill.slice(1, 3), 16) +
        Number.parseInt(fill.slice(3, 5), 16) +
        Number.parseInt(fill.slice(5, 7), 16)
      );
    };
    expect(light('top')).toBeLessThan(light('bottom'));
    expect(light('left')).toBeLessThan(light('right'));
    expect(svg.querySelectorAll('.frame .member')).toHaveLength(4);
  });

  it('names every part of a picture spread over several windows, above all cards', async () => {
    const windows = { kind: 'spread', picture: 1, count: 3, gap: '1 in' };
    const svg = await proofOf(
      contextOf({ pictures: [{ title: 'The bay', size: '24 x 10 in' }], frame: { size: '30 x 16 in' }, windows }),
    );
    const texts = [...svg.querySelectorAll('text')];
    expect(texts).toHaveLength(3);
    for (const card of svg.querySelectorAll('.image, .sheet')) {
      for (const text of texts) {
        expect(card.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
      }
    }
  });

  it('keeps titles within their windows: long ones cut with …, whole where one points at them', async () => {
    const title = 'A view of the harbour wall from the old lighthouse, printed twice over in two blues';
    const context = contextOf({ pictures: [{ title, size: '3 x 4 in' }], frame: { size: '8 x 10 in' } });
    const svg = await proofOf(context);
    document.body.append(svg);
    const text = svg.querySelector('text');
    const [window] = context.layout.windows;
    if (!text || !window) throw new Error('no title');
    expect(text.firstChild?.textContent).toMatch(/^A view of .*…$/);
    expect(text.querySelector('title')?.textContent).toBe(title);
    expect(number(text, 'font-size')).toBeGreaterThanOrEqual(2.5);
    expect(text.getBBox().width).toBeLessThan(window.window.right - window.window.left);
    svg.remove();
  });

  it('shows a picture whose file was read, stretched to its image and cut off at its window', async () => {
    const context = contextOf(FERN);
    const svg = await proofOf({ ...context, pictures: new Map([[0, PIXEL]]) });
    const image = svg.querySelector('image');
    const placed = context.layout.windows[0]?.picture?.image;
    if (!image || !placed) throw new Error('no picture');
    expect(image.getAttribute('href')).toBe(PIXEL);
    expect(number(image, 'width')).toBeCloseTo(placed.right - placed.left, 5);
    expect(number(image, 'height')).toBeCloseTo(placed.top - placed.bottom, 5);
    const clip = svg.querySelector('clipPath rect');
    expect(clip && number(clip, 'width')).toBeCloseTo(
      (context.layout.windows[0]?.window.right ?? 0) - (context.layout.windows[0]?.window.left ?? 0),
      5,
    );
    expect(svg.querySelectorAll('text')).toHaveLength(0);
  });

  it('shows a picture in every window that it is spread over, above all cards', async () => {
    const windows = { kind: 'spread', picture: 1, count: 3, along: 'column', gap: '1 in', turned: 90 };
    const job = { pictures: [{ title: 'The bay', size: '24 x 10 in' }], frame: { size: '16 x 30 in' }, windows };
    const svg = await proofOf({ ...contextOf(job), pictures: new Map([[0, PIXEL]]) });
    const images = [...svg.querySelectorAll('image')];
    expect(images).toHaveLength(3);
    for (const image of images) {
      expect(image.getAttribute('transform')).toMatch(/^rotate\(-90 /);
      for (const card of svg.querySelectorAll('.image, .sheet')) {
        expect(card.compareDocumentPosition(image) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
      }
    }
  });

  it('shows no core at a reverse bevel', async () => {
    const svg = await proofOf(contextOf({ ...FERN, mat: { layers: [{ bevel: { direction: 'reverse' } }] } }));
    expect(svg.querySelectorAll('.bevel')).toHaveLength(0);
  });

  it('keeps a text a text: nothing in it becomes markup, nothing runs', async () => {
    const title = '</title><script>alert(1)</script> & "ferns" <';
    const context = contextOf({ ...FERN, pictures: [{ title, size: '8 x 10 in' }], title });
    const svg = await proofOf({ ...context, job: { ...context.job, title: `${title}\u0007\ud800` } });
    expect(svg.querySelector('script')).toBeNull();
    expect(svg.querySelector('title')?.textContent).toBe(`${title}□□`);
    expect(svg.querySelector('text')?.textContent).toBe(title);
  });

  it('lies on the screen at its true size', async () => {
    const context = contextOf(CHART);
    const svg = await proofOf(context);
    document.body.append(svg);
    // CSS fixes 1in = 96px (CSS Values and Units 3, 5.2).
    expect(svg.getBoundingClientRect().width).toBeCloseTo((context.layout.frame.outside.width / 25.4) * 96, 1);
    svg.remove();
  });
});
