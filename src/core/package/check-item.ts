/** One line of a check list. */

/** `done`: it is there, or none is wanted. `needed`: still to be had. `look`: to be looked at, with what to look for. */
export type CheckState = 'done' | 'needed' | 'look';

export interface CheckItem {
  readonly state: CheckState;
  /** `glazing`, `corners`, `groove 1`. */
  readonly what: string;
  readonly words: string;
  /** The numbers in it, mm. */
  readonly measures?: Readonly<Record<string, number>>;
}
