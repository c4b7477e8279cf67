/** Steps of a stock as a change of a kept list, with the record by which it can be taken back. */
import type { ListWork, Written } from '../kept-list';
import { good } from '../problem';
import type { Showing } from '../units';
import { stepStock, type StockDeed, type StockStep } from './stock-steps';
import type { StockSheet } from './stock-sheet';
import { printUseRecord } from './use-record';

/** The steps as a change of a kept list. @param words that tell what is done; with them a record of it is kept. */
export function stockWork(
  steps: readonly StockStep[],
  showing: Showing,
  deed: StockDeed = 'use',
  words?: readonly string[],
): ListWork<StockSheet> {
  return (list) => {
    const stepped = stepStock(list, steps, deed, showing);
    if (!stepped.ok) return stepped;
    const undoing = stepped.value.back;
    const back = stockWork(undoing, showing, deed === 'use' ? 'take back' : 'use');
    const record = words && { record: (written: Written) => printUseRecord({ words, back: undoing, ...written }) };
    return good({ list: stepped.value.list, back, ...record });
  };
}
