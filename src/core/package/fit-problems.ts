/** A package that is deeper than its frame. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import type { Shelf } from '../shelf/shelf';
import type { Fit } from './fit';
import { remediesFor } from './remedies';
import { verdictOf, type Free, type Room } from './room';

/** Remedies told; the rest are in the answer of the package. */
const MOST_TOLD = 3;

export function fitProblems(job: Job, layout: Layout, fit: Fit, shelf: Shelf, show: Show): Problem[] {
  const { needs, room, free, behind, verdict } = fit;
  if (!room || !free || (verdict !== 'may not fit' && verdict !== 'does not fit')) return [];
  if (verdictOf(free) === 'fits') return behind ? [backNotHeld(job, layout, { room, behind }, shelf, show)] : [];
  const deep = verdictOf(free) === 'does not fit';
  const { best, ...ways } = waysOut(job, layout, shelf);
  const found = show.limit(deep ? needs.nominal : needs.greatest);
  const place = `${room.name}${room.kind === 'groove' ? ', in front of which it has to go,' : ''}`;
  return [
    {
      code: deep ? 'package-too-deep' : 'package-may-not-fit',
      severity: 'warning',
      at: room.at,
      message: deep
        ? `The package is ${found} deep, and ${place} only ${show.limit(room.depth)}: it is ${show.limit(-free.nominal)} too deep as all is named, and ${show.limit(-free.worst)} with all at its thickest. Forced in, it would press on the picture. One way out: ${best?.words ?? 'a deeper frame'}.`
        : `As all is named the package goes into ${place} with ${show.limit(free.nominal)} to spare, but it may be ${found} deep where that is ${show.limit(room.depth)}: measure what you have, or ${best?.words ?? 'take a deeper frame'}.`,
      value: found,
      limit: show.limit(room.depth),
      ...ways,
    },
  ];
}

/** All goes before the back, but nothing holds the back. */
function backNotHeld(
  job: Job,
  layout: Layout,
  { room, behind }: { readonly room: Room; readonly behind: Free },
  shelf: Shelf,
  show: Show,
): Problem {
  const { rabbetDepth = 0 } = job.frame;
  const ends = show.limit(rabbetDepth - behind.worst);
  const { best, ...ways } = waysOut(job, layout, shelf);
  return {
    code: 'back-not-held',
    severity: 'warning',
    at: room.at,
    message: `${capital(room.name)} begins ${show.limit(room.depth)} behind the lip, and a back as thick as the job’s ends up to ${ends} behind it, where the rabbet is ${show.limit(rabbetDepth)} deep: no wood is left behind the back to hold it. One way out: ${best?.words ?? 'a thinner back'}.`,
    value: ends,
    limit: show.limit(rabbetDepth),
    ...ways,
  };
}

/** What is sure to help, the best of it as a fix. */
function waysOut(job: Job, layout: Layout, shelf: Shelf) {
  const remedies = remediesFor(job, layout, shelf).filter(({ enough }) => enough === 'sure');
  const [best] = remedies;
  return {
    best,
    remedy: remedies
      .slice(0, MOST_TOLD)
      .map(({ words }) => words)
      .join('; or '),
    ...(best ? { fix: { label: capital(best.words), edits: best.edits } } : {}),
  };
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
