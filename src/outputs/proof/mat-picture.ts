/** The parts of the proof: pictures as cards, layers with their bevels, the moulding; y down from the frame's upper left. */
import { heightOf, SIDES, widthOf, type Box, type Point, type Side } from '../../core/geometry/box';
import type { LayoutLayer, PlacedWindow } from '../../core/layout/layout';
import { element, escaped, numberText, textElement } from './xml';
import { inkOn, shaded } from './shade';

/** From the front view's coordinates, y up, to the drawing's, y down. */
export type Place = (point: Point) => Point;

const CARD = '#c9c5bb';
const PAPER = '#fbfaf6';

/** A neutral card for each picture, the paper round the image where the sheet has margins; then the titles on them. */
export function pictureCards(
  windows: readonly PlacedWindow[],
  pictures: ReadonlyMap<number, string>,
  place: Place,
): readonly string[] {
  // A picture spread over several windows lies behind all of them: no card may cover another's title.
  const titled = windows.filter(({ picture }) => !picture || !pictures.has(picture.index));
  return [
    ...windows.flatMap((window) => card(window, pictures, place)),
    ...titled.flatMap((window) => words(window, place)),
  ];
}

function card(
  { name, picture, window }: PlacedWindow,
  pictures: ReadonlyMap<number, string>,
  place: Place,
): readonly string[] {
  if (!picture) return [];
  const href = pictures.get(picture.index);
  const named = { 'data-picture': picture.index + 1 };
  return [
    element('rect', { ...rectangle(picture.sheet, place), fill: PAPER, class: 'sheet', ...named }),
    element('rect', { ...rectangle(picture.image, place), fill: CARD, class: 'image', ...named }),
    ...(href === undefined ? [] : photograph(href, picture.image, window, `window-${name}`, place)),
  ];
}

/** The picture itself, stretched to its measured image and shown as far as its window goes. */
function photograph(href: string, image: Box, window: Box, clip: string, place: Place): readonly string[] {
  return [
    element('clipPath', { id: clip }, [element('rect', rectangle(window, place))]),
    element('g', { 'clip-path': `url(#${clip})` }, [
      element('image', { ...rectangle(image, place), preserveAspectRatio: 'none', href, class: 'photograph' }),
    ]),
  ];
}

/** Below this a title cannot be read, mm. */
const SMALLEST_TITLE = 2.5;

/** A title in the middle of its window, as large as it allows; what does not fit is cut with …. */
function words(window: PlacedWindow, place: Place): readonly string[] {
  const box = window.window;
  if (window.title === '') return [];
  const signs = Array.from(window.title);
  const size = Math.min(8, heightOf(box) * 0.3, Math.max(SMALLEST_TITLE, (widthOf(box) * 1.5) / signs.length));
  const most = Math.floor((widthOf(box) * 1.5) / size);
  const shown = signs.length > most ? `${signs.slice(0, Math.max(0, most - 1)).join('')}…` : window.title;
  const middle = place({ x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 });
  const style = { 'font-size': size, 'text-anchor': 'middle', fill: inkOn(window.picture ? CARD : PAPER) };
  // Hovering tells the whole of a title that was cut short.
  const whole = shown === window.title ? [] : [textElement('title', {}, window.title)];
  return [element('text', { x: middle.x, y: middle.y + size * 0.35, ...style }, [escaped(shown), ...whole])];
}

/** One layer: the bevels that show the core, then the face round all windows. */
export function layerPicture(
  layer: LayoutLayer,
  index: number,
  windows: readonly PlacedWindow[],
  sheet: Box,
  place: Place,
): string {
  const openings = windows.flatMap((window) => {
    const cut = window.layers[index];
    return cut ? [{ name: window.name, ...cut }] : [];
  });
  const face = [sheet, ...openings.map((opening) => opening.face)].map((box) => outline(corners(box), place)).join(' ');
  const bevels =
    layer.bevel.direction === 'reverse'
      ? []
      : openings.flatMap(({ name, opening, face: edge }) =>
          SIDES.map((side) => bevel(side, edge, opening, layer.core, name, place)),
        );
  return element('g', { class: 'layer', 'data-layer': layer.number }, [
    ...bevels,
    element('path', { d: face, fill: layer.colour, 'fill-rule': 'evenodd', class: 'face' }),
    ...openings.map(({ name, opening }) =>
      element('rect', {
        ...rectangle(opening, place),
        fill: 'none',
        stroke: '#000000',
        'stroke-opacity': 0.25,
        'stroke-width': 0.1,
        class: 'opening',
        'data-window': name,
      }),
    ),
  ]);
}

/** A bevel falls away into the window: the upper and left ones lie in shade, the lower and right ones in light. */
const BEVEL_LIGHT: Readonly<Record<Side, number>> = { left: -0.1, top: -0.16, right: 0.35, bottom: 0.55 };
/** A moulding stands up: its upper and left members are lit. */
const MOULDING_LIGHT: Readonly<Record<Side, number>> = { left: 0.1, top: 0.18, right: -0.12, bottom: -0.2 };

function bevel(side: Side, outer: Box, inner: Box, core: string, window: string, place: Place): string {
  return element('path', {
    d: outline(member(side, outer, inner), place),
    fill: shaded(core, BEVEL_LIGHT[side]),
    class: 'bevel',
    'data-window': window,
    'data-side': side,
  });
}

/** Four members of a frame, mitred at the corners. */
export function moulding(outer: Box, inner: Box, colour: string, place: Place): string {
  const members = SIDES.map((side) =>
    element('path', {
      d: outline(member(side, outer, inner), place),
      fill: shaded(colour, MOULDING_LIGHT[side]),
      stroke: shaded(colour, -0.35),
      'stroke-width': 0.15,
      'stroke-linejoin': 'round',
      class: 'member',
      'data-side': side,
    }),
  );
  return element('g', { class: 'frame' }, members);
}

/** The mitred strip between two boxes on one side. */
function member(side: Side, outer: Box, inner: Box): readonly Point[] {
  const [a, b, c, d] = corners(outer);
  const [e, f, g, h] = corners(inner);
  if (side === 'bottom') return [a, b, f, e];
  if (side === 'right') return [b, c, g, f];
  if (side === 'top') return [c, d, h, g];
  return [d, a, e, h];
}

/** Anticlockwise from the lower left. */
function corners({ left, bottom, right, top }: Box): readonly [Point, Point, Point, Point] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

function outline(points: readonly Point[], place: Place): string {
  const at = points.map(place).map(({ x, y }) => `${numberText(x)} ${numberText(y)}`);
  return `M${at.join('L')}Z`;
}

export function rectangle(box: Box, place: Place): { x: number; y: number; width: number; height: number } {
  const corner = place({ x: box.left, y: box.top });
  return { ...corner, width: widthOf(box), height: heightOf(box) };
}
