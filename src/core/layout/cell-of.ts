/** Turns the job's tree of windows into cells of known size. */
import type { Arrangement, Job } from '../job/job';
import type { Cell, Grid, Group, Line } from './cells';
import { leafOf } from './leaf';
import { ringOf } from './ring-cell';
import { spreadOf } from './spread-cell';

const ALIGN = {
  left: 'start',
  top: 'start',
  centre: 'centre',
  right: 'end',
  bottom: 'end',
  baseline: 'baseline',
} as const;

/** The cell of an arrangement and all below it. */
export function cellOf(item: Arrangement, job: Job, groups: readonly Group[] = []): Cell {
  switch (item.kind) {
    case 'window':
      return leafOf(item, job, groups);
    case 'spread':
      return spreadOf(item, job, groups);
    case 'row':
    case 'column': {
      const axis = item.kind === 'row' ? 'across' : 'up';
      const shape = { kind: 'line', axis, gap: item.gap, gapAt: `${item.at}.gap`, align: ALIGN[item.align] } as const;
      return withCells(shape, item.items, job, groups);
    }
    case 'grid': {
      const shape = {
        kind: 'grid',
        columns: item.columns,
        gap: { across: item.columnGap, up: item.rowGap },
        gapAt: { across: item.columnGapAt, up: item.rowGapAt },
        align: { across: ALIGN[item.alignColumns], up: ALIGN[item.alignRows] },
      } as const;
      return withCells(shape, item.items, job, groups);
    }
    case 'ring':
      return ringOf(item, job, groups);
  }
}

function withCells(
  shape: Omit<Line, 'cells'> | Omit<Grid, 'cells'>,
  items: readonly Arrangement[],
  job: Job,
  groups: readonly Group[],
): Group {
  const cells: Cell[] = [];
  const group = { ...shape, cells } as Group;
  const inside = [...groups, group];
  cells.push(...items.map((item) => cellOf(item, job, inside)));
  return group;
}
