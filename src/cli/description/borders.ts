/** The borders, as cut and as seen, so shown that they add up to the blank and to the sight size. */
import { SIDES, type PerSide, type Side, type Size } from '../../core/geometry/box';
import type { Layout } from '../../core/layout/layout';
import { showTogether, type Shown } from '../../core/units';
import { columns } from '../print/text';
import type { Section } from './section';
import type { Words } from './words';

export function bordersSection(layout: Layout, words: Words): Section {
  const { borders, topBorders, frame } = layout;
  const kinds: readonly (readonly [string, PerSide, Size])[] = [
    ['As cut', borders.cut, frame.blank],
    ['As seen', borders.seen, frame.sight],
    ...(layout.layers.length > 1
      ? ([
          ['Top layer, as cut', topBorders.cut, frame.blank],
          ['Top layer, as seen', topBorders.seen, frame.sight],
        ] as const)
      : []),
  ];
  const rows = kinds.map(([label, sides, whole]) => [label, ...sumsOf(sides, whole, words).borders.map(marked)]);
  const { across, up } = sumsOf(borders.cut, frame.blank, words);
  const how = (side: Side) => layout.derivations.find((one) => one.name === `borders.cut.${side}`)?.how ?? '';
  const hidden = `as seen = as cut − hidden border ${words.length(frame.hidden)}`;
  return {
    heading: 'Borders, from the edge to the windows',
    lines: [
      ...columns([['', ...SIDES], ...rows], { indent: 2, width: words.width }),
      ...columns(
        [
          ['Left, right', how('left')],
          ['Top, bottom', how('top')],
          ['', hidden],
          ['Across', across],
          ['Up', up],
        ],
        { indent: 2, width: words.width },
      ),
    ],
  };
}

/** The borders as shown, left, top, right, bottom, and the sums from edge to edge in which they stand. */
export function sumsOf(sides: PerSide, whole: Size, { showing, length }: Words) {
  const sum = (start: number, end: number, total: number) => {
    const shown = showTogether([start, total - start - end, end], total, showing) as [Shown, Shown, Shown];
    const whole = length(total);
    const parts = shown.map(({ withUnit }) => withUnit).join(' + ');
    return { ends: [shown[0], shown[2]], text: `${parts} ${whole.startsWith('≈') ? whole : `= ${whole}`}` };
  };
  const across = sum(sides.left, sides.right, whole.width);
  const up = sum(sides.top, sides.bottom, whole.height);
  const borders = [across.ends[0], up.ends[0], across.ends[1], up.ends[1]] as Shown[];
  return { borders, across: across.text, up: up.text };
}

/** With `≈` where it is rounded. */
export function marked({ rounded, withUnit }: Shown): string {
  return rounded ? `≈ ${withUnit}` : withUnit;
}
