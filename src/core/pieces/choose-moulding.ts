/** The moulding of the shelf that was named, and what it changes for a job. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { nearestWord } from '../nearest-word';
import { bad, good, type Problem, type Result } from '../problem';
import { ofKind, type Moulding, type Shelf } from '../shelf/shelf';
import { lipOf } from './section';
import { showFor } from '../layout/show';
import { lengthText, showingOf } from '../units';

/** By its name, without regard to capitals. */
export function chooseMoulding(name: string, shelf: Shelf | undefined): Result<Moulding> {
  const mouldings = ofKind(shelf ?? [], 'moulding');
  const found = mouldings.find((one) => one.name.toLowerCase() === name.trim().toLowerCase());
  if (found) return good(found);
  const names = mouldings.map((one) => one.name);
  const near = nearestWord(name, names);
  const meant = near === undefined ? '' : ` Is “${near}” meant?`;
  const there = names.length === 0 ? 'it holds no moulding' : `it holds ${names.slice(0, 12).join(', ')}`;
  const remedy = shelf ? 'the name of a moulding of the shelf' : 'a shelf with the moulding on it';
  const message = shelf
    ? `No moulding of the shelf is called “${name.slice(0, 60)}”; ${there}.${meant}`
    : `“${name.slice(0, 60)}” is looked for on a shelf, and none is given.`;
  return bad([
    { code: 'moulding-unknown', severity: 'error', at: 'moulding', message, value: name.slice(0, 60), remedy },
  ]);
}

/** The moulding of the shelf that the job's frame is said to be made of. */
export function ownMoulding({ frame: { name } }: Job, shelf: Shelf | undefined): Moulding | undefined {
  if (name === undefined) return undefined;
  return ofKind(shelf ?? [], 'moulding').find((one) => one.name.toLowerCase() === name.trim().toLowerCase());
}

/** Of one job: too narrow for its lip, or another than the one its borders as seen were worked out for. */
export function mouldingProblems(
  moulding: Moulding,
  { job, layout }: { readonly job: Job; readonly layout: Layout },
): Problem[] {
  const show = (mm: number) => lengthText(mm, showingOf(job));
  const { lip } = layout.frame;
  const own = lipOf(moulding, job.frame, lip);
  const value = show(own);
  if (moulding.face < own) {
    const message = `“${moulding.name}” is ${show(moulding.face)} wide, narrower than the lip of ${value}; say its own lip on the shelf.`;
    return [
      {
        code: 'moulding-narrower-than-lip',
        severity: 'error',
        at: 'moulding',
        message,
        value: show(moulding.face),
        limit: value,
      },
    ];
  }
  if (Math.abs(own - lip) < 1e-6) return [];
  const apart = showFor(job);
  const message = `“${job.title}” is laid out for a lip of ${apart.missing(lip, own)}; that of “${moulding.name}” is ${apart.missing(own, lip)}, so its borders as seen will be others. Set the lip in the job.`;
  return [
    {
      code: 'moulding-differs',
      severity: 'note',
      at: 'frame.lip',
      message,
      value: apart.missing(own, lip),
      limit: apart.missing(lip, own),
      remedy: `a lip of ${apart.limit(own)}`,
    },
  ];
}
