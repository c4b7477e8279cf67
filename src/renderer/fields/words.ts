/** Words as they stand on the screen. */

/** With a capital letter at the start. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
