/** The parts of the proof: pictures as cards, layers with their bevels; y down from the frame's upper left. */
import { heightOf, widthOf, type Box } from '../../core/geometry/box';
import { boxOutline } from '../../core/geometry/outline';
import { pathData } from '../../core/geometry/path-data';
import type { LayoutLayer, PlacedPicture, PlacedWindow } from '../../core/layout/layout';
import { element, escaped, numberText, textElement } from './xml';
import { lineShapes } from './face-lines';
import { FINE, type Place } from './place';
import { inkOn } from './shade';
import { bevelOf } from './slopes';

const CARD = '#c9c5bb';
const PAPER = '#fbfaf6';

/** A neutral card for each picture, the paper round the image where the sheet has margins; then the titles on them. */
export function pictureCards(
  windows: readonly PlacedWindow[],
  pictures: ReadonlyMap<number, string>,
  place: Place,
): readonly string[] {
  // A picture spread over several windows lies behind all of them: no card may cover another's title or its picture.
  const titled = windows.filter(({ picture }) => !picture || !pictures.has(picture.index));
  return [
    ...windows.flatMap(({ picture }) => (picture ? card(picture, place) : [])),
    ...windows.flatMap((window) => photograph(window, pictures, place)),
    ...titled.flatMap(({ title, window, picture }) => words(title, window, picture ? CARD : PAPER, place)),
    ...windows.flatMap(({ parts = [] }) => parts.flatMap(({ title, box }) => words(title, box, PAPER, place))),
  ];
}

function card(picture: PlacedPicture, place: Place): readonly string[] {
  const named = { 'data-picture': picture.index + 1 };
  return [
    element('rect', { ...rectangle(picture.sheet, place), fill: PAPER, class: 'sheet', ...named }),
    element('rect', { ...rectangle(picture.image, place), fill: CARD, class: 'image', ...named }),
  ];
}

/** The picture itself where its file was read, stretched to its measured image, turned with its window, and shown as far as that goes. */
function photograph(placed: PlacedWindow, pictures: ReadonlyMap<number, string>, place: Place): readonly string[] {
  const { picture } = placed;
  const href = picture && pictures.get(picture.index);
  if (!picture || href === undefined) return [];
  const clip = `window-${placed.name}`;
  const shape = placed.layers.at(-1)?.outlines?.opening;
  const opening = shape
    ? element('path', { d: pathData(shape, place, FINE) })
    : element('rect', rectangle(placed.window, place));
  return [
    element('clipPath', { id: clip }, [opening]),
    element('g', { 'clip-path': `url(#${clip})` }, [
      element('image', {
        ...turnedRectangle(picture, place),
        preserveAspectRatio: 'none',
        href,
        class: 'photograph',
      }),
    ]),
  ];
}

/** Where an image lies before it is turned about its middle; with y down a turn to the left is negative. */
function turnedRectangle({ image, turned = 0 }: PlacedPicture, place: Place): Record<string, string | number> {
  if (turned === 0) return rectangle(image, place);
  const middle = place({ x: (image.left + image.right) / 2, y: (image.bottom + image.top) / 2 });
  const [width, height] = turned === 180 ? [widthOf(image), heightOf(image)] : [heightOf(image), widthOf(image)];
  return {
    x: middle.x - width / 2,
    y: middle.y - height / 2,
    width,
    height,
    transform: `rotate(${-turned} ${numberText(middle.x)} ${numberText(middle.y)})`,
  };
}

/** Below this a title cannot be read, mm. */
const SMALLEST_TITLE = 2.5;

/** A title in the middle of a box, as large as it allows; what does not fit is cut with …. */
function words(title: string, box: Box, ground: string, place: Place): readonly string[] {
  if (title === '') return [];
  const signs = Array.from(title);
  const size = Math.min(8, heightOf(box) * 0.3, Math.max(SMALLEST_TITLE, (widthOf(box) * 1.5) / signs.length));
  const most = Math.floor((widthOf(box) * 1.5) / size);
  const shown = signs.length > most ? `${signs.slice(0, Math.max(0, most - 1)).join('')}…` : title;
  const middle = place({ x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 });
  const style = { 'font-size': size, 'text-anchor': 'middle', fill: inkOn(ground) };
  // Hovering tells the whole of a title that was cut short.
  const whole = shown === title ? [] : [textElement('title', {}, title)];
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
  const face = [
    pathData(boxOutline(sheet), place, FINE),
    ...openings.map(({ face: box, outlines }) => pathData(outlines?.face ?? boxOutline(box), place, FINE)),
  ].join(' ');
  const bevels = layer.bevel.direction === 'reverse' ? [] : openings.flatMap((cut) => bevelOf(cut, layer.core, place));
  return element('g', { class: 'layer', 'data-layer': layer.number }, [
    ...bevels,
    element('path', { d: face, fill: layer.colour, 'fill-rule': 'evenodd', class: 'face' }),
    ...(index === 0 ? lineShapes(windows, layer, place) : []),
    ...openings.map(({ name, opening, outlines }) =>
      element(outlines ? 'path' : 'rect', {
        ...(outlines ? { d: pathData(outlines.opening, place, FINE) } : rectangle(opening, place)),
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

export function rectangle(box: Box, place: Place): { x: number; y: number; width: number; height: number } {
  const corner = place({ x: box.left, y: box.top });
  return { ...corner, width: widthOf(box), height: heightOf(box) };
}
