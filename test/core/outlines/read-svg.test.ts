/** SVG files read: sizes that follow by hand from what is written, and everything that is refused. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { areaOf } from '../../../src/core/geometry/outline';
import { outlineInSize } from '../../../src/core/outlines/path-outline';
import { sizeLike } from '../../../src/core/outlines/proportions';
import { readSvg } from '../../../src/core/outlines/read-svg';
import { DRAWINGS, WITHOUT_SIZE } from './drawings';

const file = (inside: string, attributes = 'width="90mm" height="90mm" viewBox="0 0 90 90"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>\n${inside}\n</svg>`;
const RECT = '<rect width="50" height="40"/>';

function read(svg: string) {
  const found = readSvg(svg);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
}

describe('the size an outline is drawn in', () => {
  const cases = [...DRAWINGS, ...WITHOUT_SIZE].flatMap(({ name, svg, size }) =>
    size ? [[name, svg, size] as const] : [],
  );
  it.each(cases)('%s', (_, svg, [width, height]) => {
    const { natural } = read(svg);
    expect(natural.width).toBeCloseTo(width, 5);
    expect(natural.height).toBeCloseTo(height, 5);
  });

  it('of a polygon under transforms: its area is that of the numbers times the determinant', () => {
    const { path, natural } = read(
      file('<polygon transform="matrix(1.2 .3 -.4 .9 30 10)" points="0 0 40 0 40 25 10 30"/>'),
    );
    // By the shoelace rule (40 x 25 + 40 x 30 - 10 x 25) / 2.
    const area = ((40 * 25 + 40 * 30 - 10 * 25) / 2) * (1.2 * 0.9 + 0.3 * 0.4);
    expect(areaOf(outlineInSize(path, natural)!)).toBeCloseTo(area, 4);
  });

  it('of a circle on the slant: pi r² times the determinant', () => {
    const { path, natural } = read(file('<circle transform="matrix(1.2 .3 -.4 .9 30 10)" r="20"/>'));
    expect(areaOf(outlineInSize(path, natural)!)).toBeCloseTo(Math.PI * 400 * (1.2 * 0.9 + 0.3 * 0.4), 0);
  });

  it('stays small and the same however it is written', () => {
    const plain = read(file('<path d="M10.5 10.25h40v30h-40z"/>'));
    expect(plain.path).toBe('M10.5 10.25H50.5V40.25H10.5Z');
    expect(read(file(`<path d="${plain.path}"/>`)).path).toBe(plain.path);
  });

  it('is kept in proportion where one side is given', () => {
    const natural = { width: 40, height: 30 };
    expect(sizeLike(natural, {})).toEqual(natural);
    expect(sizeLike(natural, { width: 80 })).toEqual({ width: 80, height: 60 });
    expect(sizeLike(natural, { height: 15 })).toEqual({ width: 20, height: 15 });
    expect(sizeLike(natural, { width: 10, height: 10 })).toEqual({ width: 10, height: 10 });
  });

  it('the leaf among the samples', () => {
    expect(read(readFileSync('resources/samples/leaf.svg', 'utf8')).natural).toEqual({ width: 72, height: 112 });
  });
});

describe('what is refused', () => {
  const DEEP = '<g>'.repeat(300) + RECT + '</g>'.repeat(300);
  it.each([
    ['nothing', '', 'outline-not-svg', /does not begin with a tag/],
    ['a web page', '<html><body><svg/></body></html>', 'outline-not-svg', /outermost element is <html>/],
    ['a broken web page', '<!DOCTYPE html><html><br></html>', 'outline-not-svg', /<html>/],
    ['a packed file', '\u001f\u008b\b', 'outline-not-svg', /does not begin with a tag/],
    ['broken off', '<svg xmlns="http://www.w3.org/2000/svg">\n<rect', 'outline-unreadable', /at line 2, column \d+/],
    ['an entity of its own', file('&fern;'), 'outline-unreadable', /undefined entity/],
    ['entities within entities', `<!DOCTYPE svg [<!ENTITY a "xxxxxxxxxx"><!ENTITY b "&a;&a;&a;&a;&a;">]>${file('<desc>&b;</desc>')}`, 'outline-unreadable', /undefined entity/],
    ['too deep', file(DEEP), 'outline-too-large', /more than 200 deep/],
    ['too many', file(RECT.repeat(20_001)), 'outline-too-large', /more than 20000 elements/],
    ['too long', file(`<!--${' '.repeat(5_000_000)}-->`), 'outline-too-large', /the most is 5000000/],
    ['nothing drawn', file('<defs><rect width="5" height="5"/></defs>'), 'outline-empty', /encloses nothing/],
    ['text', file(`${RECT}\n<text x="1">Fern</text>`), 'outline-has-text', /\(line 3\).*turn it into paths/],
    ['a picture', file(`${RECT}<image href="fern.png"/>`), 'outline-has-image', /trace it/],
    ['a script', file(`${RECT}<defs><script>1</script></defs>`), 'outline-has-script', /never run/],
    ['a handler', file(`<rect onclick="x()" width="5" height="5"/>`), 'outline-has-script', /line 2/],
    ['two outlines', file(`${RECT}<circle cx="70" cy="70" r="9"/>`), 'outline-many', /There are 2 outlines/],
    ['a path with a hole', file('<path d="M0 0H50V40H0ZM5 5H9V9H5Z"/>'), 'outline-many', /falls out with it/],
    ['an open path', file('<path d="M0 0H50V40"/>'), 'outline-open', /begins at x 0 mm, y 0 mm and ends at x 50 mm, y 40 mm, 64.031 mm away/],
    ['a polyline', file('<polyline points="0 0 50 0 50 40"/>'), 'outline-open', /join the two ends/],
    ['a line', file('<line x2="50" y2="40"/>'), 'outline-open', /join the two ends/],
    ['a figure of eight', file('<path transform="translate(10)" d="M0 0 50 40H0L50 0Z"/>'), 'outline-crosses-itself', /at x 35 mm, y 20 mm/],
    ['an svg inside', file(`<svg>${RECT}</svg>`), 'outline-not-followed', /An <svg> inside/],
    ['a choice', file(`<switch>${RECT}</switch>`), 'outline-not-followed', /<switch> \(line 2\)/],
    ['a foreign thing', file('<foreignObject/>'), 'outline-not-followed', /<foreignObject>/],
    ['something that moves', file('<animate/>'), 'outline-not-followed', /<animate>/],
    ['clipped', file('<g clip-path="url(#c)"><rect width="5" height="5"/></g>'), 'outline-not-followed', /A clip-path/],
    ['masked by its style', file('<rect style="mask:url(#c)" width="5" height="5"/>'), 'outline-not-followed', /A mask/],
    ['moved by its style', file('<rect style="transform:rotate(3deg)" width="5" height="5"/>'), 'outline-not-followed', /“transform” in a style/],
    ['moved by a sheet', file(`<style>.a { transform: none }</style>${RECT}`), 'outline-not-followed', /“transform” in a style sheet/],
    ['an import', file(`<style>@import url(a.css);</style>${RECT}`), 'outline-not-followed', /“@import”/],
    ['an origin of turning', file('<rect transform-origin="5 5" transform="rotate(3)" width="5" height="5"/>'), 'outline-not-followed', /transform-origin/],
    ['a repeat from elsewhere', file('<use href="other.svg#a"/>'), 'outline-not-followed', /not in the file/],
    ['a repeat of a symbol', file('<symbol id="a"><rect width="5" height="5"/></symbol><use href="#a"/>'), 'outline-not-followed', /<use> of a <symbol>/],
    ['a repeat of itself', file('<g id="a"><use href="#a"/></g>'), 'outline-not-followed', /<use> of a <g>/],
    ['a transform of another kind', file('<rect transform="rotate(3deg)" width="5" height="5"/>'), 'outline-unreadable', /transform “rotate\(3deg\)” \(line 2\)/],
    ['a length of a font', file('<rect width="5em" height="5"/>'), 'outline-unreadable', /width of a rect “5em”/],
    ['a share of nothing', file('<rect width="50%" height="5"/>', ''), 'outline-unreadable', /“50%”/],
    ['a width below nothing', file(RECT, 'width="-5mm" height="5mm"'), 'outline-unreadable', /width of the drawing “-5mm”/],
    ['a viewBox of three', file(RECT, 'viewBox="0 0 5"'), 'outline-unreadable', /viewBox “0 0 5”/],
    ['a path of other letters', file('<path d="M0 0 H50 K3"/>'), 'outline-unreadable', /path of a path, at “K3” \(line 2\)/],
    ['a path that breaks off', file('<path d="M0 0 H50 L10"/>'), 'outline-unreadable', /end of the path of a path, after “M0 0 H50 L10” \(line 2\)/],
    ['points that do not pair', file('<polygon points="0 0 50"/>'), 'outline-unreadable', /path of a polygon/],
  ])('%s', (_, svg, code, words) => {
    const found = readSvg(svg);
    expect(found.problems.map((problem) => problem.code)).toEqual([code]);
    expect(found.problems[0]!.message).toMatch(words);
    expect(found.ok).toBe(false);
  }); // prettier-ignore

  it('all that is wrong is told at once, one of each kind', () => {
    const found = readSvg(file('<text>a</text><text>b</text><image/><script/><foreignObject/>'));
    expect(found.problems.map(({ code }) => code).sort()).toEqual([
      'outline-has-image',
      'outline-has-script',
      'outline-has-text',
      'outline-not-followed',
    ]);
  });

  it('repeats within repeats end, however many they stand for', () => {
    const levels = Array.from(
      { length: 30 },
      (_, level) => `<g id="l${level + 1}">${`<use href="#l${level}"/>`.repeat(10)}</g>`,
    );
    const found = readSvg(file(`<defs><g id="l0">${RECT}</g>${levels.join('')}</defs><use href="#l30"/>`));
    expect(found.problems.map(({ code }) => code)).toContain('outline-not-followed');
  });
});

describe('any file', () => {
  const piece = fc.constantFrom(
    '<g>', '</g>', '<g transform="scale(2)">', RECT, '<path d="M0 0H9V9Z"/>', '<use href="#a"/>', '<circle r="5"/>', '<text>', '</text>',
    '<svg>', '</svg>', '<rect id="a" width="1e400" height="-1"/>', '<polygon points="1,2 3"/>', '<g transform="scale(0)">', '<style>', '</style>',
    '&amp;', '&lt;', '<!--', '-->', '<![CDATA[', ']]>', '<', '"', '<path d="M0 0A1e9 1 0 0 1 1e9 5Z"/>', '<g transform="matrix(1e200 0 0 1e200 0 0)">',
  ); // prettier-ignore

  it('is read or refused, and never throws', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string({ maxLength: 6 })), { maxLength: 12 }), (pieces) => {
        const found = readSvg(file(pieces.join('')));
        if (found.ok) expect(found.value.natural.width).toBeGreaterThan(0);
        else expect(found.problems.length).toBeGreaterThan(0);
        readSvg(pieces.join(''));
      }),
      { numRuns: 2000, endOnFailure: true },
    );
  });
});
