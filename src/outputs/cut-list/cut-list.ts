/** The bevel-cut coordinate list as a CSV file: decimals to calculate with, fractions to read. */
import { good, type Result } from '../../core/problem';
import { decimalText, showLength, type Showing } from '../../core/units';
import { titleOf, type OutputContext } from '../context';
import { csvText, type Cell } from './csv';
import { cutRows, type CutRow } from './rows';

/** Decimals of a unit that lose less than a thousandth of a hundredth of a millimetre. */
const DIGITS: Readonly<Record<Showing['unit'], number>> = { in: 7, cm: 6, mm: 5 };

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
function length(name: string, of: (row: CutRow) => number): readonly Field[] {
  return [
    { name, of: (row, { showing }) => Number(decimalText(of(row), showing.unit, DIGITS[showing.unit])) },
    { name: `${name} shown`, of: (row, { showing }) => ({ quoted: shownText(of(row), showing) }) },
  ];
}

/** `about` where the step of showing rounds by more than a thousandth of an inch; plain signs for any spreadsheet. */
function shownText(mm: number, showing: Showing): string {
  const shown = showLength(mm, showing);
  return shown.rounded ? `about ${shown.withUnit}` : shown.withUnit;
}

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
  ...length('x1', ({ line }) => line.start.x),
  ...length('y1', ({ line }) => line.start.y),
  ...length('x2', ({ line }) => line.end.x),
  ...length('y2', ({ line }) => line.end.y),
  text('bevel side', ({ line }) => line.bevelSide),
  text('slopes to', ({ line }) => line.slopesTo),
  { name: 'bevel angle (degrees)', of: ({ layer }) => layer.bevel.angleDegrees },
  ...length('guide setting', ({ line }) => line.guideSetting),
  ...length('overcut', ({ line }) => line.overcut),
  yes('move guide', ({ step }) => step.moveGuide),
  yes('turn board', ({ step }) => step.turnBoard),
  yes('drops out', ({ step }) => step.dropsOut),
];

/** Makes the list in the chosen view, in UTF-8; x to the right and y up from the lower left corner of that view. */
export function makeCutList(context: OutputContext): Promise<Result<Uint8Array>> {
  const header = FIELDS.map(({ name }) => name);
  const rows = cutRows(context).map((row) => FIELDS.map((field) => field.of(row, context)));
  return Promise.resolve(good(new TextEncoder().encode(csvText([header, ...rows]))));
}
