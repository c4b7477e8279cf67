/** How near is the same: the few lengths that decide what geometry takes for one, in mm. */

/** Points nearer than this are one point, and an edge this near to another lies on it; a nanometre. */
export const SAME = 1e-6;

/** Curves that come this near without crossing touch in one point; so do those that cross no deeper. */
export const TOUCH = 1e-9;
