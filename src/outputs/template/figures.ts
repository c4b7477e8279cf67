/** The circles and ellipses that a window's cuts follow, each once, and what is said of them beside the opening's size. */
import type { Point, Size } from '../../core/geometry/box';
import { lengthText, type Showing } from '../../core/units';
import { fractions } from '../paper/type';
import type { ViewWindow } from './view-geometry';

export interface Figure {
  readonly kind: 'arc' | 'oval';
  readonly centre: Point;
  readonly radii: Point;
  /** How far outside the ellipse the cut runs; 0 on it. */
  readonly away: number;
}

/** Two figures nearer than this are one, mm. */
const SAME = 1e-6;
/** More figures than this are nobody's to draw by hand: an imported outline has hundreds. */
const MOST = 24;

export function figuresOf({ lines }: Pick<ViewWindow, 'lines'>): readonly Figure[] {
  const found: Figure[] = [];
  for (const edge of lines.flatMap((line) => line.curve ?? [])) {
    if (edge.kind === 'line') continue;
    const figure: Figure =
      edge.kind === 'arc'
        ? { kind: 'arc', centre: edge.centre, radii: { x: edge.radius, y: edge.radius }, away: 0 }
        : { kind: 'oval', centre: edge.centre, radii: edge.radii, away: edge.away };
    if (!found.some((other) => same(other, figure))) found.push(figure);
    if (found.length > MOST) return [];
  }
  return found;
}

function same(a: Figure, b: Figure): boolean {
  const gaps = [a.centre.x - b.centre.x, a.centre.y - b.centre.y, a.radii.x - b.radii.x, a.radii.y - b.radii.y];
  return a.kind === b.kind && gaps.every((gap) => Math.abs(gap) < SAME);
}

/** How to strike the curves: axes or radius, and the centre from two edges of the board as this view has them. */
export function figureWords(window: Pick<ViewWindow, 'lines'>, showing: Showing): readonly string[] {
  const text = (mm: number) => fractions(lengthText(mm, showing));
  const from = ({ x, y }: Point) => `${text(x)} from the left edge, ${text(y)} from the bottom edge`;
  const figures = figuresOf(window);
  const oval = figures.find(({ kind }) => kind === 'oval');
  if (oval) {
    const { radii, centre, away } = oval;
    const axes = `${axesWords({ width: 2 * radii.x, height: 2 * radii.y }, text)}`;
    const aside = away === 0 ? [] : [`the cut runs ${text(away)} outside this ellipse`];
    return [axes, ...aside, `centre ${from(centre)}`];
  }
  const radii = new Set(figures.map((figure) => text(figure.radii.x)));
  if (radii.size === 0 || radii.size > 3) return [];
  const words = `radius ${[...radii].join(', ')}`;
  const [only] = figures;
  return figures.length === 1 && only ? [words, `centre ${from(only.centre)}`] : [`${words} round each cross`];
}

function axesWords({ width, height }: Size, text: (mm: number) => string): string {
  if (Math.abs(width - height) < SAME) return `circle, diameter ${text(width)}`;
  const [long, short] = width > height ? ['across', 'up'] : ['up', 'across'];
  return `long axis ${text(Math.max(width, height))} ${long}, short axis ${text(Math.min(width, height))} ${short}`;
}
