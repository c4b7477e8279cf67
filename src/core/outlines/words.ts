/** How messages about outlines write numbers. */

/** Hundredths at most. */
export function mmText(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
