/** Lines that were taken out of a table's text, so that they can stand there again with all that the user wrote in them. */

/** As they stood under this heading. */
export interface RemovedLines {
  readonly heading: string;
  readonly lines: readonly string[];
}

export const NO_LINES: RemovedLines = { heading: '', lines: [] };
