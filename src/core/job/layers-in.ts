/** The layers that a written job asks for, also where it says nothing of them. */
import type { WrittenJob, WrittenLayer } from './written';

/** From the top down; none where there is no mat, as in a float frame, whose open front would hold none. */
export function layersIn({ mat, frame }: Pick<WrittenJob, 'mat' | 'frame'>): readonly WrittenLayer[] {
  return mat?.layers ?? (frame?.build === 'float' ? [] : [{}]);
}
