/** The check list with boxes to tick: filled where it is there, empty where it is still needed, an eye's worth of both to look at. */
import type { CheckItem, CheckState } from '../../core/package/check-item';
import { PENS } from '../paper/pens';
import type { Block } from '../paper/flow';
import { headingBlock, paragraphBlock, type Setting } from '../paper/text-blocks';
import { capital } from '../../core/phrases';

const BOX = 3;
const INDENT = 24;
const WORDS: Readonly<Record<CheckState, string>> = { done: 'there', needed: 'needed', look: 'look' };

export function checkBlocks(heading: string, items: readonly CheckItem[], setting: Setting): Block[] {
  const inner = { ...setting, width: setting.width - INDENT };
  return [headingBlock(heading), ...items.map((item) => checkBlock(item, inner))];
}

function checkBlock({ state, what, words }: CheckItem, inner: Setting): Block {
  const text = paragraphBlock(`${capital(what)}: ${words}`, inner, { size: 8.5 }, 1.8);
  return {
    height: text.height,
    draw: (surface, { x, y }) => {
      const box = { left: x + 0.5, right: x + 0.5 + BOX, top: y, bottom: y - BOX };
      surface.boxes([box], PENS.edge);
      if (state === 'done') {
        surface.lines(
          [
            [{ x: box.left + 0.6, y: y - 1.6 }, { x: box.left + 1.3, y: y - 2.4 }],
            [{ x: box.left + 1.3, y: y - 2.4 }, { x: box.left + 2.5, y: y - 0.6 }],
          ],
          PENS.cut,
        ); // prettier-ignore
      }
      surface.text(WORDS[state], { x: box.right + 2, y: y - BOX + 0.5 }, { size: 8, weight: state === 'needed' ? 'bold' : 'regular' }); // prettier-ignore
      text.draw(surface, { x: x + INDENT, y });
    },
  };
}
