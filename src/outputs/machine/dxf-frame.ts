/** What a DXF of release 2000 has to hold round its entities: header, tables, blocks, dictionary (Autodesk, "DXF Reference"). */
import { Handles, type Group } from './dxf-words';

export interface DxfLayer {
  readonly name: string;
  /** Number of the AutoCAD colour index. */
  readonly colour: number;
}

export interface DxfDrawing {
  readonly unit: 'in' | 'mm';
  /** Lower left and upper right of all that is drawn, in the unit, as written. */
  readonly extent: { readonly low: readonly [string, string]; readonly high: readonly [string, string] };
  readonly layers: readonly DxfLayer[];
  /** Lines of text at the head. */
  readonly comments: readonly string[];
  /** Entities without handle and owner: each begins with its group 0. */
  readonly entities: readonly (readonly Group[])[];
}

/** All groups of the file. */
export function dxfGroups(drawing: DxfDrawing): Group[] {
  const handles = new Handles();
  const spaces = { model: handles.next(), paper: handles.next() };
  const body = [
    ...section('CLASSES', []),
    ...section('TABLES', tables(drawing.layers, spaces, handles)),
    ...section('BLOCKS', [
      ...block('*Model_Space', spaces.model, handles),
      ...block('*Paper_Space', spaces.paper, handles),
    ]),
    ...section('ENTITIES', drawing.entities.flatMap(owned(spaces.model, handles))),
    ...section('OBJECTS', objects(handles)),
  ];
  const comments = drawing.comments.map((comment): Group => [999, comment]);
  return [...comments, ...section('HEADER', header(drawing, handles.next())), ...body, [0, 'EOF']];
}

function section(name: string, groups: readonly Group[]): Group[] {
  return [[0, 'SECTION'], [2, name], ...groups, [0, 'ENDSEC']];
}

function header({ unit, extent: { low, high } }: DxfDrawing, seed: string): Group[] {
  return [
    [9, '$ACADVER'],
    [1, 'AC1015'],
    [9, '$DWGCODEPAGE'],
    [3, 'ANSI_1252'],
    [9, '$HANDSEED'],
    [5, seed],
    [9, '$EXTMIN'],
    [10, low[0]],
    [20, low[1]],
    [30, '0.0'],
    [9, '$EXTMAX'],
    [10, high[0]],
    [20, high[1]],
    [30, '0.0'],
    // 1: inches, 4: millimetres.
    [9, '$INSUNITS'],
    [70, unit === 'in' ? 1 : 4],
    [9, '$MEASUREMENT'],
    [70, unit === 'in' ? 0 : 1],
  ];
}

interface Spaces {
  readonly model: string;
  readonly paper: string;
}

function tables(layers: readonly DxfLayer[], spaces: Spaces, handles: Handles): Group[] {
  const record = (kind: string, mark: string) => (name: string, more: readonly Group[], handle?: string) => ({
    kind,
    mark,
    name,
    more,
    handle,
  });
  const lineType = record('LTYPE', 'AcDbLinetypeTableRecord');
  const layer = record('LAYER', 'AcDbLayerTableRecord');
  const plainLine: Group[] = [[70, 0], [3, ''], [72, 65], [73, 0], [40, '0.0']]; // prettier-ignore
  const layerLook = (colour: number): Group[] => [[70, 0], [62, colour], [6, 'CONTINUOUS']]; // prettier-ignore
  const style: Group[] = [[70, 0], [40, '0.0'], [41, '1.0'], [50, '0.0'], [71, 0], [42, '2.5'], [3, 'txt'], [4, '']]; // prettier-ignore
  return [
    ...table('VPORT', [], handles),
    ...table('LTYPE', ['ByBlock', 'ByLayer', 'CONTINUOUS'].map((name) => lineType(name, plainLine)), handles), // prettier-ignore
    ...table('LAYER', [{ name: '0', colour: 7 }, ...layers].map(({ name, colour }) => layer(name, layerLook(colour))), handles), // prettier-ignore
    ...table('STYLE', [record('STYLE', 'AcDbTextStyleTableRecord')('STANDARD', style)], handles),
    ...table('VIEW', [], handles),
    ...table('UCS', [], handles),
    ...table('APPID', [record('APPID', 'AcDbRegAppTableRecord')('ACAD', [[70, 0]])], handles),
    ...table('DIMSTYLE', [record('DIMSTYLE', 'AcDbDimStyleTableRecord')('STANDARD', [[70, 0]])], handles),
    ...table(
      'BLOCK_RECORD',
      [
        record('BLOCK_RECORD', 'AcDbBlockTableRecord')('*Model_Space', [], spaces.model),
        record('BLOCK_RECORD', 'AcDbBlockTableRecord')('*Paper_Space', [], spaces.paper),
      ],
      handles,
    ),
  ];
}

interface TableRecord {
  readonly kind: string;
  readonly mark: string;
  readonly name: string;
  readonly more: readonly Group[];
  readonly handle: string | undefined;
}

function table(name: string, records: readonly TableRecord[], handles: Handles): Group[] {
  const own = handles.next();
  return [
    [0, 'TABLE'],
    [2, name],
    [5, own],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, records.length],
    ...(name === 'DIMSTYLE' ? ([[100, 'AcDbDimStyleTable']] as const) : []),
    ...records.flatMap((record): Group[] => [
      [0, record.kind],
      // Dimension styles alone have their handle elsewhere.
      [record.kind === 'DIMSTYLE' ? 105 : 5, record.handle ?? handles.next()],
      [330, own],
      [100, 'AcDbSymbolTableRecord'],
      [100, record.mark],
      [2, record.name],
      ...record.more,
    ]),
    [0, 'ENDTAB'],
  ];
}

function block(name: string, owner: string, handles: Handles): Group[] {
  const head = (kind: string): Group[] => [
    [0, kind],
    [5, handles.next()],
    [330, owner],
    [100, 'AcDbEntity'],
    ...(name === '*Paper_Space' ? ([[67, 1]] as const) : []),
    [8, '0'],
  ];
  return [
    ...head('BLOCK'),
    [100, 'AcDbBlockBegin'],
    [2, name],
    [70, 0],
    [10, '0.0'],
    [20, '0.0'],
    [30, '0.0'],
    [3, name],
    [1, ''],
    ...head('ENDBLK'),
    [100, 'AcDbBlockEnd'],
  ];
}

/** Puts in who an entity belongs to, after its kind. */
function owned(owner: string, handles: Handles): (entity: readonly Group[]) => Group[] {
  return ([kind, ...rest]) => (kind ? [kind, [5, handles.next()], [330, owner], ...rest] : []);
}

/** The root dictionary, with the one group dictionary that programs look for. */
function objects(handles: Handles): Group[] {
  const [root, groups] = [handles.next(), handles.next()];
  return [
    [0, 'DICTIONARY'],
    [5, root],
    [330, '0'],
    [100, 'AcDbDictionary'],
    [281, 1],
    [3, 'ACAD_GROUP'],
    [350, groups],
    [0, 'DICTIONARY'],
    [5, groups],
    [330, root],
    [100, 'AcDbDictionary'],
    [281, 1],
  ];
}
