/** Plans of sheets for the tests of papers: of jobs and made by hand, in inches and millimetres, with trim, saw and windows. */
import type { SheetPlans } from '../../../src/bridge';
import type { Job } from '../../../src/core/job/job';
import type { Layout } from '../../../src/core/layout/layout';
import type { SheetsAsk } from '../../../src/core/sheets/ask';
import { boardAsks, type SheetsChoice } from '../../../src/core/sheets/board-asks';
import { planBoard, type PlannedBoard } from '../../../src/core/sheets/planned-board';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import { showingOf, type Showing } from '../../../src/core/units';
import { planned, type Contents } from '../../core/open';

export interface Case {
  readonly plans: SheetPlans;
  readonly showing: Showing;
}

const ROUNDS = 400;
const hooks = { goOn: (rounds: number) => rounds < ROUNDS };

function caseOf(jobs: readonly Contents[], choice: Partial<SheetsChoice> = {}, title = 'Library show'): Case {
  const laid = jobs.map((job): { job: Job; layout: Layout } => planned(job));
  const usual: SheetsChoice = { stock: [], shelf: startShelf('inch'), kerf: 0, trim: 0, upright: new Set(), fallouts: true, aim: 'cost', seed: 1 }; // prettier-ignore
  const { asks, unplanned } = boardAsks(laid, { ...usual, ...choice });
  const boards = asks.map((one) => planBoard(one, hooks)!);
  return { plans: { title, boards, unplanned }, showing: showingOf(laid[0]!.job) };
}

function job(title: string, frame: string, picture: string, more: Partial<Contents> = {}): Contents {
  return { title, pictures: [{ title, size: picture }], frame: { size: frame }, mat: { layers: [{ board: 'Warm white' }] }, ...more }; // prettier-ignore
}

const SMALL = [
  ['5 x 7 in', '3 x 4 in'],
  ['4 x 6 in', '2 x 3 in'],
  ['8 x 10 in', '5 x 7 in'],
  ['6 x 6 in', '3 x 3 in'],
] as const;
const small = Array.from({ length: 36 }, (_, index) => {
  const [frame, picture] = SMALL[index % SMALL.length]!;
  return job(`Linocut ${index + 1}`, frame, picture);
});

/** Pieces that say nothing of where they come from, on sheets that are cut alike. */
function byHand(): Case {
  const ask: SheetsAsk = {
    pieces: [{ id: 'Chart', width: 406.4, height: 508, count: 10, mayTurn: true }],
    stock: [{ id: 'sheet 1', kind: 'sheet', width: 812.8, height: 1016, cost: 8_500_000 }],
    kerf: 0,
    trim: 0,
    aim: 'cost',
    seed: 1,
  };
  const board = planBoard({ board: 'White', isPriced: true, ask }, hooks) satisfies PlannedBoard | undefined;
  return { plans: { title: 'Charts', boards: [board!], unplanned: [] }, showing: { unit: 'in', inchStep: 16, metricStep: 0.5 } }; // prettier-ignore
}

const LONG = 'W'.repeat(120);

const NINE = Array.from({ length: 9 }, (_, index) => ({ id: `cut-${index + 1}`, title: `Linocut ${index + 1}`, size: '100 x 100 mm' })); // prettier-ignore
const nine: Contents = {
  title: 'Nine linocuts by the children',
  units: 'mm',
  pictures: NINE,
  frame: { size: '500 x 600 mm' },
  mat: { layers: [{ board: 'Natural grey' }] },
  windows: { kind: 'grid', columns: 3, gap: '40 mm', items: NINE.map(({ id }) => id) },
};

export const CASES: readonly (readonly [string, Case])[] = [
  ['one job in inches', caseOf([job('Lady fern, cyanotype', '11 x 14 in', '8 x 10 in')])],
  [
    'three jobs, trimmed and sawn',
    caseOf(
      [
        job('Sea chart', '16 x 20 in', '10 x 14 in'),
        job('Nine linocuts', '500 x 600 mm', '300 x 400 mm'),
        job('Fern', '11 x 14 in', '8 x 10 in', { mat: { layers: [{ board: 'Warm white' }, { board: 'Moss', reveal: '1/4 in' }] } }),
      ],
      { trim: 6.35, kerf: 2.54 },
    ),
  ],
  [
    'millimetres, with a saw and a title of two lines',
    caseOf(
      [
        job('Sea charts <and> finds & “shells”: the second wall, by the harbour entrance, for the summer', '400 x 500 mm', '280 x 380 mm', { units: 'mm' }),
        job('Fern', '100 x 150 mm', '60 x 90 mm', { units: 'mm' }),
      ],
      { trim: 5, kerf: 3 },
    ),
  ],
  ['36 small pieces', caseOf(small, { trim: 6.35 })],
  ['a small mat out of a window', caseOf([job('Chart', '20 x 24 in', '12 x 16 in'), job('Shell', '8 x 10 in', '4 x 5 in')])],
  ['nine windows in one mat', caseOf([nine])],
  ['sheets that are cut alike', byHand()],
  ['names without spaces, as long as can be', caseOf([job(LONG, '16 x 20 in', '10 x 14 in', { mat: { layers: [{ board: LONG }] } })])],
]; // prettier-ignore

export function ask({ showing }: Case, only: readonly ('sheet-plan' | 'labels' | 'sheet-cuts' | 'sheet-drawings')[]) {
  return { paper: showing.unit === 'in' ? ('letter' as const) : ('a4' as const), showing, only };
}
