/** Where the board of a plan goes, in words: shares and areas that are rounded together, so that what is shown adds up. */
import { areaStep, areaText, type Showing } from '../units';
import { accountOf, apportioned, AREA_UNITS, totalOf, type SheetAccount } from './account';
import type { PlannedBoard } from './planned-board';
import { USUAL_KEEP, type KeepRule } from './remnants';

/** Tenths of a percent. */
const TENTHS = 1000n;

/** Such as `Pieces 82.1 %, kept 10.2 %, waste 6.7 %, trim and saw 1 %`; they add up to 100. */
export function shareWords({ plan }: PlannedBoard, rule: KeepRule = USUAL_KEEP): string {
  return partsText(accountIn(plan, rule), TENTHS, (tenths) => `${Number(tenths) / 10} %`);
}

/** Such as `Sheets 1280.00 sq in: pieces 1024.00 sq in, kept 192.00 sq in, waste 64.00 sq in`. */
export function areaWords({ plan }: PlannedBoard, showing: Showing, rule: KeepRule = USUAL_KEEP): string {
  const account = accountIn(plan, rule);
  const step = areaStep(showing);
  const unit = BigInt(Math.round(step * AREA_UNITS));
  const told = (steps: bigint) => areaText(Number(steps) * step, showing);
  const whole = (account.sheet + unit / 2n) / unit;
  return `Sheets ${told(whole)}: ${partsText(account, whole, told, 'pieces')}`;
}

function accountIn({ sheets }: PlannedBoard['plan'], rule: KeepRule): SheetAccount {
  return totalOf(sheets.map((sheet) => accountOf(sheet, rule)));
}

function partsText(
  { pieces, kept, waste, cuts }: SheetAccount,
  steps: bigint,
  told: (steps: bigint) => string,
  first = 'Pieces',
): string {
  const names = [first, 'kept', 'waste', ...(cuts === 0n ? [] : ['trim and saw'])];
  const shares = apportioned([pieces, kept, waste, cuts], steps);
  return names.map((name, index) => `${name} ${told(shares[index] ?? 0n)}`).join(', ');
}
