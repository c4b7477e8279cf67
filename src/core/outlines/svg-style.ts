/** What of an element's style decides whether and where it is drawn: attributes, and its own `style` before them. */
import type { SvgElement } from './svg-tree';

/** The value of a property, in lower case; undefined where the element does not say it. */
export function styleOf(element: SvgElement, property: string): string | undefined {
  const own = declarationsOf(element).findLast(({ name }) => name === property)?.value;
  return own ?? element.attributes.get(property)?.trim().toLowerCase();
}

interface Declaration {
  readonly name: string;
  readonly value: string;
}

function declarationsOf({ attributes }: SvgElement): Declaration[] {
  return (attributes.get('style') ?? '').split(';').map((declaration) => {
    const [name = '', value = ''] = declaration.toLowerCase().split(':');
    return { name: name.trim(), value: value.replace('!important', '').trim() };
  });
}

/** Properties that move, shape or hide what is drawn. */
const SHAPING =
  'transform|translate|rotate|scale|d|x|y|width|height|cx|cy|r|rx|ry|display|visibility|clip-path|mask|offset-path|content';
const IN_SHEETS = new RegExp(`[{;\\s](${SHAPING})\\s*:`, 'i');
const IN_STYLES = new RegExp(`^(${SHAPING})$`);
/** Those that are followed in an element's own style. */
const FOLLOWED = new Set(['display', 'visibility', 'clip-path', 'mask']);

/** The first property of a style sheet that shapes the drawing; or `@import`, which may hold any. */
export function shapingIn(sheet: string): string | undefined {
  const plain = sheet.replace(/\/\*[^]*?\*\//g, ' ');
  return /@import/i.test(plain) ? '@import' : IN_SHEETS.exec(plain)?.[1];
}

/** The first property in an element's own style that shapes the drawing and is not followed. */
export function shapingOwn(element: SvgElement): string | undefined {
  const sides = element.name === 'svg' ? ['width', 'height'] : [];
  return declarationsOf(element).find(
    ({ name, value }) => IN_STYLES.test(name) && !FOLLOWED.has(name) && !sides.includes(name) && value !== 'none',
  )?.name;
}
