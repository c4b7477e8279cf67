/** Changes of the borders: giving one of them a length, and choosing another rule, without losing what the others are. */
import { SIDES, type PerSide, type Side } from '../../core/geometry/box';
import type { BorderRule, Job } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import type { Edit } from '../../core/problem';
import { exactText } from '../../core/job/exact-text';

export interface BorderChange {
  readonly edits: readonly Edit[];
  /** What has to change besides the border itself, in words; undefined when the rule takes it as it is. */
  readonly switches?: string;
}

const GIVEN = ['all', 'sides', 'left', 'right', 'top', 'bottom'] as const;

/** The borders as the job measures them. */
export function measuredBorders(job: Job, layout: Layout): PerSide {
  return job.borders.measured === 'as seen' ? layout.borders.seen : layout.borders.cut;
}

/** Gives one border a length: `text` to store, `mm` what it says. */
export function changeBorder(job: Job, layout: Layout, side: Side, text: string, mm: number): BorderChange {
  const now = measuredBorders(job, layout);
  return job.frame.blank ? changeInBlank(job, now, side, text, mm) : changeMadeToFit(job, now, side, text, mm);
}

function changeInBlank(job: Job, now: PerSide, side: Side, text: string, mm: number): BorderChange {
  const { rule } = job.borders;
  const keep = (kept: Side) => exactText(now[kept], job.units);
  if (rule === 'by-hand') {
    // The other border of the axis takes what is left.
    return { edits: [{ at: `borders.${side}`, value: text }, clear(opposite(side))] };
  }
  const upright = side === 'top' || side === 'bottom';
  if (rule === 'bottom-amount' && upright) {
    const total = now.top + now.bottom;
    const amount = side === 'top' ? total - 2 * mm : 2 * mm - total;
    return { edits: [{ at: 'borders.amount', value: exactText(amount, job.units) }, clear('top')] };
  }
  const other = upright ? 'left' : 'top';
  const edits = [
    ...GIVEN.filter((key) => key !== side && key !== other).map(clear),
    { at: 'borders.rule', value: 'by-hand' },
    { at: `borders.${other}`, value: keep(other) },
    { at: `borders.${side}`, value: text },
  ];
  return {
    edits,
    switches: `${RULE_WORDS[rule]} shares what is left over, so this makes the borders "${RULE_WORDS['by-hand'].toLowerCase()}".`,
  };
}

function changeMadeToFit(job: Job, now: PerSide, side: Side, text: string, mm: number): BorderChange {
  const { rule } = job.borders;
  const one = (key: string, value: string = text): BorderChange => ({ edits: [{ at: `borders.${key}`, value }] });
  const across = side === 'left' || side === 'right';
  if (rule === 'by-hand') return one(side);
  if (rule === 'equal') return { edits: [{ at: 'borders.all', value: text }, clear('sides'), clear('top')] };
  if (across || (rule === 'top-as-sides' && side === 'top')) return one('sides');
  if (rule === 'top-as-sides') return one('bottom');
  if (rule === 'equal-steps' && side === 'top') return one('step', exactText(mm - now.left, job.units));
  if (rule === 'bottom-amount' && side === 'bottom') return one('amount', exactText(mm - now.top, job.units));
  const keepsTop = rule === 'centred' || rule === 'bottom-amount' || rule === 'bottom-ratio' || rule === 'height-share';
  if (keepsTop && (side === 'top' || rule === 'centred')) return one('top');
  const edits = [
    clear('all'),
    clear('sides'),
    { at: 'borders.rule', value: 'by-hand' },
    ...SIDES.map((each) => ({ at: `borders.${each}`, value: each === side ? text : exactText(now[each], job.units) })),
  ];
  return {
    edits,
    switches: `${RULE_WORDS[rule]} works this border out, so this makes the borders "${RULE_WORDS['by-hand'].toLowerCase()}".`,
  };
}

/** Chooses another rule. By hand starts from the borders as they are; others drop the lengths they have no use for. */
export function chooseRule(job: Job | undefined, layout: Layout | undefined, rule: BorderRule): Edit[] {
  const start: Edit[] = [...GIVEN.map(clear), { at: 'borders.rule', value: rule }];
  if (!job || !layout) return start;
  const now = measuredBorders(job, layout);
  const write = (key: string, mm: number): Edit => ({ at: `borders.${key}`, value: exactText(mm, job.units) });
  const fixed = job.frame.blank !== undefined;
  if (rule === 'by-hand')
    return [...start, ...(fixed ? (['left', 'top'] as const) : SIDES).map((side) => write(side, now[side]))];
  if (!fixed) return [...start, write(rule === 'equal' ? 'all' : 'sides', now.left)];
  // Where a gap takes what is left, the borders have to be given.
  return sharesWhatIsLeft(job) ? [...start, write('sides', now.left), write('top', now.top)] : start;
}

/** True when a gap takes what is left between the borders. */
function sharesWhatIsLeft(job: Job): boolean {
  return JSON.stringify(job.windows ?? null).includes('"between"');
}

function clear(key: (typeof GIVEN)[number]): Edit {
  return { at: `borders.${key}`, value: undefined };
}

function opposite(side: Side): Side {
  return ({ left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const)[side];
}

export const RULE_WORDS: Readonly<Record<BorderRule, string>> = {
  centred: 'Centred',
  equal: 'All four equal',
  'bottom-amount': 'Bottom weighted by a length',
  'bottom-ratio': 'Bottom weighted by a ratio',
  'height-share': 'A share of the height left over',
  'equal-steps': 'Equal steps: sides, top, bottom',
  'equal-ratios': 'Equal ratios: sides, top, bottom',
  'top-as-sides': 'Top as wide as the sides',
  'by-hand': 'Each by hand',
};
