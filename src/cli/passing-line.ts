/** A line on a terminal that is written over in place, and gone before anything that is to stay is said. */

export interface PassingLine {
  /** Takes the place of the line before it. */
  show(words: string): void;
  /** Leaves nothing of it. */
  clear(): void;
}

/** Back to the line's start, and all that stands there erased (ECMA-48: CR, and EL). */
const ERASE = '\r\u001b[K';

/** @param columns how wide the terminal is now; a line that wrapped could not be taken back. */
export function passingLine(write: (text: string) => void, columns: () => number): PassingLine {
  let isShown = false;
  return {
    show(words) {
      write(ERASE + [...words].slice(0, columns() - 1).join(''));
      isShown = true;
    },
    clear() {
      if (isShown) write(ERASE);
      isShown = false;
    },
  };
}
