/** What is seen from the side of something that stands out behind a frame. */

export interface SideView {
  /** From the outer edge of the moulding inward to the side of what stands out. */
  readonly inset: number;
  /** From the wall to the back of the frame: what it was asked for, or more where what stands out touches the wall first. */
  readonly wallGap: number;
  /** By how much the bumpers, as asked for, are too thin to keep it off the wall; 0 where they do. */
  readonly lacking: number;
  /** Seen from less than this from the plane of the wall it shows; 0: never, 90: nearly from the front. */
  readonly angleDegrees: number;
}

/**
 * The eye looks past the back edge of the moulding: it meets the side of what stands out by `standOut` and lies back
 * by `inset` where `tan(angle) < standOut / inset`. How far the frame stands off the wall moves both alike.
 *
 * @param standOut behind the back of the frame, mm; at least 0.
 * @param wallGap what bumpers and wire keep between the wall and the frame's back, mm.
 */
export function sideView(standOut: number, inset: number, wallGap: number): SideView {
  return {
    inset,
    wallGap: Math.max(wallGap, standOut),
    lacking: Math.max(0, standOut - wallGap),
    angleDegrees: (Math.atan2(standOut, inset) * 180) / Math.PI,
  };
}

/**
 * How far to the side of the frame's edge somebody has to stand to see it, mm, with the eye so far from the wall;
 * Infinity where it never shows, 0 where it shows as soon as one stands beside the frame.
 */
export function seenFromBeside({ angleDegrees, wallGap }: SideView, eye: number): number {
  if (angleDegrees === 0) return Infinity;
  return Math.max(0, eye - wallGap) / Math.tan((angleDegrees * Math.PI) / 180);
}
