/** `--keep`, `--keep-strip`, `--discard`: the options that say what is worth keeping of a sheet. */
import { Option } from 'commander';
import { LARGEST } from '../core/job/reader';
import { bad, type Result } from '../core/problem';
import { keepRule } from '../core/sheets/keep-rule';
import type { KeepRule } from '../core/sheets/remnants';
import { readLength } from '../core/units';
import { lengthOption, sizeOption } from './length-option';

export interface KeepOptions {
  readonly keep?: string;
  readonly keepStrip?: string;
  readonly discard?: string;
}

export function keepOptions(): Option[] {
  return [
    new Option('--keep <size>', 'what is left is kept as board from this size on (default: 10 x 12 in)'),
    new Option('--keep-strip <length>', 'as a strip from this length on (default: 24 in)'),
    new Option('--discard <length>', 'narrower is thrown away (default: 2 in)'),
  ];
}

export function readKeepOptions({ keep, keepStrip, discard }: KeepOptions): Result<KeepRule> {
  const board = sizeOption('--keep', keep, 'board that is kept');
  const strip = lengthOption('--keep-strip', keepStrip, { name: 'Strip that is kept', least: 0, above: true, most: LARGEST }); // prettier-ignore
  const least = lengthOption('--discard', discard, { name: 'What is thrown away', least: 0, most: LARGEST });
  if (!board.ok || !strip.ok || !least.ok) return bad([board, strip, least].flatMap(({ problems }) => problems));
  const written = readLength(discard ?? '', 'in');
  const unit = written.ok ? written.unit : 'in';
  return keepRule(
    { board: board.value, strip: strip.value, least: least.value },
    { unit, inchStep: 64, metricStep: 0.1 },
  );
}
