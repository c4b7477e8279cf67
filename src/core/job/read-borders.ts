/** Reads the borders: the rule that shares what is left over, and the lengths it is given. */
import { DEFAULT_TOP_SHARE, defaultLength } from './defaults';
import type { BorderRule, Borders } from './job';
import type { Reader } from './reader';
import type { WrittenBorders } from './written';

const LENGTHS = ['all', 'sides', 'left', 'right', 'top', 'bottom'] as const;

/** The rules that ask for a setting, in a frame of given size and in one made to fit. */
const ASKED_BY: Readonly<
  Record<'amount' | 'ratio' | 'share' | 'step', Readonly<Record<'given' | 'fitted', readonly BorderRule[]>>>
> = {
  amount: { given: ['bottom-amount'], fitted: ['bottom-amount'] },
  ratio: { given: ['bottom-ratio'], fitted: ['bottom-ratio', 'equal-ratios'] },
  share: { given: ['height-share'], fitted: ['height-share'] },
  step: { given: [], fitted: ['equal-steps'] },
};

export function readBorders(written: WrittenBorders, hasBlank: boolean, reader: Reader): Borders {
  const given = LENGTHS.flatMap((key) => {
    const name = key === 'all' ? 'Border' : key === 'sides' ? 'Border at the sides' : `Border at the ${key}`;
    const value = reader.optionalLength(written[key], `borders.${key}`, { name, least: 0, above: true });
    return value === undefined ? [] : [[key, value] as const];
  });
  const ratio =
    written.ratio === undefined ? {} : { ratio: reader.number(written.ratio, 'borders.ratio', 'Ratio', 0.1, 10, NaN) };
  const rule = written.rule ?? (hasBlank ? 'centred' : 'equal');
  tellUnasked(written, rule, hasBlank, reader);
  return {
    rule,
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
    range: readRange(written.range ?? {}, reader),
  };
}

function readRange({ least, greatest }: NonNullable<WrittenBorders['range']>, reader: Reader): Borders['range'] {
  const low = reader.length(
    least,
    'borders.range.least',
    { name: 'Least border', least: 0 },
    defaultLength('leastBorder', reader.units),
  );
  const high = reader.optionalLength(greatest, 'borders.range.greatest', { name: 'Greatest border', least: low });
  return {
    least: low,
    ...(high === undefined ? {} : { greatest: high }),
    ...(least === undefined ? { isUsual: true as const } : {}),
  };
}

/** Settings of other rules: kept, since the user may come back to them, but without effect. */
function tellUnasked(written: WrittenBorders, rule: BorderRule, hasBlank: boolean, reader: Reader): void {
  for (const key of ['amount', 'ratio', 'share', 'step'] as const) {
    const rules = ASKED_BY[key][hasBlank ? 'given' : 'fitted'];
    if (written[key] === undefined || rules.includes(rule)) continue;
    const frame = hasBlank ? ' in a frame of given size' : ' in a frame made to fit';
    reader.say({
      code: 'border-setting-not-used',
      severity: 'note',
      at: `borders.${key}`,
      message: `The rule "${rule}" does not ask for "${key}"${rules.length === 0 ? frame : ''}, so it changes nothing${rules.length === 0 ? '' : `; ${rules.map((one) => `"${one}"`).join(' and ')} would`}.`,
      fix: { label: 'Take it away', edits: [{ at: `borders.${key}`, value: undefined }] },
    });
  }
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
