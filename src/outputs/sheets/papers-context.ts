/** What every paper of a plan of sheets is made from. */
import type { SheetPapersOptions, SheetPlans } from '../../bridge';
import type { KeepRule } from '../../core/sheets/remnants';
import type { Fonts } from '../context';

export interface PapersContext extends Pick<SheetPlans, 'title' | 'boards' | 'unplanned'> {
  readonly keep: KeepRule;
  readonly paper: SheetPapersOptions['paper'];
  readonly showing: SheetPapersOptions['showing'];
  readonly fonts: Fonts;
}
