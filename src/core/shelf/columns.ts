/** Columns of a shelf's file. */
import type { Column } from '../tables/read-table';

export const SHELF_COLUMNS = [
  { key: 'kind', names: ['kind', 'what'] },
  { key: 'name', names: ['name'] },
  { key: 'width', names: ['width'] },
  { key: 'height', names: ['height'] },
  { key: 'thickness', names: ['thickness'] },
  { key: 'rabbetDepth', names: ['rabbet depth', 'rabbet'] },
  { key: 'lip', names: ['lip', 'rabbet lip'] },
  { key: 'face', names: ['face', 'face width', 'moulding width'] },
  { key: 'depth', names: ['depth', 'moulding depth'] },
  { key: 'stick', names: ['stick', 'stick length'] },
  { key: 'colour', names: ['colour', 'color'] },
  { key: 'build', names: ['build'] },
  { key: 'corners', names: ['corners'] },
  { key: 'comesWith', names: ['comes with', 'with'] },
  { key: 'grooves', names: ['grooves'] },
  { key: 'material', names: ['material'] },
  { key: 'uv', names: ['uv filter', 'uv'] },
  { key: 'antistatic', names: ['antistatic'] },
  { key: 'fibre', names: ['fibre', 'fiber'] },
  { key: 'ph', names: ['ph'] },
  { key: 'reserve', names: ['alkaline reserve', 'reserve'] },
  { key: 'photoTested', names: ['photo tested'] },
  { key: 'load', names: ['load', 'rated load'] },
  { key: 'breaksAt', names: ['breaks at', 'breaking strength'] },
  { key: 'step', names: ['step', 'offset'] },
  { key: 'seat', names: ['seat'] },
  { key: 'length', names: ['length'] },
  { key: 'weight', names: ['weight'] },
  { key: 'count', names: ['count', 'quantity'] },
  { key: 'price', names: ['price'] },
  { key: 'per', names: ['per', 'price per'] },
  { key: 'note', names: ['note', 'notes'] },
] as const satisfies readonly Column[];

export type ShelfColumn = (typeof SHELF_COLUMNS)[number]['key'];
