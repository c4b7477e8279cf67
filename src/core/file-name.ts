/** Names of files from titles that people wrote. */

/** A name that every system takes for a file: without marks that mean something to one of them, and not too long. */
export function fileName(words: string): string {
  const plain = words
    // eslint-disable-next-line no-control-regex
    .replace(/[\u0000-\u001f\u007f/\\:*?"<>|]+/g, '-')
    .replace(/^[. -]+/, '');
  let name = '';
  for (const letter of plain) {
    if (bytesOf(name + letter) > 100) break;
    name += letter;
  }
  return name.replace(/[. ]+$/, '') || 'mat';
}

/** In UTF-8. */
function bytesOf(text: string): number {
  return [...text].reduce((sum, letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return sum + (code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4);
  }, 0);
}
