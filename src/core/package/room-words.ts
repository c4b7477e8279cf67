/** What the depth of a frame means to whoever chooses one: why it will not do, or what to look at where it does. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import type { Fit } from './fit';
import { behindWords } from './fit-words';
import type { Free, Room } from './room';
import { SLACK, type Range } from './range';

type Held = Pick<Job, 'package'>;

/** `its rabbet is 1/2 in deep, and 0.535 in is needed as all is named`; undefined where nothing is in the way. */
export function shallowWords(job: Held, { needs, room, free, behind, verdict }: Fit, show: Show): string | undefined {
  if (!room || verdict !== 'does not fit') return undefined;
  if (isHeldBadly(free, behind)) return `in ${room.name} its back would not be held: ${behindWords(behind, show)}`;
  const [has, named] = apart(room.depth, needs.nominal, show);
  return `${hasWords(room, has)}, and ${named} is needed ${namedWords(job, room)}${thickestWords(needs, show)}`;
}

/** Of a package that goes in as named and may not with all at its thickest. */
export function mayNotFitWords(job: Held, { needs, room, free, behind, verdict }: Fit, show: Show): string | undefined {
  if (!room || verdict !== 'may not fit') return undefined;
  if (isHeldBadly(free, behind)) return `in ${room.name} its back may not be held: ${behindWords(behind, show)}`;
  const [has, thickest] = apart(room.depth, needs.greatest, show);
  return `${hasWords(room, has)}: enough for ${show.limit(needs.nominal)} ${namedWords(job, room)}, but with all at its thickest ${thickest} is needed; measure what you have`;
}

/** All goes in before the back; it is the back itself that finds no wood behind its groove. */
function isHeldBadly(free: Free | undefined, behind: Free | undefined): boolean {
  return free !== undefined && behind !== undefined && free.worst >= -SLACK;
}

/** How deep a rabbet has to be that nobody has measured, or that is still to be made. */
export function wantedDepthWords(job: Held, needs: Range, show: Show): string {
  return `${show.limit(needs.nominal)} deep ${namedWords(job)}${thickestWords(needs, show)}`;
}

/** The same in a few words, for lists. */
export function wantedDepthText(needs: Range, show: Show): string {
  return `${show.limit(needs.nominal)} deep${thickestWords(needs, show)}`;
}

function hasWords({ kind, name }: Room, depth: string): string {
  return kind === 'groove'
    ? `its ${name} for the back lies ${depth} behind the lip`
    : `its ${name.replace(/^the /, '')} is ${depth} deep`;
}

/** What is meant, since other programs and people leave the points out. */
function namedWords({ package: { fixing } }: Held, room?: Room): string {
  if (room?.kind === 'groove') return 'before the back as all is named';
  return `as all is named${fixing.room > SLACK ? `, with room for ${fixing.kind}` : ''}`;
}

function thickestWords({ nominal, greatest }: Range, show: Show): string {
  if (greatest <= nominal + SLACK) return '';
  return ` (${apart(nominal, greatest, show)[1]} with all at its thickest)`;
}

/** Both as a limit, or finer where they differ and would be told as one. */
function apart(one: number, other: number, show: Show): readonly [string, string] {
  const alike = show.limit(one) === show.limit(other) && Math.abs(one - other) > SLACK;
  const text = alike ? show.fine : show.limit;
  return [text(one), text(other)];
}
