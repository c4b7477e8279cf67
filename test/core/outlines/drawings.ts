/** SVG files that draw one outline, each in a way of its own; where a size is given, it follows by hand from what is written. */

export interface DrawingCase {
  readonly name: string;
  readonly svg: string;
  /** mm. */
  readonly size?: readonly [number, number];
}

const file = (attributes: string, inside: string) =>
  `<?xml version="1.0"?>\n<!-- a comment --><svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inside}</svg>`;
const PX = 25.4 / 96;
const SKEW = Math.tan(Math.PI / 9);

export const DRAWINGS: readonly DrawingCase[] = [
  { name: 'a rect in mm', svg: file('width="100mm" height="80mm" viewBox="0 0 100 80"', '<rect x="10" y="5" width="60" height="40"/>'), size: [60, 40] },
  { name: 'a rect in pixels', svg: file('width="200" height="200"', '<rect x="10" y="5" width="96" height="48"/>'), size: [25.4, 12.7] },
  { name: 'lengths with units of their own', svg: file('width="20cm" height="20cm"', '<rect x="1in" y="2pc" width="3cm" height="36pt"/>'), size: [30, 12.7] },
  { name: 'quarter millimetres', svg: file('width="400Q" height="400Q"', '<circle cx="100Q" cy="100Q" r="40Q"/>'), size: [20, 20] },
  { name: 'percentages', svg: file('width="100mm" height="50mm" viewBox="0 0 200 100"', '<rect x="10%" y="10%" width="50%" height="40%"/>'), size: [50, 20] },
  { name: 'round corners, one radius said', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<rect x="10" y="10" width="60" height="40" rx="8"/>'), size: [60, 40] },
  { name: 'round corners that are too large', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<rect width="60" height="40" rx="50" ry="12"/>'), size: [60, 40] },
  { name: 'a circle', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<circle cx="45" cy="45" r="30"/>'), size: [60, 60] },
  { name: 'an ellipse', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<ellipse cx="45" cy="45" rx="40" ry="22"/>'), size: [80, 44] },
  { name: 'a polygon', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<polygon points="10,10 80,10 60 50,45,70 20,50"/>'), size: [70, 60] },
  { name: 'a polyline that ends where it begins', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90"', '<polyline points="10 10 80 10 45 70 10 10"/>'), size: [70, 60] },
  { name: 'a path of all letters', svg: file('width="120mm" height="120mm" viewBox="0 0 120 120"', '<path d="M10 60 L20 30 h10 v-10 H50 V10 C60 0 70 20 80 10 s20 0 20 20 q10 10 0 30 t-10 20 A 30 20 15 0 1 60 100 a10 14 0 0 1-30-10z"/>') },
  { name: 'a viewBox that does not begin at nothing', svg: file('width="60mm" height="60mm" viewBox="-30 -30 60 60"', '<circle r="20"/>'), size: [40, 40] },
  { name: 'a viewBox of other proportions, in the middle', svg: file('width="100mm" height="50mm" viewBox="0 0 10 10"', '<rect width="10" height="10"/>'), size: [50, 50] },
  { name: 'a viewBox of other proportions, filled', svg: file('width="100mm" height="50mm" viewBox="0 0 10 10" preserveAspectRatio="xMinYMax slice"', '<rect width="10" height="4"/>'), size: [100, 40] },
  { name: 'a viewBox stretched', svg: file('width="100mm" height="50mm" viewBox="0 0 10 10" preserveAspectRatio="none"', '<circle cx="5" cy="5" r="5"/>'), size: [100, 50] },
  { name: 'a translation', svg: file('width="200" height="200"', '<g transform="translate(20,30)"><rect width="96" height="96"/></g>'), size: [25.4, 25.4] },
  { name: 'groups in groups', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<g transform="translate(100 100)"><g transform="rotate(90)"><g transform="scale(2 1)"><rect x="-10" y="-5" width="20" height="10"/></g></g></g>'), size: [10, 40] },
  { name: 'a list of transforms', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<rect transform="translate(50 50) rotate(45 10 10), scale(1.5)" width="20" height="20"/>'), size: [30 * Math.SQRT2, 30 * Math.SQRT2] },
  { name: 'a matrix', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<path transform="matrix(0.8 0.6 -0.6 0.8 80 20)" d="M0 0H60A30 20 0 0 1 60 40H0C10 30 10 10 0 0Z"/>') },
  { name: 'a circle on the slant', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<circle transform="skewX(20)" cx="60" cy="60" r="30"/>'), size: [60 * Math.hypot(1, SKEW), 60] },
  { name: 'slanted upward', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<rect transform="skewY(20)" x="10" y="10" width="50" height="30"/>'), size: [50, 30 + 50 * SKEW] },
  { name: 'an ellipse turned by a third', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<g transform="rotate(30 100 100)"><ellipse cx="100" cy="100" rx="60" ry="25"/></g>') },
  { name: 'a mirror', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<path transform="translate(150) scale(-1 1)" d="M0 0h80a40 40 0 0 1-40 40a20 30 20 0 0-40-10z"/>') },
  { name: 'a repeat', svg: file('width="200mm" height="200mm" viewBox="0 0 200 200"', '<defs><g id="leaf" transform="scale(2)"><rect width="20" height="10"/></g></defs><use href="#leaf" x="30" y="40" transform="translate(5 5)"/>'), size: [40, 20] },
  { name: 'what is not drawn stands beside it', svg: file('width="90mm" height="90mm" viewBox="0 0 90 90" xmlns:tool="http://example.org/tool"', '<title>Fern</title><desc>A leaf</desc><metadata><rect width="5" height="5"/></metadata><tool:guides><rect width="5" height="5"/></tool:guides><defs><rect width="5" height="5"/><text>Fern</text></defs><clipPath id="c"><rect width="5" height="5"/></clipPath><symbol><rect width="5" height="5"/></symbol><g display="none"><text>Fern</text><rect width="5" height="5"/></g><rect style="display: none" width="5" height="5"/><g visibility="hidden"><rect width="5" height="5"/><rect visibility="visible" x="10" y="10" width="40" height="30"/></g><path d="M0 0h90v90H0z" fill="none"/><circle r="0"/><path d=""/>'), size: [40, 30] },
]; // prettier-ignore

/** Without a width or height that a browser would know too. */
export const WITHOUT_SIZE: readonly DrawingCase[] = [
  { name: 'no size at all', svg: file('', '<rect width="96" height="48"/>'), size: [25.4, 12.7] },
  { name: 'a viewBox alone: pixels', svg: file('viewBox="0 0 960 960"', '<rect width="96" height="48"/>'), size: [25.4, 12.7] },
  { name: 'a width alone', svg: file('width="50mm" viewBox="0 0 100 40"', '<rect width="100" height="40"/>'), size: [50, 20] },
  { name: 'a height alone', svg: file('height="50mm" viewBox="0 0 40 100"', '<rect width="40" height="100"/>'), size: [20, 50] },
  { name: 'a share of a page', svg: file('width="100%" height="100%" viewBox="0 0 96 96"', '<rect width="96" height="48"/>'), size: [25.4, 12.7] },
  { name: 'a size in the style', svg: file('style="width: 24px; height: 24px" viewBox="0 0 12 12"', '<rect width="12" height="6"/>'), size: [24 * PX, 12 * PX] },
  { name: 'no namespace', svg: '<svg width="10mm" height="10mm" viewBox="0 0 10 10"><rect width="8" height="6"/></svg>', size: [8, 6] },
  { name: 'a prefix', svg: '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10"><s:rect width="8" height="6"/></s:svg>', size: [8, 6] },
  { name: 'a repeat as older files write it', svg: file('xmlns:xlink="http://www.w3.org/1999/xlink" width="10mm" height="10mm" viewBox="0 0 10 10"', '<defs><rect id="a" width="8" height="6"/></defs><use xlink:href="#a"/>'), size: [8, 6] },
  { name: 'entities for namespaces, as older files have them', svg: `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "svg11.dtd" [ <!ENTITY ns_svg "http://www.w3.org/2000/svg"> <!ENTITY far '8'> ]><svg xmlns="&ns_svg;" width="10mm" height="10mm" viewBox="0 0 10 10"><rect width="&far;" height="6"/></svg>`, size: [8, 6] },
  { name: 'nothing painted', svg: file('width="10mm" height="10mm" viewBox="0 0 10 10"', '<rect fill="none" width="8" height="6"/>'), size: [8, 6] },
  { name: 'a byte order mark', svg: `\uFEFF${file('width="10mm" height="10mm" viewBox="0 0 10 10"', '<rect width="8" height="6"/>')}`, size: [8, 6] },
]; // prettier-ignore
