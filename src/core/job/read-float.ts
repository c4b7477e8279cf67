/** Reads what a float frame is: the gap round the canvas, how deep it is inside, and that it has no lip. */
import { defaultLength } from './defaults';
import type { Frame } from './job';
import type { Reader } from './reader';
import type { WrittenFrame } from './written-frame';

export function readFloat(written: NonNullable<WrittenFrame['float']>, reader: Reader): Frame['float'] {
  const insideDepth = reader.optionalLength(written.insideDepth, 'frame.float.insideDepth', {
    name: 'Inside depth of the float frame',
    least: 0,
    above: true,
    most: 500,
  });
  return {
    gap: reader.length(
      written.gap,
      'frame.float.gap',
      { name: 'Gap round the canvas', least: 0, most: 200 },
      defaultLength('floatGap', reader.units),
    ),
    ...(insideDepth === undefined ? {} : { insideDepth }),
    setBack: reader.length(
      written.setBack,
      'frame.float.setBack',
      { name: 'How far the canvas lies back', least: -200, most: 200 },
      0,
    ),
  };
}

/**
 * A float frame is one without a lip, whose allowance is the gap on both sides: what is said of the sizes of any frame
 * then holds for it too, its rabbet being its inside.
 */
export function openFront(
  written: WrittenFrame,
  { gap }: Frame['float'],
  reader: Reader,
): Pick<Frame, 'allowance' | 'lip'> {
  for (const key of ['lip', 'allowance'] as const) {
    if (written[key] === undefined) continue;
    reader.say({
      code: 'frame-setting-not-used',
      severity: 'note',
      at: `frame.${key}`,
      message: `A float frame has no lip over the picture and no play but its gap, so "${key}" changes nothing; the gap is said by "float.gap".`,
      fix: { label: 'Take it away', edits: [{ at: `frame.${key}`, value: undefined }] },
    });
  }
  return { allowance: 2 * gap, lip: 0 };
}
