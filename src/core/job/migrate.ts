/** Brings job files of earlier versions up to this one; refuses what is not a job and what is newer. */
import { bad, good, type Problem, type Result } from '../problem';
import { FORMAT, VERSION } from './written';

/** From version n to n + 1, at index n - 1. Version 1 is the first, so there is none yet. */
const STEPS: readonly ((old: Record<string, unknown>) => Record<string, unknown>)[] = [];

/** The value as a file of this version would have it; the value itself when it is one. */
export function migrate(value: unknown): Result<unknown> {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) {
    return refuse('not-a-job', '', `This is not a Matwright job: a group in { } with "format": "${FORMAT}" is wanted.`);
  }
  const { format, version } = value as Record<string, unknown>;
  if (format !== FORMAT) {
    return refuse('not-a-job', 'format', `This is not a Matwright job: "format" must be "${FORMAT}".`);
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse('version-unknown', 'version', `"version" must be a whole number from 1 to ${VERSION}.`);
  }
  if (version > VERSION) {
    return refuse(
      'version-newer',
      'version',
      `The job was saved as version ${version} by a newer Matwright; this one reads up to version ${VERSION}. Open it with the newer one.`,
    );
  }
  return good(STEPS.slice(version - 1).reduce((old, step) => step(old), value as Record<string, unknown>));
}

function refuse(code: string, at: string, message: string): Result<never> {
  const problem: Problem = { code, severity: 'error', at, message };
  return bad([problem]);
}
