/** A picture that goes into its frame without a mat: what the frame covers of it, or leaves free round it. */
import { allSides, sizeOf } from '../../core/geometry/box';
import type { Layout, PlacedWindow } from '../../core/layout/layout';
import { paragraph } from '../print/text';
import type { Section } from './section';
import { partInSight } from './windows';
import { rowsText, sizeRow, type Row, type Words } from './words';

export function bareSection(layout: Layout, words: Words): Section {
  const how = layout.frame.isFloat
    ? 'The picture stands free in its frame, with a gap all round: nothing lies over its face.'
    : 'The picture goes into its frame as it is, held at the front by the lip alone.';
  const rows = [
    ...sizeRow('Seen', layout.derivations, 'windows[0].window', words),
    ...layout.windows.flatMap((window) => roundIt(layout, window, words)),
  ];
  return {
    heading: 'Without a mat',
    lines: [...paragraph(`${how} There is nothing to cut.`, 2, words.width), ...rowsText(rows, 2, words)],
  };
}

function roundIt({ frame }: Layout, window: PlacedWindow, { sides, length }: Words): Row[] {
  const { picture } = window;
  if (!picture) return [];
  const sheet = sizeOf(picture.sheet);
  const [across, up] = [frame.rabbet.width - sheet.width, frame.rabbet.height - sheet.height];
  if (frame.isFloat) {
    const gaps = { ...allSides(up / 2), left: across / 2, right: across / 2 };
    return [['Gap', '', `${sides(gaps)}, with the picture in the middle`]];
  }
  const visible = partInSight(window, picture);
  return [
    ['Under the lip', '', `${sides(picture.hold)}; ${visible} of the image stays in sight`],
    ['Play', '', `${length(across)} across and ${length(up)} up and down between the walls of the rabbet`],
  ];
}
