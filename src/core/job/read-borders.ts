/** Reads the borders: the rule that shares what is left over, and the lengths it is given. */
import { DEFAULT_TOP_SHARE, defaultLength } from './defaults';
import type { Borders } from './job';
import type { Reader } from './reader';
import type { WrittenBorders } from './written';

const LENGTHS = ['all', 'sides', 'left', 'right', 'top', 'bottom'] as const;

export function readBorders(written: WrittenBorders, hasBlank: boolean, reader: Reader): Borders {
  const given = LENGTHS.flatMap((key) => {
    const name = key === 'all' ? 'Border' : key === 'sides' ? 'Border at the sides' : `Border at the ${key}`;
    const value = reader.optionalLength(written[key], `borders.${key}`, { name, least: 0, above: true });
    return value === undefined ? [] : [[key, value] as const];
  });
  const ratio =
    written.ratio === undefined ? {} : { ratio: reader.number(written.ratio, 'borders.ratio', 'Ratio', 0.1, 10, NaN) };
  return {
    rule: written.rule ?? (hasBlank ? 'centred' : 'equal'),
    measured: written.measured ?? 'as cut',
    ...Object.fromEntries(given),
    ...ratio,
    amount: reader.length(
      written.amount,
      'borders.amount',
      { name: 'Bottom weighting', least: -1000, most: 1000 },
      defaultLength('bottomAmount', reader.units),
    ),
    topShare: readShare(written.share, reader),
    step: reader.length(
      written.step,
      'borders.step',
      { name: 'Step between borders', least: -1000, most: 1000 },
      defaultLength('borderStep', reader.units),
    ),
  };
}

/** `45:55`, `45/55` or `2 : 3`: top to bottom. */
function readShare(written: string | undefined, reader: Reader): number {
  if (written === undefined) return DEFAULT_TOP_SHARE;
  const found = /^\s*(\d+(?:[.,]\d+)?)\s*[:/]\s*(\d+(?:[.,]\d+)?)\s*$/.exec(written);
  const [top, bottom] = [found?.[1], found?.[2]].map((part) => Number((part ?? '').replace(',', '.')));
  if (found && top && bottom) return top / (top + bottom);
  reader.say({
    code: 'share-unreadable',
    at: 'borders.share',
    message: `Share of the leftover height: "${written}" is not two parts; write top to bottom like 45:55.`,
    value: written,
    remedy: 'write top to bottom like 45:55',
  });
  return NaN;
}
