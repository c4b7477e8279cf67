/** What a saw cut takes off a stick. */
import { MM_PER_INCH, type Unit } from '../units';

/**
 * Thickness of a saw blade, mm: common practice, no source. The two cuts at a join meet in one point of the outer edge and
 * together take 1.41 of a blade's thickness off it at least; a whole one is reckoned for each, so that an end can be trimmed.
 */
export const DEFAULT_KERF: Readonly<Record<Unit, number>> = { in: MM_PER_INCH / 8, mm: 3, cm: 3 };
