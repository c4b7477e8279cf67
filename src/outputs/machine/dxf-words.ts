/** The groups that DXF is made of: a code on one line, its value on the next. */

export type Group = readonly [code: number, value: string | number];

/** Numbers every entry; DXF wants each to be named once, in hexadecimal. */
export class Handles {
  private last = 0;

  next(): string {
    this.last += 1;
    return this.last.toString(16).toUpperCase();
  }
}

export function groupsText(groups: readonly Group[]): string {
  return groups.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
}

/** A text in ASCII, other characters as `\U+XXXX`, in one line of at most 255 signs. */
export function dxfText(text: string): string {
  let written = '';
  for (const letter of text.replace(/\s+/g, ' ')) {
    const plain = /[\x20-\x7e]/.test(letter) && letter !== '\\';
    const next = plain ? letter : [...codeUnits(letter)].map(unicode).join('');
    if (written.length + next.length > 250) break;
    written += next;
  }
  return written;
}

function codeUnits(letter: string): number[] {
  return Array.from({ length: letter.length }, (_, index) => letter.charCodeAt(index));
}

function unicode(unit: number): string {
  return `\\U+${unit.toString(16).toUpperCase().padStart(4, '0')}`;
}
