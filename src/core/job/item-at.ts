/** Finds items of the arrangement, and windows placed freely by their path. */
import type { Arrangement, Job } from './job';

/** Undefined where the path names no item of the job. */
export function itemAt(job: Job, at: string): Arrangement | undefined {
  const free = job.free.find(({ window }) => window.at === at);
  return free?.window ?? (job.windows && within(job.windows, at));
}

function within(item: Arrangement, at: string): Arrangement | undefined {
  if (item.at === at) return item;
  if (!at.startsWith(item.at)) return undefined;
  for (const inner of partsOf(item)) {
    const found = within(inner, at);
    if (found) return found;
  }
  return undefined;
}

/** The item and all in it, in the order of the job. */
export function itemsOf(item: Arrangement): Arrangement[] {
  return [item, ...partsOf(item).flatMap(itemsOf)];
}

function partsOf(item: Arrangement): readonly Arrangement[] {
  if (item.kind === 'ring') return [...(item.middle ? [item.middle] : []), ...item.around];
  return item.kind === 'window' || item.kind === 'spread' ? [] : item.items;
}
