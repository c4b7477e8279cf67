/** The three grades of care that a build can reach, what each means, and how they stand to one another. */

/**
 * Our own meaning of three plain words, built from the guidance named in `sources.ts`; no body's scheme.
 *
 * - `decorative`: nothing is claimed. Something in the build harms a picture in time (acid board, tape, glue, touch), is
 *   lacking (a back, glazing over paper), or is not known. Fit for what can be had again.
 * - `protective`: nothing known to harm lies against the picture, it can be taken out unharmed, it touches no glazing,
 *   and it is shut in front and behind. Fit for what is to hang for years.
 * - `conservation`: whatever counts is as published guidance asks, item by item.
 *
 * What is unknown is never taken for good: it counts as the lowest grade, just as what is known to be bad.
 */
export const GRADES = ['decorative', 'protective', 'conservation'] as const;
export type Grade = (typeof GRADES)[number];

export function reaches(grade: Grade, wanted: Grade): boolean {
  return GRADES.indexOf(grade) >= GRADES.indexOf(wanted);
}

/** The lowest of several; the highest there is for none. */
export function leastOf(grades: readonly Grade[]): Grade {
  return grades.reduce<Grade>((least, grade) => (reaches(grade, least) ? least : grade), 'conservation');
}

/** The grade above; undefined above the highest. */
export function nextAbove(grade: Grade): Grade | undefined {
  return GRADES[GRADES.indexOf(grade) + 1];
}
