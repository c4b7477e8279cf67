/** The paths as an SVG in millimetres: one group for each layer, and in it one for ruled lines, one for grooves and one for each window. */
import type { LayerPlan, View } from '../../core/cutting/plan';
import type { LayerPaths, ToolPath } from '../../core/cutting/tool-paths';
import type { Point } from '../../core/geometry/box';
import { pathData } from '../../core/geometry/path-data';
import { good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { element, textElement } from '../proof/xml';
import { lineWords } from './line-words';
import { chosenEdges, machinePaths, type MachinePaths } from './machine-paths';
import { plainNumber } from './numbers';

/** SVG's y grows downward. */
const place = ({ x, y }: Point): Point => ({ x, y: 0 - y });
const DIGITS = 5;
const LINE = { fill: 'none', 'stroke-width': 0.1 } as const;

/** Its point 0 0 is the origin corner; y is turned round, as SVG has it. */
export function makeSvg(context: OutputContext): Promise<Result<Uint8Array>> {
  const paths = machinePaths(context);
  const { layers, view, corner } = paths.table;
  const [first] = layers;
  const { width, height } = context.plan.blank;
  const lowerLeft = first?.lowerLeft ?? { x: 0, y: 0 };
  const [left, top] = [lowerLeft.x, 0 - (lowerLeft.y + height)];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${plainNumber(width, DIGITS)}mm`,
      height: `${plainNumber(height, DIGITS)}mm`,
      viewBox: [left, top, width, height].map((value) => plainNumber(value, DIGITS)).join(' '),
    },
    [
      textElement('title', {}, `${titleOf(context)}, ${view} view`),
      textElement('desc', {}, described(corner, layers, view)),
      ...layers.map((layer) => layerGroup(layer, paths)),
    ],
  );
  const text = `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
  return Promise.resolve(good(new TextEncoder().encode(text)));
}

function described(corner: string, layers: readonly LayerPaths[], view: View): string {
  const lines = view === 'back' ? layers.flatMap(({ layer }) => lineWords(layer, view, 'mm')) : [];
  const about = `Millimetres at full size; 0 0 is the ${corner.replace('-', ' ')} corner of the board.`;
  return [about, ...lines.map((words) => `${words}.`)].join(' ');
}

function layerGroup({ layer, blank, lowerLeft, paths }: LayerPaths, all: MachinePaths): string {
  const id = `layer-${layer.number}`;
  const edge = {
    x: plainNumber(lowerLeft.x, DIGITS),
    y: plainNumber(0 - lowerLeft.y - blank.height, DIGITS),
    width: plainNumber(blank.width, DIGITS),
    height: plainNumber(blank.height, DIGITS),
  };
  // A window is cut whole before the next, so that its paths follow one another.
  const cuts = paths.filter(({ kind }) => kind === 'window');
  const windows = [...new Set(cuts.map(({ windowIndex }) => windowIndex))].map((index) =>
    cuts.filter(({ windowIndex }) => windowIndex === index),
  );
  return element('g', { id }, [
    textElement('title', {}, `Layer ${layer.number}, ${layer.board}`),
    element('g', { id: `${id}-blank`, ...LINE, stroke: '#888888' }, [
      textElement('title', {}, 'Edge of the board, not to be cut'),
      element('rect', edge),
    ]),
    ...lineGroups(layer, paths, all),
    ...windows.map((ofWindow) => windowGroup(id, ofWindow, all)),
  ]);
}

/** Colours tell a machine's program the tools apart. */
const FACE_GROUPS = [
  { kind: 'ruled line', ending: 'ruled', stroke: '#008000' },
  { kind: 'groove', ending: 'groove', stroke: '#0000ff' },
] as const;

function lineGroups(layer: LayerPlan, paths: readonly ToolPath[], all: MachinePaths): string[] {
  return FACE_GROUPS.flatMap(({ kind, ending, stroke }) => {
    const made = paths.filter((path) => path.kind === kind);
    if (made.length === 0) return [];
    const words = lineWords(
      { ...layer, lines: layer.lines.filter((line) => kind.startsWith(line.kind)) },
      'front',
      'mm',
    );
    const id = `layer-${layer.number}`;
    return [
      element('g', { id: `${id}-${ending}`, ...LINE, stroke }, [
        textElement('title', {}, words.join('. ')),
        ...made.map((path) => pathElement(id, path, all)),
      ]),
    ];
  });
}

function pathElement(layerId: string, path: ToolPath, { choices }: MachinePaths): string {
  return element('path', {
    id: `${layerId}-path-${path.number}`,
    d: pathData(chosenEdges(path.edges, choices), place, { digits: DIGITS, closed: false }),
  });
}

function windowGroup(layerId: string, paths: readonly ToolPath[], all: MachinePaths): string {
  const [first] = paths;
  const id = `${layerId}-window-${(first?.windowIndex ?? 0) + 1}`;
  return element('g', { id, ...LINE, stroke: '#000000' }, [
    textElement('title', {}, [first?.window, first?.title].filter((part) => part).join(', ')),
    ...paths.map((path) => pathElement(layerId, path, all)),
  ]);
}
