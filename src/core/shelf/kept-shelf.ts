/** The shelf as a list that its user keeps: how things on it are told apart, and when two of them are the same. */
import type { KeptThings } from '../kept-list';
import { printShelf } from './print-shelf';
import type { ShelfItem } from './shelf';

export const KEPT_SHELF: KeptThings<ShelfItem> = {
  // As the reader tells them apart.
  nameOf: ({ kind, name }) => `${kind} ${name.toLowerCase()}`,
  // Printed, so that the last bits of lengths that were read in inches or in millimetres don't count.
  isSame: (one, other) => printShelf([one], 'mm') === printShelf([other], 'mm'),
};
