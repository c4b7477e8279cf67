/** How each size of a layout was reached, as sums in words that can be followed with a pencil. */
import { heightOf, SIDES, widthOf, type PerSide, type Side } from '../geometry/box';
import type { Job, QuarterTurn } from '../job/job';
import { lengthText, showingOf } from '../units';
import type { Leaf } from './cells';
import { gapOrigin } from './gaps';
import { frameSums, pair, type ShowLength } from './derive-frame';
import type { Derivation, PlacedLayout } from './layout';

/** Frame, borders, layers, windows and gaps, in that order. */
export function derivationsOf(job: Job, layout: PlacedLayout, leaves: readonly Leaf[]): Derivation[] {
  const show: ShowLength = (mm) => lengthText(mm, showingOf(job));
  return [
    ...frameSums(job, layout, (side) => fittedSum(layout, side, show), show),
    ...borderSums(job, layout, show),
    ...layerSums(layout, show),
    ...layout.windows.flatMap((window, index) => windowSums(job, layout, index, leaves[index], show)),
    ...layout.gaps.map((gap, index) => ({
      name: `gaps[${index}]`,
      label: `Gap between ${gap.between.map((window) => layout.windows[window]?.name).join(' and ')}`,
      value: gap.gap,
      how: `${gapOrigin(gap)}; bridge in the top layer ${show(gap.bridge)}, on its face ${show(gap.faceBridge)}`,
    })),
  ];
}

/** Made to fit, the frame is what stands in it with the borders round that. */
function fittedSum({ content, borders: { cut } }: PlacedLayout, side: 'width' | 'height', show: ShowLength): string {
  return side === 'width'
    ? `${show(cut.left)} + ${show(widthOf(content))} + ${show(cut.right)}`
    : `${show(cut.top)} + ${show(heightOf(content))} + ${show(cut.bottom)}`;
}

const RULES: Record<Job['borders']['rule'], string> = {
  centred: 'centred: left = right, top = bottom',
  equal: 'all four equal',
  'bottom-amount': 'bottom = top + amount',
  'bottom-ratio': 'bottom = ratio × top',
  'height-share': 'top and bottom share the leftover height',
  'equal-steps': 'sides, top and bottom grow by equal steps',
  'equal-ratios': 'sides, top and bottom grow by equal ratios',
  'top-as-sides': 'top as wide as the sides, the rest at the bottom',
  'by-hand': 'given by hand',
};

function borderSums(job: Job, layout: PlacedLayout, show: ShowLength): Derivation[] {
  const { borders, topBorders, frame } = layout;
  const free = job.windows === undefined;
  const rule = free ? '' : `; ${RULES[job.borders.rule]}, measured ${job.borders.measured}`;
  const left = (side: keyof PerSide) => {
    const upright = side === 'top' || side === 'bottom';
    const whole = upright ? frame.blank.height : frame.blank.width;
    const inner = upright ? heightOf(layout.content) : widthOf(layout.content);
    return `${show(whole)} − windows and gaps ${show(inner)} leaves ${show(whole - inner)} for both sides${rule}`;
  };
  const sums = (name: string, label: string, values: PerSide, how: (side: keyof PerSide) => string): Derivation[] =>
    SIDES.map((side) => ({ name: `${name}.${side}`, label: `${label}, ${side}`, value: values[side], how: how(side) }));
  return [
    ...sums('borders.cut', 'Border as cut', borders.cut, left),
    ...sums(
      'borders.seen',
      'Border as seen',
      borders.seen,
      (side) => `${show(borders.cut[side])} − (lip ${show(frame.lip)} − allowance ${show(frame.allowance)} / 2)`,
    ),
    ...sums(
      'topBorders.cut',
      'Border of the top layer',
      topBorders.cut,
      (side) => `${show(borders.cut[side])} − reveals ${show(borders.cut[side] - topBorders.cut[side])}`,
    ),
  ];
}

