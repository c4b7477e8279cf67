/** Headings and paragraphs as blocks that flow from page to page. */
import type { Block } from './flow';
import { capHeight } from './label';
import { paragraphHeight } from './surface';
import { fractions, type TextStyle } from './type';
import type { Typesetter } from './typesetter';

/** Sets text to the width of the flow. */
export interface Setting {
  readonly typesetter: Typesetter;
  /** mm. */
  readonly width: number;
}

const ABOVE = 3;
const BELOW = 1.4;

export function headingBlock(words: string, size = 11): Block {
  return {
    height: ABOVE + capHeight(size) + BELOW,
    withNext: true,
    draw: (surface, { x, y }) => surface.text(words, { x, y: y - ABOVE - capHeight(size) }, { size, weight: 'bold' }),
  };
}

/** With air below it, mm. */
export function paragraphBlock(
  words: string,
  { typesetter, width }: Setting,
  style: TextStyle = { size: 9 },
  air = 1.2,
): Block {
  const text = fractions(words);
  return {
    height: paragraphHeight(typesetter, text, width, style) + air,
    draw: (surface, corner) => void surface.paragraph(text, corner, width, style),
  };
}

/** Paragraphs two by two, the left one first, where they are many and short. */
export function pairedBlocks(paragraphs: readonly string[], setting: Setting, style: TextStyle): Block[] {
  const between = 5;
  const width = (setting.width - between) / 2;
  const blocks = paragraphs.map((words) => paragraphBlock(words, { ...setting, width }, style));
  return blocks.flatMap((left, index): Block[] => {
    if (index % 2 === 1) return [];
    const right = blocks[index + 1];
    return [
      {
        height: Math.max(left.height, right?.height ?? 0),
        draw: (surface, corner) => {
          left.draw(surface, corner);
          right?.draw(surface, { ...corner, x: corner.x + width + between });
        },
      },
    ];
  });
}

/** Paragraphs counted from 1, the numbers in a column of their own. */
export function numberedBlocks(steps: readonly string[], setting: Setting, style: TextStyle = { size: 9 }): Block[] {
  const indent = 5;
  return steps.map((words, index) => {
    const inner = paragraphBlock(words, { ...setting, width: setting.width - indent }, style, 1.6);
    return {
      height: inner.height,
      draw: (surface, corner) => {
        surface.paragraph(String(index + 1), corner, indent, { ...style, weight: 'bold' });
        inner.draw(surface, { ...corner, x: corner.x + indent });
      },
    };
  });
}
