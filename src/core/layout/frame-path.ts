/** Where a job says how large its frame is. */
import type { Job } from '../job/job';

/** Path of the size, of the ready-made name, or of the frame when it is made to fit. */
export function framePath({ frame }: Job): string {
  if (!frame.blank) return 'frame';
  return frame.readyMade === undefined ? 'frame.size' : 'frame.readyMade';
}