function layerSums(layout: PlacedLayout, show: ShowLength): Derivation[] {
  return layout.layers.flatMap((layer, index) => {
    const name = `layers[${index}]`;
    const { run, angleDegrees, direction } = layer.bevel;
    const bevel = {
      name: `${name}.bevel.run`,
      label: `Bevel run of layer ${layer.number}`,
      value: run,
      how:
        angleDegrees === 0
          ? 'a straight cut has no bevel'
          : `${show(layer.thickness)} × tan ${angleDegrees}°, ${direction} bevel`,
    };
    if (index === 0) return [bevel];
    const strips = SIDES.map((side) => ({
      name: `${name}.shownStrip.${side}`,
      label: `Strip of layer ${layer.number} shown, ${side}`,
      value: layer.shownStrip[side],
      how: `reveal ${show(layer.reveal[side])}${direction === 'standard' ? ` − bevel ${show(run)}` : ', the bevel is hidden'}`,
    }));
    return [bevel, ...strips];
  });
}

function windowSums(
  job: Job,
  layout: PlacedLayout,
  index: number,
  leaf: Leaf | undefined,
  show: ShowLength,
): Derivation[] {
  const window = layout.windows[index];
  if (!window || !leaf) return [];
  const label = `Window ${window.name}${window.title === '' ? '' : ` "${window.title.slice(0, 40)}"`}`;
  const how = (side: 'width' | 'height') => sizeSum(job, window.picture, leaf, side, layout, show);
  const face = { width: widthOf(window.windowAtFace), height: heightOf(window.windowAtFace) };
  return [
    ...pair(`windows[${index}].window`, `${label}, opening`, leaf.size, how),
    ...pair(
      `windows[${index}].windowAtFace`,
      `${label}, at the face`,
      face,
      (side) =>
        `opening ${show(leaf.size[side])}${face[side] > leaf.size[side] ? ` + 2 × bevel ${show(layout.layers.at(-1)?.bevel.run ?? 0)}` : ''}`,
    ),
  ];
}

function sizeSum(
  job: Job,
  placed: PlacedLayout['windows'][number]['picture'],
  leaf: Leaf,
  side: 'width' | 'height',
  layout: PlacedLayout,
  show: ShowLength,
): string {
  if (leaf.from === 'written') return 'as given';
  if (leaf.from === 'written at face')
    return `given at the face, less 2 × bevel ${show(layout.layers.at(-1)?.bevel.run ?? 0)}`;
  const picture = placed && job.pictures[placed.index];
  if (!picture) return 'as given';
  const covered = picture.overlapFrom === 'image' ? picture.image : picture.sheet;
  const [from, to] = sidesBehind(side, placed.turned ?? 0);
  const base = from === 'left' || from === 'right' ? covered.width : covered.height;
  const terms = [picture.overlap[from], picture.overlap[to]].map((overlap) =>
    overlap < 0 ? `+ ${show(-overlap)} shown` : `− ${show(overlap)} covered`,
  );
  const part = leaf.picture?.part;
  const whole = `${picture.overlapFrom} ${show(base)} ${terms.join(' ')}`;
  return part ? partSum(leaf, part, side, whole, show) : whole;
}

/** Which sides of a picture lie at the left and the right of its window, or at the top and the bottom, when it is turned anticlockwise. */
function sidesBehind(side: 'width' | 'height', turned: QuarterTurn): readonly [Side, Side] {
  const round = ['left', 'top', 'right', 'bottom'] as const;
  const start = (side === 'width' ? 0 : 1) + turned / 90;
  return [round[start % 4] ?? 'left', round[(start + 2) % 4] ?? 'right'];
}

/** One window of a spread: its part of what the whole picture shows, less the bars that hide some of it. */
function partSum(
  leaf: Leaf,
  part: NonNullable<NonNullable<Leaf['picture']>['part']>,
  side: 'width' | 'height',
  whole: string,
  show: ShowLength,
): string {
  const line = leaf.groups.at(-1);
  if (line?.kind !== 'line' || (line.axis === 'across') !== (side === 'width')) return whole;
  const parts = line.cells.map((cell) => (cell.kind === 'leaf' ? cell.size[side] : 0));
  const sum = parts.reduce((a, b) => a + b, 0);
  const percent = Number(((100 * leaf.size[side]) / sum).toFixed(2));
  const bars = part.way === 'hidden' ? ` − ${part.count - 1} × bar ${show(Number(line.gap))}` : ', bars hide nothing';
  return `part ${part.index + 1} of ${part.count}, ${percent} % of ${show(sum)}: ${whole}${bars}`;
}
