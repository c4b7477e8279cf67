/** What the papers of hanging take of an export: what is asked of the frame, and the paper. */
import { hangingAsk } from '../../core/hanging/ask-of';
import type { HangingAsk } from '../../core/hanging/hanging-ask';
import type { OutputContext } from '../context';
import type { TilePaper } from '../paper/page';

/** What a job's hanging is worked out from, told in the unit of the export. */
export function askOf({ job, layout, showing, shelf }: OutputContext): HangingAsk {
  return { ...hangingAsk(job, layout, shelf), shownIn: showing.unit };
}

/** A wall has no blank whose own size a page could have. */
export function tilePaper({ options, showing }: OutputContext): TilePaper {
  if (options.paper !== 'blank') return options.paper;
  return showing.unit === 'in' ? 'letter' : 'a4';
}
