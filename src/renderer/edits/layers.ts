/** Changes to the list of layers. */
import type { WrittenLayer } from '../../core/job/written';
import type { Edit } from '../../core/problem';

/** No mat: the picture goes into its frame as it is. */
export const TAKE_MAT_AWAY: readonly Edit[] = [{ at: 'mat.layers', value: [] }];
/** One layer of the usual board, said also where a frame would have none. */
export const GIVE_MAT: readonly Edit[] = [{ at: 'mat.layers', value: [{}] }];

/** Takes a layer out; the one that comes to the top has no layer above it to stand back from. */
export function removeLayer(layers: readonly WrittenLayer[], index: number): WrittenLayer[] {
  return layers
    .filter((_, place) => place !== index)
    .map((layer, place) => {
      if (place > 0) return layer;
      const { reveal: _reveal, ...top } = layer;
      return top;
    });
}
