/** Columns of a shelf's file: what each is called, which kinds of things have it, and the words it may hold. */
import { FRAME_BUILDS, FRAME_CORNERS, FRAME_PARTS } from '../job/written-frame';
import { FIBRES } from '../job/written-material';
import { PRICE_BASES } from '../money';
import type { Column } from '../tables/read-table';
import { GLAZING_MATERIALS, SHELF_KINDS, type ShelfKind } from './shelf';

interface ShelfColumnOf extends Column {
  readonly of: readonly ShelfKind[];
  /** What a cell may hold, where only some words will do. */
  readonly words?: readonly string[];
  /** True where a cell may hold several of them. */
  readonly several?: true;
}

const NO_YES = ['no', 'yes'] as const;
const SHEETS = ['board', 'glazing'] as const;
const MADE = ['frame', 'moulding'] as const;
const LOADED = ['wire', 'hook', 'ring', 'sawtooth', 'cleat'] as const;

export const SHELF_COLUMNS = [
  { key: 'kind', names: ['kind', 'what'], of: SHELF_KINDS, words: SHELF_KINDS },
  { key: 'name', names: ['name'], of: SHELF_KINDS },
  { key: 'material', names: ['material'], of: ['glazing'], words: GLAZING_MATERIALS },
  { key: 'width', names: ['width'], of: ['frame', ...SHEETS] },
  { key: 'height', names: ['height'], of: ['frame', ...SHEETS] },
  { key: 'thickness', names: ['thickness'], of: SHEETS },
  { key: 'uv', names: ['uv filter', 'uv'], of: ['glazing'], words: NO_YES },
  { key: 'antistatic', names: ['antistatic'], of: ['glazing'], words: NO_YES },
  { key: 'fibre', names: ['fibre', 'fiber'], of: ['board'], words: FIBRES },
  { key: 'ph', names: ['ph'], of: ['board'] },
  { key: 'reserve', names: ['alkaline reserve', 'reserve'], of: ['board'] },
  { key: 'photoTested', names: ['photo tested'], of: ['board'], words: NO_YES },
  { key: 'face', names: ['face', 'face width', 'moulding width'], of: MADE },
  { key: 'lip', names: ['lip', 'rabbet lip'], of: MADE },
  { key: 'rabbetDepth', names: ['rabbet depth', 'rabbet'], of: MADE },
  { key: 'depth', names: ['depth', 'moulding depth'], of: MADE },
  { key: 'stick', names: ['stick', 'stick length'], of: ['moulding'] },
  { key: 'colour', names: ['colour', 'color'], of: [...MADE, 'board'] },
  { key: 'build', names: ['build'], of: ['frame'], words: FRAME_BUILDS },
  { key: 'corners', names: ['corners'], of: ['frame'], words: FRAME_CORNERS },
  { key: 'comesWith', names: ['comes with', 'with'], of: ['frame'], words: FRAME_PARTS, several: true },
  { key: 'grooves', names: ['grooves'], of: ['frame'] },
  { key: 'load', names: ['load', 'rated load'], of: LOADED },
  { key: 'breaksAt', names: ['breaks at', 'breaking strength'], of: ['wire'] },
  { key: 'step', names: ['step', 'offset'], of: ['clip'] },
  { key: 'seat', names: ['seat'], of: ['hook'] },
  { key: 'length', names: ['length'], of: ['screw'] },
  { key: 'weight', names: ['weight'], of: MADE },
  { key: 'count', names: ['count', 'quantity'], of: SHELF_KINDS },
  { key: 'price', names: ['price'], of: SHELF_KINDS },
  { key: 'per', names: ['per', 'price per'], of: SHELF_KINDS, words: PRICE_BASES },
  { key: 'note', names: ['note', 'notes'], of: SHELF_KINDS },
] as const satisfies readonly ShelfColumnOf[];

export type ShelfColumn = (typeof SHELF_COLUMNS)[number]['key'];

/** Those that things of a kind have, in the file's order, without the kind itself. */
export function columnsOf(kind: ShelfKind): readonly (ShelfColumnOf & { readonly key: ShelfColumn })[] {
  const columns: readonly (ShelfColumnOf & { readonly key: ShelfColumn })[] = SHELF_COLUMNS;
  return columns.filter(({ key, of }) => key !== 'kind' && of.includes(kind));
}
