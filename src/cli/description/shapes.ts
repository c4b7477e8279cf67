/** The shape of a window that is no rectangle: its measures, and the area and length of its opening. */
import { sizeOf, type Size } from '../../core/geometry/box';
import { lengthOfEdge } from '../../core/geometry/edge';
import { areaOf, lengthOf } from '../../core/geometry/outline';
import { itemAt } from '../../core/job/item-at';
import type { Job, JoinedPart, WindowItem, WindowShape } from '../../core/job/job';
import type { PlacedWindow } from '../../core/layout/layout';
import { drawnIn, measureOf } from '../../core/layout/leaf-shape';
import { settingText } from '../../core/layout/line-words';
import { areaText } from '../../core/units';
import { counted } from '../../core/phrases';
import type { Row, Words } from './words';

/** None of a plain rectangle. */
export function shapeRows(job: Job, window: PlacedWindow, words: Words): Row[] {
  const outline = window.layers.at(-1)?.outlines?.opening;
  const item = itemAt(job, window.at);
  if (!outline || item?.kind !== 'window') return [];
  const [kind, measures] = ofWindow(item, sizeOf(window.main ?? window.window), words);
  // A parallel curve of what is told at the face is the opening, and has other measures.
  const where = job.measuredAt === 'face' && item.size && measures !== '' ? `${measures}, at the face` : measures;
  const long = `edge ${settingText(lengthOf(outline), words.showing)} long`;
  return [
    ['Shape', kind, where],
    ...item.joined.map((part): Row => ['Joined to it', ...ofPart(part, words)]),
    ['Opening', areaText(areaOf(outline), words.showing), long],
  ];
}

type Told = readonly [kind: string, measures: string];

function ofWindow(item: WindowItem, placed: Size, words: Words): Told {
  return told(item, item.size ?? placed, words);
}

function ofPart(part: JoinedPart, words: Words): Told {
  const [kind, measures] = told(part, part.size, words);
  const size = words.size(part.size);
  return [kind, [part.shape.kind === 'oval' ? '' : size, measures].filter((text) => text !== '').join(', ')];
}

/** `size` as it stands on the mat, turned already. */
function told(
  { shape, turned, mirrored }: Pick<WindowItem, 'shape' | 'turned' | 'mirrored'>,
  size: Size,
  words: Words,
): Told {
  const upright = turned % 180 === 0 ? size : { width: size.height, height: size.width };
  const [kind, measures] = inWords(shape, upright, words);
  const changes = [
    ...(mirrored ? ['mirrored'] : []),
    ...(turned === 0 || shape.kind === 'rectangle' ? [] : [`turned ${turned}°`]),
  ];
  return [kind, [measures, ...changes].filter((text) => text !== '').join(', ')];
}

function inWords(shape: WindowShape, size: Size, words: Words): Told {
  const fine = (mm: number) => settingText(mm, words.showing);
  const { width, height } = size;
  switch (shape.kind) {
    case 'rectangle':
      return ['rectangle', ''];
    case 'oval': {
      const kind = Math.abs(width - height) < 1e-9 ? 'circle' : 'oval';
      const axes = kind === 'circle' ? `${fine(width)} across` : `axes ${fine(width)} and ${fine(height)}`;
      return [kind, axes + (shape.reveal === 'axes' ? ', each layer with longer axes' : '')];
    }
    case 'arch': {
      const rise = measureOf(shape, size)?.value ?? 0;
      return ['arch', `rise ${fine(rise)}, radius ${fine((width ** 2 / 4 + rise ** 2) / (2 * rise))}`];
    }
    case 'pointed': {
      const rise = measureOf(shape, size)?.value ?? 0;
      return ['pointed arch', `rise ${fine(rise)}, radius ${fine((width ** 2 / 4 + rise ** 2) / width)}`];
    }
    case 'polygon': {
      const [side] = drawnIn(shape, size).outline;
      return ['polygon', `${shape.sides} sides of ${fine(side ? lengthOfEdge(side) : 0)}`];
    }
    case 'rounded':
      return ['rounded corners', `radius ${fine(shape.radius)}`];
    case 'scooped':
      return ['hollow corners', `radius ${fine(shape.radius)}`];
    case 'cut-corners':
      return ['cut corners', `${fine(shape.cut)} off each side`];
    case 'stepped':
      return ['stepped corners', `${counted(shape.count, 'step')} of ${fine(shape.step)}`];
    case 'outline':
      return ['own outline', ''];
  }
}
