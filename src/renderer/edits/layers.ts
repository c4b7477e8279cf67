/** Changes to the list of layers. */
import type { WrittenLayer } from '../../core/job/written';

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
