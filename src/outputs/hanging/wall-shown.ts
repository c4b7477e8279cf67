/** What the drawing of a wall shows, and how it tells lengths. */
import type { UnitName } from '../../bridge';
import type { WallPlan } from '../../core/hanging/wall-plan';

export interface WallDrawing {
  readonly wall: WallPlan;
  /** Lengths in words. */
  readonly length: (mm: number) => string;
  readonly unit: UnitName;
}
