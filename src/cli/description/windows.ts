/** The windows: their sizes in every layer, what they do to the picture, and where they lie. */
import { counted } from '../../core/phrases';
import { heightOf, SIDES, sizeOf, widthOf, type PerSide, type Side } from '../../core/geometry/box';
import { areaOf } from '../../core/geometry/outline';
import type { Job } from '../../core/job/job';
import type { Layout, PlacedLine, PlacedPicture, PlacedWindow } from '../../core/layout/layout';
import { lineMeasures } from '../../core/layout/line-words';
import { columns, paragraph } from '../print/text';
import { marked, sumsOf } from './borders';
import type { Section } from './section';
import { shapeRows } from './shapes';
import { rowsText, sizeRow, type Row, type Words } from './words';

/** Windows of the same sizes stand together. */
export function windowsSection(job: Job, layout: Layout, words: Words): Section {
  const alike = new Map<string, { names: string[]; lines: string[] }>();
  layout.windows.forEach((window, index) => {
    const lines = rowsText(windowRows(job, layout, window, index, words), 5, words);
    const key = lines.join('\n');
    const group = alike.get(key);
    if (group) group.names.push(window.name);
    else alike.set(key, { names: [window.name], lines });
  });
  const lines = [...alike.values()].flatMap(({ names, lines }) => {
    const count = names.length > 1 ? ` (${counted(names.length, 'window')})` : '';
    return [...paragraph(names.join(', ') + count, 2, words.width), ...lines];
  });
  return { heading: 'Windows, as the openings of the layers', lines };
}

function windowRows(job: Job, layout: Layout, window: PlacedWindow, index: number, words: Words): Row[] {
  const bottom = layout.layers.length - 1;
  const above = layout.layers.slice(0, bottom).toReversed();
  return [
    ...sizeRow('Window', layout.derivations, `windows[${index}].window`, words),
    ...shapeRows(job, window, words),
    ...sizeRow('At the face', layout.derivations, `windows[${index}].windowAtFace`, words),
    ...above.flatMap(({ number }): Row[] => {
      const opening = window.layers[number - 1]?.opening;
      const reveal = layout.layers[number]?.reveal;
      if (!opening || !reveal) return [];
      return [[`In layer ${number}`, words.size(sizeOf(opening)), `+ reveal ${words.sides(reveal)}`]];
    }),
    ...window.lines.map((placed) => lineRow(placed, words)),
    ...(window.picture ? pictureRows(job, window, window.picture, outerSides(window, layout), words) : []),
  ];
}

/** A groove or ruled line on the face. */
function lineRow({ line }: PlacedLine, { length, showing }: Words): Row {
  const look = line.kind === 'groove' ? `slopes of ${line.angleDegrees}°` : line.colour;
  const about = `from its edge on the face of layer 1 to the middle; ${lineMeasures(line, showing)}, ${look}`;
  return [line.kind === 'groove' ? 'Groove' : 'Ruled line', length(line.distance), about];
}

/** Of one window of a spread, the sides that end the spread: beyond the others the picture goes on. */
function outerSides({ at, window, picture }: PlacedWindow, { windows }: Layout): readonly Side[] {
  if (!picture?.part) return SIDES;
  const others = windows.filter((other) => other.at === at).map((other) => other.window);
  const ends: Readonly<Record<Side, boolean>> = {
    left: !others.some(({ right }) => right <= window.left),
    top: !others.some(({ bottom }) => bottom >= window.top),
    right: !others.some(({ left }) => left >= window.right),
    bottom: !others.some(({ top }) => top <= window.bottom),
  };
  return SIDES.filter((side) => ends[side]);
}

function pictureRows(
  job: Job,
  window: PlacedWindow,
  placed: PlacedPicture,
  outer: readonly Side[],
  words: Words,
): Row[] {
  const image = job.pictures[placed.index]?.image;
  const whole = SIDES.every((side) => placed.overlap[side] === placed.hold[side]);
  const visible = image && !placed.part ? partInSight(window, placed) : undefined;
  return [
    [
      'On the image',
      '',
      words.overlap(placed.overlap, outer) + (visible === undefined ? '' : `; ${visible} of it stays in sight`),
    ],
    ...(whole
      ? []
      : [['On the sheet', '', words.overlap(placed.hold, placed.part?.way === 'split' ? SIDES : outer)] as const]),
  ];
}

/** How much of the image's area shows, such as `89.1 %`; undefined where a shape reaches past the image. */
export function partInSight(window: PlacedWindow, { image, overlap }: PlacedPicture): string | undefined {
  const outline = window.layers.at(-1)?.outlines?.opening;
  if (outline) {
    const isWithin = !window.parts && SIDES.every((side) => overlap[side] >= 0);
    return isWithin ? percent(areaOf(outline) / (widthOf(image) * heightOf(image))) : undefined;
  }
  const covered = (side: keyof PerSide) => Math.max(0, overlap[side]);
  const { width, height } = sizeOf(image);
  const across = Math.max(0, width - covered('left') - covered('right')) / width;
  const up = Math.max(0, height - covered('top') - covered('bottom')) / height;
  return percent(across * up);
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1).replace(/\.0$/, '')} %`;
}

/** From the edges of the blank to each window, as cut; with the window between them they add up to the blank. */
export function placesSection({ windows, frame }: Layout, words: Words): Section {
  const rows = windows.map((window) => [
    window.name,
    ...sumsOf(window.borders, frame.blank, words).borders.map(marked),
    aboutWindow(window),
  ]);
  return {
    heading: 'Places of the windows, from each edge of the blank',
    lines: columns([['', ...SIDES, ''], ...rows], { indent: 2, width: words.width }),
  };
}

function aboutWindow({ title, use }: PlacedWindow): string {
  return title === '' ? (use === 'picture' ? '' : use) : `“${title}”`;
}
