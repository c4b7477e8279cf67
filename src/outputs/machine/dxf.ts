/** The paths as a DXF of release 2000: for each layer of board one DXF layer to cut and one with the edge of the board; grooves and ruled lines in layers of their own. */
import { good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { entitiesOf, rectangleEntity } from './dxf-entities';
import { dxfGroups, type DxfLayer } from './dxf-frame';
import { dxfText, groupsText, type Group } from './dxf-words';
import { lineWords } from './line-words';
import { machinePaths } from './machine-paths';
import { lengthNumber } from './numbers';

/** Colours of the AutoCAD index: what is cut in a colour for each layer, the board grey. */
const CUT_COLOURS = [1, 5, 3, 6];
const BLANK_COLOUR = 8;
/** What of a layer is no opening. */
const FACE_LAYERS = [
  { kind: 'ruled line', ending: 'RULED', colour: 2 },
  { kind: 'groove', ending: 'GROOVE', colour: 4 },
] as const;

/** In inches or millimetres, as the header says. */
export function makeDxf(context: OutputContext): Promise<Result<Uint8Array>> {
  const { table, choices, unit } = machinePaths(context);
  const layers: DxfLayer[] = [];
  const entities: (readonly Group[])[] = [];
  table.layers.forEach(({ layer, lowerLeft, blank, paths }, index) => {
    const [cut, edge] = [`LAYER${layer.number}_CUT`, `LAYER${layer.number}_BLANK`];
    layers.push({ name: cut, colour: CUT_COLOURS[index % CUT_COLOURS.length] ?? 7 });
    layers.push({ name: edge, colour: BLANK_COLOUR });
    entities.push(rectangleEntity(lowerLeft, blank, { layer: edge, unit }));
    for (const { kind, ending, colour } of FACE_LAYERS) {
      const made = paths.filter((path) => path.kind === kind);
      const name = `LAYER${layer.number}_${ending}`;
      if (made.length > 0) layers.push({ name, colour });
      entities.push(...made.flatMap((path) => entitiesOf(path.edges, choices, { layer: name, unit })));
    }
    const windows = paths.filter((path) => path.kind === 'window');
    entities.push(...windows.flatMap((path) => entitiesOf(path.edges, choices, { layer: cut, unit })));
  });
  const { width, height } = context.plan.blank;
  const low = table.layers[0]?.lowerLeft ?? { x: 0, y: 0 };
  const write = (mm: number) => lengthNumber(mm, unit);
  const groups = dxfGroups({
    unit,
    extent: { low: [write(low.x), write(low.y)], high: [write(low.x + width), write(low.y + height)] },
    layers,
    comments: [
      `${titleOf(context)}, ${table.view} view, 0 0 is the ${table.corner.replace('-', ' ')} corner`,
      ...table.layers.flatMap(({ layer }) => lineWords(layer, table.view, unit)),
    ].map(dxfText),
    entities,
  });
  return Promise.resolve(good(new TextEncoder().encode(groupsText(groups))));
}
