/** Everything an SVG file draws, as strokes in mm with y down, found while its XML is read. */
import { SaxesParser, type SaxesTagNS } from 'saxes';
import { bad, good, type Problem, type Result } from '../problem';
import { boundsOfPieces, mapPiece, type Stroke } from './piece';
import { refusal } from './refusal';
import { calledAs, enter, notFollowed, OUTERMOST, type Opened, type Scope } from './svg-scope';
import { drawsShape, strokesOfShape } from './svg-shape';
import { placingIn } from './svg-style';

/** A stroke and the element that draws it. */
export interface Drawn extends Stroke {
  /** As a message calls it: `The <path> on line 4`. */
  readonly what: string;
}

const SVG = 'http://www.w3.org/2000/svg';

/** Definitions and words about the drawing: nothing within is drawn where it stands. */
const PASSED_OVER = new Set([
  'defs', 'title', 'desc', 'metadata', 'style', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'linearGradient',
  'radialGradient', 'filter', 'view', 'cursor', 'font', 'font-face', 'animate', 'animateColor', 'animateMotion',
  'animateTransform', 'set', 'color-profile',
]); // prettier-ignore

/** Raised to leave the parser at the first fault. */
class Refused extends Error {
  constructor(readonly problem: Problem) {
    super(problem.message);
  }
}

/** What the file draws, up to where it is refused. Entities and document types are never followed. */
export function readDrawing(text: string): Result<readonly Drawn[]> {
  const reader = new DrawingReader();
  try {
    reader.read(text);
  } catch (fault) {
    if (fault instanceof Refused) return bad([fault.problem]);
    throw fault;
  }
  return good(reader.drawn);
}

class DrawingReader {
  readonly drawn: Drawn[] = [];
  private readonly scopes: Scope[] = [OUTERMOST];
  private readonly parser = new SaxesParser({ xmlns: true });
  private line = 1;
  /** The namespace of the root: files without any are taken for SVG too. */
  private namespace: string | undefined;
  private sheet = '';

  read(text: string): void {
    const { parser } = this;
    parser.on('error', (error) => this.stopAt(error));
    parser.on('opentagstart', () => (this.line = parser.line));
    parser.on('opentag', (tag) => this.open(tag));
    parser.on('closetag', (tag) => this.close(tag));
    parser.on('text', (words) => void (this.sheet += words));
    parser.on('cdata', (words) => void (this.sheet += words));
    parser.write(text).close();
  }

  private stopAt(error: Error): never {
    const words = error.message.replace(/^\d+:\d+:\s*/, '').replace(/\.$/, '');
    const found = `Line ${this.parser.line} isn't well-formed XML: ${words}.`;
    if (this.namespace === undefined) throw new Refused(notSvg(`The file is no SVG. ${found}`));
    throw new Refused(refusal('outline-unreadable', found, 'save it again as plain SVG from the drawing program'));
  }

  private open(tag: SaxesTagNS): void {
    this.sheet = '';
    const element: Opened = {
      name: tag.local,
      line: this.line,
      attribute: (name) => (Object.hasOwn(tag.attributes, name) ? tag.attributes[name]?.value : undefined),
    };
    if (this.namespace === undefined) {
      const known = tag.local === 'svg' && (tag.uri === SVG || tag.uri === '');
      if (!known) throw new Refused(notSvg(`The file is no SVG: it begins with <${tag.name}>.`));
      this.namespace = tag.uri;
    }
    const outer = this.scopes.at(-1) ?? OUTERMOST;
    this.scopes.push(this.scopeOf(tag, element, outer));
  }

  private scopeOf(tag: SaxesTagNS, element: Opened, outer: Scope): Scope {
    const { name } = element;
    const isForeign = tag.uri !== this.namespace;
    if (!isForeign && name === 'script') throw new Refused(hasScript(element));
    if (!outer.drawn || isForeign || PASSED_OVER.has(name)) return { ...outer, drawn: false };
    const scope = orRefuse(enter(outer, element));
    if (scope.drawn) refuseUnfit(element);
    if (scope.drawn && scope.visible && drawsShape(name)) this.draw(element, scope);
    return scope;
  }

  private draw(element: Opened, scope: Scope): void {
    const what = calledAs(element);
    const strokes = orRefuse(strokesOfShape({ ...element, what, viewport: scope.viewport }));
    if (strokes.length === 0) return;
    if (scope.cutter !== undefined) orRefuse(notFollowed(element, `is cut off (${lowered(scope.cutter)})`));
    if (strokes.some((stroke) => leavesFrame(stroke, scope)))
      orRefuse(notFollowed(element, 'reaches out of the <svg> that it lies in, and is cut off there'));
    for (const { pieces, closed } of strokes)
      this.drawn.push({ what, closed, pieces: pieces.map((piece) => mapPiece(piece, scope.map)) });
  }

  private close(tag: SaxesTagNS): void {
    this.scopes.pop();
    if (tag.local !== 'style' || tag.uri !== this.namespace) return;
    const placing = placingIn(this.sheet);
    const element = { name: 'style', line: this.line, attribute: () => undefined };
    if (placing) orRefuse(notFollowed(element, `sets ${placing}`));
  }
}

function orRefuse<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  const [problem] = result.problems;
  throw problem ? new Refused(problem) : new Error('refused without a problem');
}

/** Rounding may carry an edge that lies on the frame beyond it, in parts of the frame. */
const ON_FRAME = 1e-6;

function leavesFrame({ pieces }: Stroke, { frames }: Scope): boolean {
  return frames.some(({ map, box }) => {
    const bounds = boundsOfPieces(pieces.map((piece) => mapPiece(piece, map)));
    const slack = ON_FRAME * Math.max(box.right - box.left, box.top - box.bottom);
    const [left, bottom] = [box.left - bounds.left, box.bottom - bounds.bottom];
    return Math.max(left, bottom, bounds.right - box.right, bounds.top - box.top) > slack;
  });
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

function refuseUnfit(element: Opened): void {
  const { name } = element;
  const what = calledAs(element);
  if (name === 'text' || name === 'flowRoot')
    throw new Refused(
      refusal('outline-has-text', `${what} is text.`, 'turn it into a path in the drawing program, or take it out'),
    );
  if (name === 'image')
    throw new Refused(
      refusal('outline-has-image', `${what} is a picture.`, 'trace it in the drawing program, or take it out'),
    );
  if (name === 'use') orRefuse(notFollowed(element, 'draws a copy of something else'));
  if (name === 'switch' || name === 'foreignObject') orRefuse(notFollowed(element, 'draws what depends on the viewer'));
}

function hasScript(element: Opened): Problem {
  return refusal('outline-has-script', `${calledAs(element)} is a program, which is never run.`, 'take it out');
}

export function notSvg(found: string): Problem {
  return refusal('outline-not-svg', found, 'choose a file that a drawing program saved as SVG');
}
