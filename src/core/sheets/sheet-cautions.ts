/** Cautions beside a plan of sheets: the same words on screen, terminal and paper. */
import type { PlannedBoard } from './planned-board';
import { hasGlass } from './sheet-words';

/** On paper, where there is room for all of it. */
export const BLADE_CAUTION =
  'Blades: a new blade cuts cleaner and with less force. Cut away from the body; keep the other hand out of its path and behind the blade. Hold the straightedge with a guard. Cover or retract the blade when it is not cutting, and put used ones in a sharps tin. The instructions of the cutter come first.';
const SHORT_BLADE_CAUTION =
  'Blades: cut away from the body, the other hand behind the blade and behind a guard. The instructions of the cutter come first.';
export const GLASS_CAUTION =
  'Glass: its edges cut. Wear gloves and eye protection, and leave cutting it to whoever has learnt to.';

/** Short ones; that of glass only where glass is cut. Empty where nothing is planned. */
export function sheetCautions(boards: readonly PlannedBoard[]): string[] {
  if (boards.length === 0) return [];
  return [SHORT_BLADE_CAUTION, ...(hasGlass(boards) ? [GLASS_CAUTION] : [])];
}
