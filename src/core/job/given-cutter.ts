/** A cutter from outside a job, chosen by name and put in the place of the job's own. */
import { listed } from '../phrases';
import { bad, good, type Result } from '../problem';
import { nearestWord } from '../nearest-word';
import type { WrittenCutter } from './written-cutter';

/** More names than this are counted. */
const MOST_TOLD = 12;

/**
 * The cutter of that name; without a name the only one there is. Problems: `cutter-unknown` with the nearest name and
 * those there are, `cutter-not-named` where several could be meant.
 *
 * @param place what the cutters are read from, as the messages name it.
 */
export function chooseCutter(
  cutters: readonly WrittenCutter[],
  name: string | undefined,
  place: string,
): Result<WrittenCutter> {
  const names = cutters.map((cutter) => cutter.name);
  const [first] = cutters;
  if (!first) return refuse('cutter-unknown', `${place} holds no cutter.`, place);
  if (name === undefined) {
    if (cutters.length === 1) return good(first);
    const example = `write ${place}#${names[0]}`;
    return refuse(
      'cutter-not-named',
      `${place} holds ${cutters.length} cutters: ${listed(names.map(quoted), MOST_TOLD)}; say which.`,
      place,
      example,
    );
  }
  const found = cutters.find((cutter) => cutter.name === name);
  if (found) return good(found);
  const near = nearestWord(name, names);
  const meant = near === undefined ? '' : ` Is “${near}” meant?`;
  return refuse(
    'cutter-unknown',
    `${place} holds no cutter called “${name}”, but ${listed(names.map(quoted), MOST_TOLD)}.${meant}`,
    place,
    `write ${place}#${near ?? names[0]}`,
  );
}

function refuse(code: string, message: string, at: string, remedy?: string): Result<never> {
  return bad([{ code, severity: 'error', at, message, ...(remedy === undefined ? {} : { remedy }) }]);
}

/** A job's text with this cutter for its own; a text that is no job is left as it is, for its reader to judge. */
export function withCutter(text: string, cutter: WrittenCutter): string {
  let job: unknown;
  try {
    job = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return text;
  }
  if (!isGroup(job)) return text;
  const { cutting } = job;
  if (cutting !== undefined && !isGroup(cutting)) return text;
  return JSON.stringify({ ...job, cutting: { ...cutting, cutter } }, undefined, 2);
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

function quoted(name: string): string {
  return `“${name}”`;
}
