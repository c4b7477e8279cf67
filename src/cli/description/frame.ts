/** The frame: blank, rabbet, sight size and outside. */
import type { Job } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import type { Section } from './section';
import { rowsText, sizeRow, type Row, type Words } from './words';

export function frameSection({ frame: { rabbetDepth } }: Job, layout: Layout, words: Words): Section {
  const { frame, sizeName, derivations } = layout;
  const { length } = words;
  const isBare = layout.layers.length === 0;
  const rows: Row[] = [
    ...sizeRow(isBare ? 'Frame size' : 'Frame size (blank)', derivations, 'frame.blank', words),
    ['', '', sizeName === undefined ? 'not sold ready-made' : `sold ready-made: ${sizeName}`],
    ...sizeRow(frame.isFloat ? 'Inside' : 'Rabbet', derivations, 'frame.rabbet', words),
    ...sizeRow('Sight size', derivations, 'frame.sight', words),
    ...sizeRow('Outside', derivations, 'frame.outside', words),
    ['Moulding', length(frame.mouldingWidth), 'width of its face'],
    ...(rabbetDepth === undefined ? [] : [depthRow(rabbetDepth, isBare, words)]),
    ...(isBare ? [] : [hiddenRow(layout, words)]),
  ];
  return { heading: 'Frame', lines: rowsText(rows, 2, words) };
}

function depthRow(depth: number, isBare: boolean, { length }: Words): Row {
  const holds = isBare
    ? 'the picture and all that lies before and behind it'
    : 'glazing, mat, picture, mount board and backing';
  return ['Rabbet depth', length(depth), `as given; holds ${holds}`];
}

function hiddenRow({ frame: { hidden, lip, allowance } }: Layout, { length }: Words): Row {
  return ['Hidden border', length(hidden), `lip ${length(lip)} − allowance ${length(allowance)} / 2`];
}
