/** The table of paths as comma-separated values: one row for each edge, in the order of cutting. */
import type { LayerPaths, ToolPath } from '../../core/cutting/tool-paths';
import type { Point } from '../../core/geometry/box';
import { lengthOfEdge, startAngle, type Edge } from '../../core/geometry/edge';
import { good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { csvText, type Cell } from '../../core/tables/csv-text';
import { chosenEdges, machinePaths, type MachinePaths } from './machine-paths';
import { degrees, lengthNumber, plainNumber } from './numbers';

interface Row extends MachinePaths {
  readonly job: string;
  readonly layer: LayerPaths['layer'];
  readonly path: ToolPath;
  readonly edge: Edge;
  /** 1, 2, ... within the path. */
  readonly piece: number;
}

interface Field {
  readonly name: string;
  readonly of: (row: Row) => Cell;
}

function field(name: string, of: (row: Row) => Cell): Field {
  return { name, of };
}

/** A length, mm, as a number in the row's unit; empty where there is none. */
function length(name: string, of: (row: Row) => number | undefined): Field {
  return field(name, (row) => {
    const mm = of(row);
    return mm === undefined ? '' : Number(lengthNumber(mm, row.unit));
  });
}

function angle(name: string, of: (edge: Exclude<Edge, { kind: 'line' }>) => number): Field {
  return field(name, ({ edge }) => (edge.kind === 'line' ? '' : Number(plainNumber(degrees(of(edge)), 6))));
}

function radii({ edge }: Row): Point | undefined {
  if (edge.kind === 'line') return undefined;
  return edge.kind === 'arc' ? { x: edge.radius, y: edge.radius } : edge.radii;
}

const centre = ({ edge }: Row) => (edge.kind === 'line' ? undefined : edge.centre);
const FORMS = { line: 'line', arc: 'arc of a circle', oval: 'arc of an ellipse' } as const;

const FIELDS: readonly Field[] = [
  field('job', ({ job }) => job),
  field('view', ({ table }) => table.view),
  field('origin', ({ table }) => table.corner),
  field('layer', ({ layer }) => layer.number),
  field('board', ({ layer }) => layer.board),
  field('path', ({ path }) => path.number),
  field('window', ({ path }) => path.window),
  field('title', ({ path }) => path.title),
  field('cuts', ({ path }) => path.cuts.join('; ')),
  field('unit', ({ unit }) => unit),
  field('piece', ({ piece }) => piece),
  field('form', ({ edge }) => FORMS[edge.kind]),
  length('x1', ({ edge }) => edge.from.x),
  length('y1', ({ edge }) => edge.from.y),
  length('x2', ({ edge }) => edge.to.x),
  length('y2', ({ edge }) => edge.to.y),
  length('centre x', (row) => centre(row)?.x),
  length('centre y', (row) => centre(row)?.y),
  length('radius across', (row) => radii(row)?.x),
  length('radius up', (row) => radii(row)?.y),
  length('distance from the ellipse', ({ edge }) => (edge.kind === 'oval' ? edge.away : undefined)),
  angle('start (degrees)', (edge) => (edge.kind === 'arc' ? startAngle(edge) : edge.start)),
  angle('sweep (degrees, anticlockwise)', ({ sweep }) => sweep),
  length('length', ({ edge }) => lengthOfEdge(edge)),
  field('waste side', ({ table }) => table.waste),
  field('bevel side', ({ path }) => path.bevelSide),
  field('slopes to', ({ path }) => path.slopesTo),
  field('bevel angle (degrees)', ({ layer }) => layer.bevel.angleDegrees),
  length('overcut at start', ({ path }) => path.overcutStart),
  length('overcut at end', ({ path }) => path.overcutEnd),
  length('path length', ({ path }) => path.length),
  length('travel before', ({ path }) => path.travel),
  field('makes', ({ path }) => path.kind),
  field('tool', ({ path }) => path.tool),
  length('depth', ({ path }) => path.depth),
];

/** In UTF-8; numbers in inches or millimetres. */
export function makePathCsv(context: OutputContext): Promise<Result<Uint8Array>> {
  const paths = machinePaths(context);
  const job = titleOf(context);
  const rows = paths.table.layers.flatMap(({ layer, paths: ofLayer }) =>
    ofLayer.flatMap((path) =>
      chosenEdges(path.edges, paths.choices).map((edge, index) => ({
        ...paths,
        job,
        layer,
        path,
        edge,
        piece: index + 1,
      })),
    ),
  );
  const cells = rows.map((row) => FIELDS.map(({ of }) => of(row)));
  return Promise.resolve(good(new TextEncoder().encode(csvText([FIELDS.map(({ name }) => name), ...cells]))));
}
