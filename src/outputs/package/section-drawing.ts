/** The section through the lower rail, to scale, its items numbered as in the table of the stack. */
import type { UnitName } from '../../bridge';
import type { Box } from '../../core/geometry/box';
import type { ItemKind } from '../../core/package/stack';
import type { PackageSection } from '../../core/package/package-section';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import { atScale, boxAtScale, scaleFor, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';

/** Greys tell neighbours apart; what is left white is board. */
const GREYS: Readonly<Partial<Record<ItemKind, string>>> = {
  glazing: '#e4e4e4',
  spacer: '#c8c8c8',
  picture: '#8a8a8a',
  hinges: '#5a5a5a',
  backing: '#f0f0f0',
};
const WOOD = '#d8d0c4';
/** Above and below the section itself, mm. */
const ABOVE = 11;
const BELOW = 6;
/** From the drawing up to the numbers, and between two of them, mm. */
const LEADER = 5;
const APART = 4;
const NUMBER = { size: 7, align: 'centre' } as const;

/** As high as the section comes to be with its numbers and its scale. @param most the section itself, mm. */
export function sectionBlock(section: PackageSection, width: number, most: number, unit: UnitName): Block {
  const scale = scaleFor(section.size, { width, height: most }, unit, 'enlarged');
  const [tall, wide] = [section.size.height * scale.factor, section.size.width * scale.factor];
  return {
    height: ABOVE + tall + BELOW,
    draw: (surface, { x, y }) => {
      const bottom = y - ABOVE - tall;
      drawSection(surface, section, atScale(scale, { x: x + (width - wide) / 2, y: bottom }));
      const under = { x: x + width / 2, y: bottom - 4 };
      surface.text(`section through the lower rail, ${scale.words}, front to the left`, under, NUMBER);
    },
  };
}

function drawSection(surface: Surface, section: PackageSection, at: At): void {
  const boxed = (box: Box) => boxAtScale(at, box);
  drawWood(surface, section, at);
  for (const { kind, box } of section.items) {
    const grey = GREYS[kind];
    if (grey) surface.fill(boxed(box), grey);
    surface.boxes([boxed(box)], kind === 'room for fixing' ? PENS.join : PENS.edge);
  }
  if (section.packing) surface.boxes([boxed(section.packing)], PENS.hair);
  if (section.range) surface.boxes([boxed(section.range)], PENS.join);
  if (section.back !== undefined) {
    surface.line(at({ x: section.back, y: 0 }), at({ x: section.back, y: section.size.height }), PENS.strong);
  }
  drawNumbers(surface, section, at);
}

function drawWood(surface: Surface, { wood }: PackageSection, at: At): void {
  const corners = wood.map(at);
  surface.fillArea(corners, WOOD);
  surface.lines(
    corners.map((point, index) => [point, corners[(index + 1) % corners.length] ?? point] as const),
    PENS.edge,
  );
}

/** A number over each item, side by side however thin the items are. */
function drawNumbers(surface: Surface, { items, size }: PackageSection, at: At): void {
  const middles = items.map(({ box }) => at({ x: (box.left + box.right) / 2, y: 0 }).x);
  const centre = middles.reduce((sum, x) => sum + x, 0) / Math.max(1, middles.length);
  const first = centre - ((items.length - 1) * APART) / 2;
  const top = at({ x: 0, y: size.height }).y;
  items.forEach(({ box }, index) => {
    const number = { x: first + index * APART, y: top + LEADER };
    const foot = { x: middles[index] ?? 0, y: at({ x: 0, y: box.top }).y };
    const bend = { x: foot.x, y: top + 1 };
    surface.lines([[foot, bend], [bend, { ...number, y: number.y - 0.6 }]], PENS.hair); // prettier-ignore
    surface.text(String(index + 1), number, NUMBER);
  });
}
