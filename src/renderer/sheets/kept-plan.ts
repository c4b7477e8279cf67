/** What is planned together, as it was left on this screen: jobs by their files, copies, and pins; kept over restarts. */
import { MOST_COPIES } from '../../core/show/job-list';
import type { HeldPin } from '../edits/pins';

/** A job of another file. */
export interface KeptJob {
  readonly path: string;
  readonly title: string;
  readonly copies: number;
}

export interface KeptPlan {
  readonly jobs: readonly KeptJob[];
  /** That on the screen; its copies are of it alone. */
  readonly own?: { readonly path?: string; readonly title: string; readonly copies: number };
  readonly pins: readonly HeldPin[];
}

/** What is not as agreed is left out. */
export function readKeptPlan(text: string | null): KeptPlan {
  const { jobs, own, pins } = fieldsOf(parsed(text));
  const paths = new Set<string>();
  const kept = listOf(jobs).flatMap((job): KeptJob[] => {
    const { path, title, copies } = fieldsOf(job);
    if (typeof path !== 'string' || typeof title !== 'string' || !isCount(copies) || paths.has(path)) return [];
    paths.add(path);
    return [{ path, title, copies }];
  });
  const { path, title, copies } = fieldsOf(own);
  const isOwn = typeof title === 'string' && isCount(copies);
  return {
    jobs: kept,
    ...(isOwn ? { own: { title, copies, ...(typeof path === 'string' ? { path } : {}) } } : {}),
    pins: listOf(pins).flatMap(pinOf),
  };
}

function pinOf(value: unknown): HeldPin[] {
  const { board, piece, stock, sheet, turned, left, bottom } = fieldsOf(value);
  if (typeof board !== 'string' || typeof piece !== 'string' || typeof stock !== 'string') return [];
  if (typeof turned !== 'boolean' || !isPlace(left) || !isPlace(bottom)) return [];
  return Number.isSafeInteger(sheet) ? [{ board, piece, stock, sheet: sheet as number, turned, left, bottom }] : [];
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '{}');
  } catch {
    return undefined;
  }
}

function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function isCount(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 1 && (value as number) <= MOST_COPIES;
}

function isPlace(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

const KEY = 'matwright.sheet-plan';

export function rememberedPlan(): KeptPlan {
  try {
    return readKeptPlan(localStorage.getItem(KEY));
  } catch {
    return readKeptPlan(null);
  }
}

export function rememberPlan(value: KeptPlan): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(value));
  } catch {
    // A browser that keeps nothing still plans by it now.
  }
}
