/** Reads the reference of the job file: its sections, tables and blocks of JSON. */

export interface MarkdownTable {
  /** The nearest heading above, without its marks. */
  readonly section: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Every table, in order. */
export function tablesIn(markdown: string): MarkdownTable[] {
  const tables: { section: string; heads: string[]; rows: string[][] }[] = [];
  let section = '';
  let inside = false;
  for (const line of outsideBlocks(markdown).split('\n')) {
    const heading = /^#+ (.*)$/.exec(line);
    if (heading) section = heading[1]!;
    if (!line.startsWith('|')) inside = false;
    else if (!inside) {
      tables.push({ section, heads: cellsOf(line), rows: [] });
      inside = true;
    } else if (!/^[|\s:-]+$/.test(line)) tables.at(-1)!.rows.push(cellsOf(line));
  }
  return tables;
}

/** What the blocks of JSON hold, parsed. */
export function jsonIn(markdown: string): unknown[] {
  return [...markdown.matchAll(/^```json\n([\s\S]*?)^```$/gm)].map(([, text]) => JSON.parse(text!) as unknown);
}

/** Texts between backticks, those of blocks left out. */
export function codesIn(text: string): string[] {
  return [...outsideBlocks(text).matchAll(/`([^`\n]+)`/g)].map(([, text]) => text!);
}

function outsideBlocks(markdown: string): string {
  return markdown.replace(/^```[\s\S]*?^```$/gm, '');
}

function cellsOf(line: string): string[] {
  return line
    .replace(/^\|/, '')
    .replace(/\|\s*$/, '')
    .split('|')
    .map((cell) => cell.trim());
}
