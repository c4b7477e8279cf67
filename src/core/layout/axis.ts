/** One axis of a blank, as its borders are solved: what is asked, what comes out, and how it is called in messages. */
import type { Borders } from '../job/job';
import type { Unit } from '../units';
import type { Extent } from './extent';
import type { Show } from './show';

/** What is known of one axis. */
export interface AxisAsk {
  /** Length of the blank, mm; undefined when it is made to fit. */
  readonly blank?: number;
  /** How much of each border the frame hides when borders are measured as seen; otherwise 0. */
  readonly hidden: number;
  readonly extent: (border: number) => Extent;
  /** True when a gap shares what is left between the borders. */
  readonly stretchable: boolean;
  readonly borders: Borders;
  /** Path of what says how large the frame is. */
  readonly frameAt: string;
  readonly units: Unit;
  readonly show: Show;
}

/** Borders of one axis as the rule measures them (as cut or as seen), mm. */
export interface AxisBorders {
  /** Left or top. */
  readonly start: number;
  /** Right or bottom. */
  readonly end: number;
}

export interface AxisWords {
  readonly name: 'width' | 'height';
  readonly measure: 'wide' | 'high';
  readonly start: string;
  readonly end: string;
  /** The two borders together. */
  readonly both: string;
  /** Path of what asks for both borders. */
  readonly at: string;
  /** Path of what asks for one border, where that is not the border of its own name. */
  readonly open?: string;
}
