/** A package that is deeper than its frame. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import type { Shelf } from '../shelf/shelf';
import type { Fit } from './fit';
import { remediesFor } from './remedies';

/** Remedies told; the rest are in the answer of the package. */
const MOST_TOLD = 3;

export function fitProblems(job: Job, layout: Layout, fit: Fit, shelf: Shelf, show: Show): Problem[] {
  const { needs, room, free, verdict } = fit;
  if (!room || !free || (verdict !== 'may not fit' && verdict !== 'does not fit')) return [];
  const deep = verdict === 'does not fit';
  const remedies = remediesFor(job, layout, shelf).filter(({ enough }) => enough === 'sure');
  const [best] = remedies;
  const remedy = remedies
    .slice(0, MOST_TOLD)
    .map(({ words }) => words)
    .join('; or ');
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
      remedy,
      ...(best ? { fix: { label: capital(best.words), edits: best.edits } } : {}),
    },
  ];
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
