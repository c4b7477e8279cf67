/** A change to a package or its frame, as the remedies for one that does not fit are made of. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Edit } from '../problem';
import type { Shelf } from '../shelf/shelf';
import type { Fit } from './fit';
import type { Free, Room } from './room';

export type RemedyKind = 'backing' | 'glazing' | 'spacer' | 'layer' | 'deeper' | 'built up' | 'clips';

/** A change that could help: in words, to the job as written, and to the job as it is understood. */
export interface Change {
  readonly kind: RemedyKind;
  /** What to do: `take a backing of 1/8 in or thinner`. */
  readonly words: string;
  /** What it costs, where it costs something. */
  readonly caution?: string;
  /** The measure in it, mm. */
  readonly measure: number;
  readonly edits: readonly Edit[];
  readonly job: Job;
}

/** What a change is worked out from. */
export interface Trouble {
  readonly job: Job;
  readonly layout: Layout;
  readonly fit: Fit & { readonly free: Free; readonly room: Room };
  readonly shelf: Shelf;
}
