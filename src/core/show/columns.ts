/** Columns of a show's list. */
import type { Column } from '../tables/read-table';

export const SHOW_COLUMNS = [
  { key: 'title', names: ['title', 'picture'], needed: true },
  { key: 'width', names: ['width'], needed: true },
  { key: 'height', names: ['height'], needed: true },
  { key: 'imageWidth', names: ['image width'] },
  { key: 'imageHeight', names: ['image height'] },
  { key: 'kind', names: ['kind', 'what'] },
  { key: 'overlap', names: ['overlap'] },
  { key: 'thickness', names: ['thickness'] },
  { key: 'count', names: ['count', 'copies', 'quantity'] },
  { key: 'frame', names: ['frame'] },
  { key: 'wall', names: ['wall', 'room', 'place'] },
  { key: 'note', names: ['note', 'notes'] },
] as const satisfies readonly Column[];

export type ShowColumn = (typeof SHOW_COLUMNS)[number]['key'];
