/** The frame: blank, rabbet, sight size and outside. */
import type { Job } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import type { Section } from './section';
import { rowsText, sizeRow, type Row, type Words } from './words';

export function frameSection({ frame: { rabbetDepth } }: Job, layout: Layout, words: Words): Section {
  const { frame, sizeName, derivations } = layout;
  const { length } = words;
  const rows: Row[] = [
    ...sizeRow('Frame size (blank)', derivations, 'frame.blank', words),
    ['', '', sizeName === undefined ? 'not sold ready-made' : `sold ready-made: ${sizeName}`],
    ...sizeRow('Rabbet', derivations, 'frame.rabbet', words),
    ...sizeRow('Sight size', derivations, 'frame.sight', words),
    ...sizeRow('Outside', derivations, 'frame.outside', words),
    ['Moulding', length(frame.mouldingWidth), 'width of its face'],
    ...(rabbetDepth === undefined ? [] : [depthRow(rabbetDepth, words)]),
    ['Hidden border', length(frame.hidden), `lip ${length(frame.lip)} − allowance ${length(frame.allowance)} / 2`],
  ];
  return { heading: 'Frame', lines: rowsText(rows, 2, words) };
}

function depthRow(depth: number, { length }: Words): Row {
  return ['Rabbet depth', length(depth), 'as given; holds glazing, mat, picture, mount board and backing'];
}
