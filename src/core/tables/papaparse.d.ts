/** As much of papaparse as is used here; the types published for it ask for Node's, which the core must not know. */
declare module 'papaparse' {
  interface ParseError {
    readonly code: string;
    readonly message: string;
    readonly row?: number;
  }
  interface ParseStep<Row> {
    readonly data: Row;
    readonly errors: readonly ParseError[];
    /** `cursor`: where the next row begins, in characters. */
    readonly meta: { readonly cursor: number; readonly delimiter: string; readonly linebreak: string };
  }
  interface ParseConfig<Row> {
    readonly header?: boolean;
    readonly newline?: '\r' | '\n' | '\r\n';
    readonly delimitersToGuess?: readonly string[];
    readonly skipEmptyLines?: boolean | 'greedy';
    readonly step?: (row: ParseStep<Row>) => void;
  }
  const Papa: {
    /** With `step` the data are handed over row by row, and what is returned holds none. */
    parse<Row = string[]>(text: string, config?: ParseConfig<Row>): { data: Row[]; errors: ParseError[] };
  };
  export default Papa;
}
