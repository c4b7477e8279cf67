/** What CSS says in a drawing that would change where its shapes lie: such words are told of, not passed over. */

/** Properties of CSS that place, shape or cut off what is drawn (SVG 2, 7 and 9; CSS Transforms 1; CSS Masking 1). */
const PLACING = new Set([
  'transform', 'transform-origin', 'transform-box', 'translate', 'rotate', 'scale', 'zoom', 'offset-path', 'display',
  'visibility', 'clip-path', 'mask', 'd', 'x', 'y', 'cx', 'cy', 'r', 'rx', 'ry', 'width', 'height',
]); // prettier-ignore

/** The declarations of a `style` attribute, the last of each property. */
export function readStyle(text: string): ReadonlyMap<string, string> {
  const parts = withoutComments(text).split(';');
  return new Map(
    parts.flatMap((part) => {
      const colon = part.indexOf(':');
      const value = part.slice(colon + 1).replace(/!\s*important\s*$/, '');
      return colon < 0 ? [] : [[part.slice(0, colon).trim().toLowerCase(), value.trim()] as const];
    }),
  );
}

/** A property of a style sheet that would place something; undefined of a sheet that only paints. */
export function placingIn(sheet: string): string | undefined {
  const named = withoutComments(sheet).matchAll(/(?:^|[{};\s])([a-z-]+)\s*:/gi);
  for (const [, name = ''] of named) if (PLACING.has(name.toLowerCase())) return name;
  return /@import\b/i.test(sheet) ? '@import' : undefined;
}

/** A property of a `style` attribute that isn't followed; those that hide or cut off are judged where they stand. */
export function placingOf(style: ReadonlyMap<string, string>): string | undefined {
  const judged = ['display', 'visibility', 'clip-path', 'mask'];
  return [...style.keys()].find((name) => PLACING.has(name) && !judged.includes(name) && style.get(name) !== 'none');
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?(?:\*\/|$)/g, ' ');
}
