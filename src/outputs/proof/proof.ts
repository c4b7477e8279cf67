/** The proof picture: the finished mat, or the picture without one, in its frame, front view, true size, as an SVG in millimetres. */
import { boxAt, grow, type Box, type Size } from '../../core/geometry/box';
import { good, type Result } from '../../core/problem';
import { lengthText } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import { layerPicture, pictureCards, rectangle } from './mat-picture';
import type { Place } from './place';
import { shaded } from './shade';
import { moulding } from './slopes';
import { element, numberText, textElement } from './xml';

/** What is seen through a window behind or beside the picture. */
const MOUNT = '#efece3';

/** How dark the gap round a picture in a float frame is. */
const WELL = -0.6;

/** Makes the picture. Nothing in it runs, nothing is fetched: pictures are held in it, or shown as cards with their titles. */
export function makeProof(context: OutputContext): Promise<Result<Uint8Array>> {
  return Promise.resolve(good(new TextEncoder().encode(proofText(context))));
}

function proofText(context: OutputContext): string {
  const { layout } = context;
  const { blank, outside, sight, colour } = layout.frame;
  const sheet = boxAt({ x: 0, y: 0 }, blank);
  const frame = centred(outside, sheet);
  const place: Place = ({ x, y }) => ({ x: x - frame.left, y: frame.top - y });
  const { width, height } = outside;
  const layers = layout.layers.map((layer, index) => layerPicture(layer, index, layout.windows, sheet, place));
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${numberText(width)}mm`,
      height: `${numberText(height)}mm`,
      viewBox: `0 0 ${numberText(width)} ${numberText(height)}`,
      role: 'img',
      'font-family': 'Inter, "Helvetica Neue", Arial, sans-serif',
    },
    [
      textElement('title', {}, titleOf(context)),
      textElement('desc', {}, description(context)),
      layout.frame.isFloat
        ? element('rect', { ...rectangle(centred(sight, sheet), place), fill: shaded(colour, WELL), class: 'well' })
        : element('rect', { ...rectangle(sheet, place), fill: MOUNT, class: 'mount' }),
      ...pictureCards(layout.windows, context.pictures, place),
      // From the bottom layer up: each covers what lies under it but for its openings.
      ...layers.reverse(),
      moulding(frame, centred(sight, sheet), colour, place),
    ],
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}

function centred(size: Size, sheet: Box): Box {
  const across = (size.width - (sheet.right - sheet.left)) / 2;
  const up = (size.height - (sheet.top - sheet.bottom)) / 2;
  return grow(sheet, { left: across, right: across, top: up, bottom: up });
}

function description({ layout, showing }: OutputContext): string {
  const { blank } = layout.frame;
  const size = `${lengthText(blank.width, showing)} × ${lengthText(blank.height, showing)}`;
  if (layout.layers.length === 0) return `Front view at true size: the picture in its frame without a mat, ${size}.`;
  const windows = layout.windows.length === 1 ? 'one window' : `${layout.windows.length} windows`;
  const layers = layout.layers.length === 1 ? 'one layer' : `${layout.layers.length} layers`;
  return `Front view at true size: a mat of ${layers} with ${windows}, ${size}, in its frame.`;
}
