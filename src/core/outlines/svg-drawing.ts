/** Everything an SVG file draws, as path data in millimetres: groups, transforms and repeats followed, all else refused. */
import svgpath from 'svgpath';
import type { Size } from '../geometry/box';
import type { Problem } from '../problem';
import { UNMOVED, within, type Matrix } from './matrix';
import { refusal } from './svg-refusals';
import { SHAPES, shapePath } from './svg-shape';
import { pixelsOf, RIGHT_LENGTH } from './css-length';
import { shapingIn, shapingOwn, styleOf } from './svg-style';
import { readTransform, shifted } from './svg-transform';
import type { SvgElement } from './svg-tree';

export interface DrawnPath {
  /** Absolute. */
  readonly path: string;
  /** False of a shape without fill and stroke, which nobody sees. */
  readonly isPainted: boolean;
  readonly line: number;
}

/** What an element inherits from those around it. */
interface Standing {
  readonly toMillimetres: Matrix;
  readonly isVisible: boolean;
  readonly fill: string;
  readonly stroke: string;
  /** `use` elements it stands in. */
  readonly repeats: readonly SvgElement[];
}

const GROUPS = new Set(['svg', 'g', 'a']);
/** Never drawn where they stand. */
const UNDRAWN = new Set(
  `defs symbol clipPath mask marker pattern linearGradient radialGradient meshgradient hatch solidcolor filter metadata
  title desc style view cursor`.split(/\s+/),
);
const TEXTS = new Set(['text', 'tspan', 'textPath', 'tref']);
const PICTURES = new Set(['image', 'video', 'canvas', 'audio', 'iframe']);
const MOST_REPEATS = 2000;

/** Reads a whole tree once; what keeps it from being drawn gathers in `problems`, one of each kind. */
export class SvgDrawing {
  readonly paths: DrawnPath[] = [];
  private readonly refused = new Map<string, Problem>();
  private readonly named = new Map<string, SvgElement>();
  private hasSheet = false;
  private repeats = 0;

  constructor(
    private readonly root: SvgElement,
    toMillimetres: Matrix,
    private readonly whole: Size | undefined,
  ) {
    this.lookOver(root);
    if (root.attributes.has('transform')) this.refuse(refusal.notFollowed('A transform of the whole file', root.line));
    this.walk(root, { toMillimetres, isVisible: true, fill: '', stroke: 'none', repeats: [] });
  }

  get problems(): readonly Problem[] {
    return [...this.refused.values()];
  }

  private refuse(problem: Problem): void {
    if (!this.refused.has(problem.code)) this.refused.set(problem.code, problem);
  }

  /** What counts wherever it stands: programs, style sheets, names. */
  private lookOver(element: SvgElement): void {
    const { name, attributes, line, text } = element;
    if (name === 'script' || [...attributes.keys()].some((key) => /^on/i.test(key))) this.refuse(refusal.script(line));
    if (name === 'style') {
      this.hasSheet = true;
      const shaping = shapingIn(text);
      if (shaping !== undefined) this.refuse(refusal.notFollowed(`“${shaping}” in a style sheet`, line));
    }
    const id = attributes.get('id');
    if (id !== undefined && !this.named.has(id)) this.named.set(id, element);
    for (const child of element.children) this.lookOver(child);
  }

  private walk(element: SvgElement, around: Standing): void {
    const { name, line } = element;
    if (UNDRAWN.has(name) || name === 'script' || styleOf(element, 'display') === 'none') return;
    if (name === 'svg' && element !== this.root)
      return this.refuse(refusal.notFollowed('An <svg> inside the file', line));
    const standing = this.standingOf(element, around);
    if (GROUPS.has(name)) {
      for (const child of element.children) this.walk(child, standing);
    } else if (name === 'use') this.repeat(element, standing);
    else if (!standing.isVisible) return;
    else if (SHAPES.has(name)) this.draw(element, standing);
    else if (TEXTS.has(name)) this.refuse(refusal.text(line));
    else if (PICTURES.has(name)) this.refuse(refusal.image(line));
    else this.refuse(refusal.notFollowed(`<${name}>`, line));
  }

