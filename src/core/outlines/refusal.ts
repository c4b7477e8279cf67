/** Why a drawing gives no outline, as a problem. */
import type { Problem } from '../problem';

/** An error of the whole drawing. `found` is a sentence; the remedy follows it in the message. */
export function refusal(code: string, found: string, remedy: string): Problem {
  const advice = `${remedy.charAt(0).toUpperCase()}${remedy.slice(1)}.`;
  return { code, severity: 'error', at: '', message: `${found} ${advice}`, remedy };
}
