/** The bevel-cut coordinate list as a CSV file: decimals to calculate with, fractions to read. */
import type { Point } from '../../core/geometry/box';
import { lineWord } from '../../core/layout/line-words';
import { good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { csvText, type Cell } from '../../core/tables/csv-text';
import { decimalCell, shownCell } from '../../core/tables/length-cells';
import { cutRows, type CutRow } from './rows';

interface Field {
  readonly name: string;
  readonly of: (row: CutRow, context: OutputContext) => Cell;
}

function text(name: string, of: (row: CutRow, context: OutputContext) => string): Field {
  return { name, of };
}

function yes(name: string, of: (row: CutRow) => boolean): Field {
  return { name, of: (row) => (of(row) ? 'yes' : 'no') };
}

/** Two columns a length: the decimal number, and the quoted text with its unit as one reads it at the bench. */
function length(name: string, of: (row: CutRow) => number | undefined): readonly Field[] {
  return [
    decimal(name, of),
    {
      name: `${name} shown`,
      of: (row, { showing }) => {
        const mm = of(row);
        return mm === undefined ? { quoted: '' } : shownCell(mm, showing);
      },
    },
  ];
}

/** The decimal number alone; empty where there is none. */
function decimal(name: string, of: (row: CutRow) => number | undefined): Field {
  return {
    name,
    of: (row, { showing }) => {
      const mm = of(row);
      return mm === undefined ? '' : decimalCell(mm, showing);
    },
  };
}

/** Half axes of the circle or ellipse that a piece is part of. */
function radii({ edge }: CutRow): Point | undefined {
  if (edge.kind === 'line') return undefined;
  return edge.kind === 'arc' ? { x: edge.radius, y: edge.radius } : edge.radii;
}

function centre({ edge }: CutRow): Point | undefined {
  return edge.kind === 'line' ? undefined : edge.centre;
}

const FORMS = { line: 'line', arc: 'arc of a circle', oval: 'arc of an ellipse' } as const;

const FIELDS: readonly Field[] = [
  text('job', (_, context) => titleOf(context)),
  text('view', ({ view }) => view),
  { name: 'layer', of: ({ layer }) => layer.number },
  text('board', ({ layer }) => layer.board),
  { name: 'step', of: ({ step }) => step.number },
  text('window', ({ window }) => window),
  text('title', ({ title }) => title),
  text('cut', ({ cut }) => cut),
  text('unit', (_, { showing }) => showing.unit),
  ...length('x1', ({ edge }) => edge.from.x),
  ...length('y1', ({ edge }) => edge.from.y),
  ...length('x2', ({ edge }) => edge.to.x),
  ...length('y2', ({ edge }) => edge.to.y),
  text('bevel side', ({ line }) => line.bevelSide),
  text('slopes to', ({ line }) => line.slopesTo),
  { name: 'bevel angle (degrees)', of: angleOf },
  ...length('guide setting', ({ line }) => line.guideSetting),
  ...length('overcut at start', ({ line }) => line.overcutStart),
  ...length('overcut at end', ({ line }) => line.overcutEnd),
  yes('move guide', ({ step }) => step.moveGuide),
  yes('turn board', ({ step }) => step.turnBoard),
  yes('falls out', ({ step, piece, pieces }) => step.dropsOut && piece === pieces),
  { name: 'piece', of: ({ piece }) => piece },
  text('form', ({ edge }) => FORMS[edge.kind]),
  decimal('centre x', (row) => centre(row)?.x),
  decimal('centre y', (row) => centre(row)?.y),
  decimal('radius across', (row) => radii(row)?.x),
  decimal('radius up', (row) => radii(row)?.y),
  decimal('distance from the ellipse', ({ edge }) => (edge.kind === 'oval' ? edge.away : undefined)),
  {
    name: 'sweep (degrees, anticlockwise)',
    of: ({ edge }) => (edge.kind === 'line' ? '' : Number(((edge.sweep * 180) / Math.PI).toFixed(7))),
  },
  text('makes', ({ made }) => (made ? lineWord(made) : 'window')),
  ...length('line width', ({ made }) => made?.width),
  ...length('depth', ({ made }) => (made?.kind === 'groove' ? made.depth : undefined)),
  text('ink', ({ made }) => (made?.kind === 'ruled' ? made.colour : '')),
];

function angleOf({ made, layer }: CutRow): Cell {
  if (!made) return layer.bevel.angleDegrees;
  return made.kind === 'groove' ? made.angleDegrees : '';
}

/** Makes the list in the chosen view, in UTF-8; x to the right and y up from the lower left corner of that view. */
export function makeCutList(context: OutputContext): Promise<Result<Uint8Array>> {
  const header = FIELDS.map(({ name }) => name);
  const rows = cutRows(context).map((row) => FIELDS.map((field) => field.of(row, context)));
  return Promise.resolve(good(new TextEncoder().encode(csvText([header, ...rows]))));
}