  private standingOf(element: SvgElement, around: Standing): Standing {
    const { line } = element;
    const visibility = styleOf(element, 'visibility');
    for (const property of ['clip-path', 'mask'])
      if ((styleOf(element, property) ?? 'none') !== 'none')
        this.refuse(refusal.notFollowed(`A ${property}`, line, 'cut the shape itself to what is to be seen of it'));
    const shaping = shapingOwn(element);
    if (shaping !== undefined) this.refuse(refusal.notFollowed(`“${shaping}” in a style`, line));
    const painted = (property: 'fill' | 'stroke') => {
      const own = styleOf(element, property);
      return own === undefined || own === 'inherit' ? around[property] : own;
    };
    return {
      ...around,
      toMillimetres: within(around.toMillimetres, this.transformOf(element)),
      isVisible: visibility === undefined || visibility === 'inherit' ? around.isVisible : visibility === 'visible',
      fill: painted('fill'),
      stroke: painted('stroke'),
    };
  }

  private transformOf(element: SvgElement): Matrix {
    const { attributes, line } = element;
    const written = attributes.get('transform')?.trim();
    if (element === this.root || written === undefined || written === '' || written === 'none') return UNMOVED;
    if (styleOf(element, 'transform-origin') !== undefined)
      this.refuse(refusal.notFollowed('A transform-origin', line));
    const matrix = readTransform(written);
    if (matrix && Object.values(matrix).every(Number.isFinite)) return matrix;
    const right = 'matrix, translate, scale, rotate, skewX or skewY with their numbers';
    this.refuse(refusal.unreadable('transform', written, line, right));
    return UNMOVED;
  }

  private draw(element: SvgElement, { toMillimetres, fill, stroke }: Standing): void {
    const read = shapePath(element, this.whole);
    if (!read.ok) return read.problems.forEach((problem) => this.refuse(problem));
    if (read.value.trim() === '') return;
    const { a, b, c, d, e, f } = toMillimetres;
    const drawn = svgpath(read.value) as ReturnType<typeof svgpath> & { readonly err: string };
    if (drawn.err !== '') {
      const place = Number(/at pos (\d+)/.exec(drawn.err)?.[1] ?? 0);
      const near = read.value.slice(place, place + 40);
      // A path that breaks off has nothing at the place where it can't be read on.
      const [what, told] = near === '' ? ['end of the path of a', read.value.trim().slice(-40)] : ['path of a', near];
      const where = `${what} ${element.name}, ${near === '' ? 'after' : 'at'}`;
      return this.refuse(refusal.unreadable(where, told, element.line, 'path data as SVG has it'));
    }
    const isHidden = [fill, stroke].every((paint) => paint === 'none' || paint === 'transparent');
    this.paths.push({
      path: drawn.abs().unshort().matrix([a, b, c, d, e, f]).toString(),
      isPainted: !isHidden || this.hasSheet,
      line: element.line,
    });
  }

  /** A `use` of something in the same file (SVG 2, 5.6): moved by its x and y. */
  private repeat(element: SvgElement, standing: Standing): void {
    const { attributes, line } = element;
    const href = attributes.get('href')?.trim() ?? '';
    const target = href.startsWith('#') ? this.named.get(href.slice(1)) : undefined;
    if (!target)
      return this.refuse(refusal.notFollowed(`A <use> of “${href.slice(0, 40)}”, which is not in the file,`, line));
    this.repeats += 1;
    if (this.repeats > MOST_REPEATS || standing.repeats.includes(element) || ['symbol', 'svg'].includes(target.name))
      return this.refuse(
        refusal.notFollowed(`A <use> of a <${target.name}> here`, line, 'put the shape itself in its place'),
      );
    const [x, y] = (['x', 'y'] as const).map((key) => {
      const written = attributes.get(key);
      const pixels =
        written === undefined ? 0 : pixelsOf(written, key === 'x' ? this.whole?.width : this.whole?.height);
      if (pixels === undefined) this.refuse(refusal.unreadable(`${key} of a use`, written ?? '', line, RIGHT_LENGTH));
      return pixels ?? 0;
    });
    const toMillimetres = within(standing.toMillimetres, shifted(x ?? 0, y ?? 0));
    this.walk(target, { ...standing, toMillimetres, repeats: [...standing.repeats, element] });
  }
}
