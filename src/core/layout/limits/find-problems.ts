/** Everything a placed layout must keep to, in one list with errors first. */
import type { Job } from '../../job/job';
import { bySeverity, type Problem } from '../../problem';
import type { Leaf } from '../cells';
import type { PlacedLayout } from '../layout';
import { showFor } from '../show';
import { cutBehind } from './behind';
import { bordersOutOfRange } from './border-range';
import { seenBorders, seenStrips } from './borders';
import { narrowBridges } from './bridges';
import { offTheBoard, tinyWindows } from './board';
import { lineProblems } from './lines';
import { matNotWanted } from './mat-not-wanted';
import { notes } from './notes';
import { shapeProblems } from './shapes';
import { narrowTongues } from './tongues';
import { heldPictures, sheetsInEachOther } from './pictures';

/** `leaves` are the cells that the windows came from, in the same order. */
export function findProblems(job: Job, layout: PlacedLayout, leaves: readonly Leaf[]): Problem[] {
  const show = showFor(job);
  return bySeverity([
    ...offTheBoard(layout, show),
    ...tinyWindows(layout, show),
    ...shapeProblems(layout, show),
    ...narrowBridges(job, layout, leaves, show),
    ...narrowTongues(layout, show),
    ...lineProblems(layout, leaves, show),
    ...seenBorders(job, layout, show),
    ...bordersOutOfRange(job, layout, show),
    ...heldPictures(job, layout, leaves, show),
    ...sheetsInEachOther(layout, show),
    ...seenStrips(layout, show),
    ...cutBehind(job, layout, show),
    ...matNotWanted(job, layout, show),
    ...notes(job, layout, show),
  ]);
}
