/** Whether jobs are variants of one, of which one is made, or jobs of an order, of which all are. */
import type { Job } from '../job/job';
import type { Problem } from '../problem';

/** mm: sizes that are nearer are one, written in two units. */
const ALIKE = 0.05;

/** True where all frame the same pictures; without any, where all have one title. */
export function areOfOnePicture(jobs: readonly Job[]): boolean {
  const [first] = jobs;
  return first === undefined || jobs.every((job) => frameTheSame(first, job));
}

function frameTheSame(one: Job, other: Job): boolean {
  if (one.pictures.length !== other.pictures.length) return false;
  if (one.pictures.length === 0) return isNamedAlike(one.title, other.title);
  return one.pictures.every((picture, index) => {
    const beside = other.pictures[index];
    if (!beside || !isNamedAlike(picture.title, beside.title)) return false;
    const { width, height } = picture.sheet;
    return Math.abs(width - beside.sheet.width) < ALIKE && Math.abs(height - beside.sheet.height) < ALIKE;
  });
}

/** What has no name may be anything. */
function isNamedAlike(one: string, other: string): boolean {
  const [first, second] = [one, other].map((name) => name.trim().toLowerCase());
  return first === '' || second === '' || first === second;
}

/** Of jobs that are compared. */
export function otherPictures(jobs: readonly Job[]): Problem[] {
  if (areOfOnePicture(jobs)) return [];
  return [
    {
      code: 'variants-differ',
      severity: 'warning',
      at: '',
      message: 'The jobs compared are of different pictures, and no variants of one: where all are made, they are told together, with their sum.', // prettier-ignore
      remedy: 'the jobs together',
    },
  ];
}
