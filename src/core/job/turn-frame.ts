/** A written frame, and values said side by side, of a mat that is turned by a quarter or turned over. */
import type { PerSide } from '../geometry/box';
import { isQuarterTurn, movedSides, type Motion } from './motion';
import { turnedSize } from './size-text';
import type { WrittenLayer } from './written';
import type { WrittenFrame } from './written-frame';

/** Width and height change places with a quarter turn, however they are said. */
export function movedFrame(frame: WrittenFrame, motion: Motion): WrittenFrame {
  if (!isQuarterTurn(motion)) return frame;
  const { size, readyMade, hung } = frame;
  if (hung) return { ...frame, hung: hung === 'portrait' ? 'landscape' : 'portrait' };
  if (size !== undefined) return { ...frame, size: turnedSize(size) };
  if (readyMade === undefined) return frame;
  const other = readyMade.replace(/(\d+)(\s*[x×]\s*)(\d+)/i, '$3$2$1');
  // Names of paper stand upright and have no lying form.
  return /\d\s*[x×]/i.test(readyMade) ? { ...frame, readyMade: other } : { ...frame, hung: 'landscape' };
}

export function movedLayer(layer: WrittenLayer, motion: Motion): WrittenLayer {
  const { reveal } = layer;
  return typeof reveal === 'object' ? { ...layer, reveal: movedSides(reveal as PerSide<never>, motion) } : layer;
}
