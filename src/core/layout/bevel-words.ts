/** A bevel in words, the same on screen, paper and terminal. */
import type { Layer } from '../job/job';

/** `standard bevel of 45°`; a bevel of 0° is none. */
export function bevelWords({ angleDegrees, direction }: Layer['bevel']): string {
  return angleDegrees === 0 ? 'cut straight down, no bevel' : `${direction} bevel of ${angleDegrees}°`;
}
