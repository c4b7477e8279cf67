/** What the lines of one cost sheet are made from. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { JobPieces } from '../pieces/job-pieces';
import type { Moulding, Shelf } from '../shelf/shelf';
import type { Showing } from '../units';
import type { BoardsShare } from './boards-used';
import type { PriceList } from './price-list';

export interface LinesAsk {
  readonly job: Job;
  readonly layout: Layout;
  readonly shelf: Shelf;
  readonly prices: PriceList;
  /** Rails and pieces, of the moulding below where there is one. */
  readonly made: JobPieces;
  /** Of the shelf; undefined: the frame is bought as it is, or nothing of the shelf. */
  readonly moulding?: Moulding;
  /** What a plan of sheets used; without one each job is cut from sheets of its own. */
  readonly boards?: BoardsShare;
  readonly showing: Showing;
}
