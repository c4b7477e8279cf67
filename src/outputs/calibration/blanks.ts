/** Lines to write measures on, each under its name. */
import type { UnitName } from '../../bridge';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';

const ROWS: readonly (readonly string[])[] = [
  ['Cutter', 'Board', 'Its thickness', 'Date'],
  ['The scale read', 'Overcut used'],
  ['Border left', 'Border top', 'Border right', 'Border bottom'],
  ['Corner 1', 'Corner 2', 'Corner 3', 'Corner 4'],
];
const ROW = 13;
const GAP = 6;
const COLUMNS = 4;

export function blanksBlock(width: number, unit: UnitName): Block {
  return {
    height: ROWS.length * ROW + 2,
    draw: (surface, { x, y }) =>
      ROWS.forEach((names, row) =>
        drawRow(surface, names, { x, y: y - (row + 1) * ROW }, width, row === 0 ? '' : unit),
      ),
  };
}

function drawRow(
  surface: Surface,
  names: readonly string[],
  { x, y }: { x: number; y: number },
  width: number,
  unit: string,
): void {
  const each = (width + GAP) / COLUMNS;
  names.forEach((name, index) => {
    const left = x + index * each;
    surface.text(name, { x: left, y: y + ROW - 4.5 }, { size: 8 });
    surface.line({ x: left, y: y + 0.5 }, { x: left + each - GAP, y: y + 0.5 }, PENS.edge);
    const own = unit === '' && name === 'Its thickness' ? '' : unit;
    surface.text(own, { x: left + each - GAP, y: y + 1.5 }, { size: 8, align: 'right' });
  });
}
