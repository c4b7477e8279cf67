/** A part of a description. */

/** A heading with its lines; without lines it is left out. */
export interface Section {
  readonly heading: string;
  readonly lines: readonly string[];
}
