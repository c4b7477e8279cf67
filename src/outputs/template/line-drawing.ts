/** Grooves and ruled lines on the template: to work by where the face is drawn, a light reference where the back is. */
import type { Point } from '../../core/geometry/box';
import { directionOn, pointOn, type Edge } from '../../core/geometry/edge';
import { lineMeasures } from '../../core/layout/line-words';
import { lengthText, type Showing } from '../../core/units';
import { placeLabel, smaller, type Label } from '../paper/label';
import { PENS, type Pen } from '../paper/pens';
import { boxRound, type Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import { chordsAlong, drawCurves } from './curve-drawing';
import type { LabelSetting } from './cut-labels';
import { onPage, type Part } from './part';
import { clipLine, contains, type ViewLine } from './view-geometry';

/** Draws the lines of a part; a dimension line may cross them, no label may lie on them. */
export function drawLines(surface: Surface, part: Part, room: Room): void {
  for (const { line, inner, middle, outer } of part.layer.lines) {
    if (part.layer.view === 'back') drawOutline(surface, part, middle, PENS.behind);
    else if (line.kind === 'ruled') drawOutline(surface, part, middle, PENS.ruled);
    else {
      drawOutline(surface, part, inner, PENS.groove);
      drawOutline(surface, part, outer, PENS.groove);
      drawOutline(surface, part, middle, PENS.axis);
    }
    for (const [from, to] of [inner, outer].flat().flatMap(chordsAlong)) {
      const seen = clipLine(from, to, part.drawn);
      if (seen) room.takeCrossable(boxRound(onPage(part, seen[0]), onPage(part, seen[1]), 0.4));
    }
  }
}

/** Straight edges as lines, so that they can be clipped exactly; the others as curves. */
function drawOutline(surface: Surface, part: Part, outline: readonly Edge[], pen: Pen): void {
  const straight = outline.flatMap((edge) => {
    const clipped = edge.kind === 'line' ? clipLine(edge.from, edge.to, part.drawn) : undefined;
    return clipped ? [[onPage(part, clipped[0]), onPage(part, clipped[1])] as const] : [];
  });
  surface.lines(straight, pen);
  drawCurves(
    surface,
    part,
    undefined,
    outline.filter((edge) => edge.kind !== 'line'),
    pen,
  );
}

const PARTS = [0.3, 0.7, 0.2, 0.8, 0.12, 0.88, 0.5, 0.02] as const;
/** From the line to its label, mm: further where a curve bends towards it. */
const AWAY = [0.9, 2.4] as const;

/** What each line is and where, once on the page beside its outer edge, or beside its inner one. */
export function labelLines(setting: LabelSetting): void {
  const { surface, part, room, showing } = setting;
  for (const line of part.layer.lines) {
    const whole: Label = { turn: 0, lines: wordsOf(line, part, showing).map((words) => ({ words, size: 7 })) };
    const upright: Label = { ...whole, turn: 90 };
    const spots = spotsAlong(line, part);
    // Where there is room for no more, its name leads to the list.
    const bare: Label = { turn: 0, lines: [{ words: `${line.line.window} ${line.line.name}`, size: 6 }] };
    const labels = [whole, upright, smaller(whole, 0.8), smaller(upright, 0.8), bare, { ...bare, turn: 90 as const }];
    placeLabel(surface, room, labels, (size, { turn }) =>
      AWAY.flatMap((away) =>
        spots
          .filter(({ way }) => (turn === 90) === Math.abs(way.y) > Math.abs(way.x))
          .map(({ at, way, side }) => ({
            x: at.x + part.offset.x + side * way.y * (away + size.width / 2),
            y: at.y + part.offset.y - side * way.x * (away + size.height / 2),
          })),
      ),
    );
  }
}

function wordsOf({ line }: ViewLine, { layer }: Part, showing: Showing): string[] {
  const text = (mm: number) => fractions(lengthText(mm, showing));
  const name = `${line.window} ${line.name}`;
  if (layer.view === 'back') return [`${name}, on the FACE`];
  return [
    `${name} · ${fractions(lineMeasures(line, showing))}`,
    `${text(line.distance)} from the edge of ${line.window} on the face`,
  ];
}

/** Places beside both edges of a line; outlines run anticlockwise, so that their outside lies on the right. */
function spotsAlong({ inner, outer }: ViewLine, part: Part): { at: Point; way: Point; side: 1 | -1 }[] {
  return ([[outer, 1], [inner, -1]] as const).flatMap(([outline, side]) =>
    PARTS.flatMap((place) =>
      outline.map((edge) => ({ at: pointOn(edge, place), way: directionOn(edge, place), side })),
    ).filter(({ at }) => contains(part.own, at)),
  ); // prettier-ignore
}
