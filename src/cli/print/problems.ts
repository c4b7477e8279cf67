/** Problems in words for the person at the terminal, and as data for a machine. */
import { counted, listed } from '../../core/phrases';
import type { Problem, Severity } from '../../core/problem';
import { wrap } from './text';

const WIDTH_OF_SEVERITY = 'warning'.length + 2;

/** Severity, path and code, then the message, the value with the limit it passed, and the remedy. */
export function problemText(problem: Problem, width: number): string {
  const { severity, at, code, message, value, limit, remedy } = problem;
  const indent = ' '.repeat(WIDTH_OF_SEVERITY);
  const measured = [
    value === undefined ? [] : [`value ${value}`],
    limit === undefined ? [] : [`limit ${limit}`],
  ].flat();
  const lines = [
    [at, `[${code}]`].filter((part) => part !== '').join('  '),
    message,
    measured.join(', '),
    remedy === undefined ? '' : `remedy: ${remedy}`,
  ].filter((line) => line !== '');
  const set = lines.flatMap((line) => wrap(line, width - WIDTH_OF_SEVERITY)).map((line) => indent + line);
  return severity.padEnd(WIDTH_OF_SEVERITY) + set.join('\n').slice(WIDTH_OF_SEVERITY) + '\n';
}

export function problemsText(problems: readonly Problem[], width: number): string {
  return problems.map((problem) => problemText(problem, width)).join('\n');
}

/** Such as `1 error and 2 notes`; `nothing to report` for none. */
export function tally(problems: readonly Problem[]): string {
  const counts = (['error', 'warning', 'note'] as const).map((severity: Severity) => {
    const count = problems.filter((problem) => problem.severity === severity).length;
    return count === 0 ? '' : counted(count, severity);
  });
  return listed(counts.filter((text) => text !== '')) || 'nothing to report';
}

/** One JSON value and a newline. @param replaced what is written for a value, as `JSON.stringify` asks it. */
export function jsonText(value: unknown, replaced?: (key: string, value: unknown) => unknown): string {
  return `${JSON.stringify(value, replaced, 2)}\n`;
}
