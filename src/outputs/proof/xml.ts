/** SVG text: elements from names and attributes, everything a user wrote escaped, numbers free of locale. */

export type Attributes = Readonly<Record<string, string | number>>;

/** One element; children are finished markup. */
export function element(name: string, attributes: Attributes, children: readonly string[] = []): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(valueText(value))}"`);
  const open = `<${name}${written.join('')}`;
  return children.length === 0 ? `${open}/>` : `${open}>${children.join('')}</${name}>`;
}

/** An element that holds a text. */
export function textElement(name: string, attributes: Attributes, text: string): string {
  return element(name, attributes, [escaped(text)]);
}

/** A text safe in XML 1.0; signs it does not allow become a neutral mark. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '□')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** A millionth of a millimetre is the last decimal written. */
export function numberText(value: number): string {
  return String(Number(value.toFixed(6)));
}

function valueText(value: string | number): string {
  return typeof value === 'number' ? numberText(value) : value;
}
