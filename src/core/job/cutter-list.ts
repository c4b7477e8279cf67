/** Cutters outside a job: one, or a list of those that a user keeps, as JSON text; every length says its unit. */
import * as z from 'zod';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { readLength } from '../units';
import { readCutter } from './read-cutting';
import { Reader } from './reader';
import { schemaProblems } from './schema-problems';
import { FORMAT } from './written';
import { cutter, type WrittenCutter } from './written-cutter';

export const CUTTERS_FORMAT = 'matwright-cutters';
export const MOST_CUTTERS = 200;

const list = z.strictObject({
  format: z.literal(CUTTERS_FORMAT),
  version: z.literal(1),
  cutters: z.array(cutter).max(MOST_CUTTERS),
});

/** Reads a list of cutters, one cutter by itself, or the cutter of a job; whatever is wrong with it is told with its place. */
export function parseCutters(text: string): Result<readonly WrittenCutter[]> {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return bad([fault('not-json', '', 'The file of cutters is not whole JSON; mend it, or write one cutter in { }.')]);
  }
  if (isJob(value)) {
    const own = value.cutting?.cutter;
    if (own === undefined) {
      return bad([
        fault(
          'cutter-not-in-job',
          'cutting.cutter',
          'This is the file of a job, and it names no cutter; choose a list of cutters, or a job that is cut with one.',
        ),
      ]);
    }
    return parseCutters(JSON.stringify(own));
  }
  const isList = value !== null && typeof value === 'object' && ('cutters' in value || 'format' in value);
  const checked = (isList ? list : cutter).safeParse(value);
  if (!checked.success) return bad(schemaProblems(checked.error.issues, value));
  return checkCutters('cutters' in checked.data ? checked.data.cutters : [checked.data], isList ? 'cutters' : '');
}

function isJob(value: unknown): value is { readonly cutting?: { readonly cutter?: unknown } } {
  return value !== null && typeof value === 'object' && 'format' in value && value.format === FORMAT;
}

/** The same cutters, or what is wrong: a name twice, a length that cannot be or does not say its unit. */
export function checkCutters(cutters: readonly WrittenCutter[], at = 'cutters'): Result<readonly WrittenCutter[]> {
  const reader = new Reader('mm', { in: 64, mm: 0.1 });
  const problems = cutters.flatMap((one, index) => {
    const place = at === '' ? 'cutter' : `${at}[${index}]`;
    readCutter(one, place, reader);
    return [...withoutUnit(one, place), ...(namedBefore(cutters, index) ? [nameTwice(one, place)] : [])];
  });
  const all = [...reader.problems, ...problems];
  return all.some(isError) ? bad(all) : good(cutters, all);
}

/** The text of a file of kept cutters. */
export function printCutters(cutters: readonly WrittenCutter[]): string {
  return `${JSON.stringify({ format: CUTTERS_FORMAT, version: 1, cutters }, undefined, 2)}\n`;
}

/** Jobs in inches and jobs in millimetres share a cutter, and a blade follows its numbers. */
function withoutUnit({ reach, scaleOffset, overcuts = [], name }: WrittenCutter, at: string): Problem[] {
  const lengths = [
    [reach, `${at}.reach`],
    [scaleOffset, `${at}.scaleOffset`],
    ...overcuts.flatMap(({ thickness, overcut }, index) => [
      [thickness, `${at}.overcuts[${index}].thickness`] as const,
      [overcut, `${at}.overcuts[${index}].overcut`] as const,
    ]),
  ] as const;
  return lengths.flatMap(([written, where]) => {
    const reading = written === undefined ? undefined : readLength(written, 'mm');
    if (!reading?.ok || !reading.bare || reading.mm === 0) return [];
    return [
      fault(
        'cutter-length-without-unit',
        where,
        `${name}: ${String(written)} does not say its unit; write ${String(written)} mm or ${String(written)} in.`,
      ),
    ];
  });
}

function namedBefore(cutters: readonly WrittenCutter[], index: number): boolean {
  return cutters.findIndex(({ name }) => name === cutters[index]?.name) < index;
}

function nameTwice({ name }: WrittenCutter, at: string): Problem {
  return fault('cutter-named-twice', `${at}.name`, `Two cutters are called ${name}; give one of them another name.`);
}

function fault(code: string, at: string, message: string): Problem {
  return { code, severity: 'error', at, message };
}
