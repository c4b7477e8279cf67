/** Reads the one outline of an SVG file, with its size in millimetres, or says what keeps it from being one. */
import svgpath from 'svgpath';
import type { Size } from '../geometry/box';
import { bad, good, type Problem, type Result } from '../problem';
import { contourOf } from './contour';
import { outlineProblem } from './outline-problems';
import { readOutlinePath, type PathOutline } from './path-outline';
import { SvgDrawing } from './svg-drawing';
import { refusal } from './svg-refusals';
import { svgTree } from './svg-tree';
import { viewportOf } from './svg-viewport';

/** As a job keeps it. */
export interface ImportedOutline {
  /** SVG path data in millimetres of the drawing, y down, absolute. */
  readonly path: string;
  /** How large it was drawn, mm. */
  readonly natural: Size;
}

/** Figures kept of the larger side: more than any tolerance asks for. */
const FIGURES = 8;

export function readSvg(text: string): Result<ImportedOutline> {
  const tree = svgTree(text);
  if (!tree.ok) return tree;
  const viewport = viewportOf(tree.value);
  if (!viewport.ok) return viewport;
  const { toMillimetres, whole } = viewport.value;
  const drawing = new SvgDrawing(tree.value, toMillimetres, whole);
  if (drawing.problems.length > 0) return bad(drawing.problems);
  const painted = drawing.paths.filter(({ isPainted }) => isPainted);
  // What has neither fill nor stroke is a helper's line beside something painted; alone it is what was meant.
  const shown = painted.length > 0 ? painted : drawing.paths;
  const count = shown.reduce((sum, each) => sum + outlinesIn(each.path), 0);
  if (count > 1) return bad([outlineProblem({ kind: 'many', count }, '')]);
  const path = shown.map((each) => each.path).join('');
  const read = readOutlinePath(path);
  return read.ok ? shortened(path, read) : bad([inMillimetres(read)]);
}

/** For who will not even read so large a file. */
export function tooLargeSvg(bytes: number, most: number): Result<never> {
  return bad([refusal.tooLong(bytes, most)]);
}

function outlinesIn(path: string): number {
  const contour = contourOf(path);
  if (!('kind' in contour)) return 1;
  return contour.kind === 'many' ? contour.count : contour.kind === 'empty' ? 0 : 1;
}

function inMillimetres({ fault }: Extract<PathOutline, { ok: false }>): Problem {
  return outlineProblem(fault, '', ' mm');
}

/** The same in as few figures as tell it to a hundred-millionth of its size. */
function shortened(path: string, { natural }: Extract<PathOutline, { ok: true }>): Result<ImportedOutline> {
  const digits = Math.max(0, FIGURES - Math.ceil(Math.log10(Math.max(natural.width, natural.height))));
  const shorter = svgpath(path).round(digits).toString();
  const read = readOutlinePath(shorter);
  return read.ok ? good({ path: shorter, natural: read.natural }) : bad([inMillimetres(read)]);
}
