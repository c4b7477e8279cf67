/** What holds within an element of a drawing: where its units lie, whether it is seen, what cuts it off. */
import { boxAt, type Box, type Size } from '../geometry/box';
import { bad, good, type Result } from '../problem';
import { compose, type Affine } from './affine';
import { refusal } from './refusal';
import { MM_PER_PX } from './svg-numbers';
import { placingOf, readStyle } from './svg-style';
import { readTransform } from './svg-transform';
import { readView } from './svg-view';

export interface Scope {
  /** From the element's units to mm, y down. */
  readonly map: Affine;
  /** What percentages are parts of; undefined where nothing says. */
  readonly viewport: Size | undefined;
  /** False within definitions, and of what isn't displayed. */
  readonly drawn: boolean;
  readonly visible: boolean;
  /** What cuts off what is drawn here, as a message calls it. */
  readonly cutter: string | undefined;
  /** The place of each nested `svg` round here, in units that the map leads to. */
  readonly frames: readonly { readonly map: Affine; readonly box: Box }[];
}

/** An element as it begins. */
export interface Opened {
  readonly name: string;
  readonly line: number;
  readonly attribute: (name: string) => string | undefined;
}

export const OUTERMOST: Scope = {
  map: [MM_PER_PX, 0, 0, MM_PER_PX, 0, 0],
  viewport: undefined,
  drawn: true,
  visible: true,
  cutter: undefined,
  frames: [],
};

export function calledAs({ name, line }: Opened): string {
  return `The <${name}> on line ${line}`;
}

/** The scope within an element, of the one round it. */
export function enter(outer: Scope, element: Opened): Result<Scope> {
  const style = readStyle(element.attribute('style') ?? '');
  const said = (name: string) => style.get(name) ?? element.attribute(name)?.trim();
  if (said('display') === 'none') return good({ ...outer, drawn: false });
  const placing = placingOf(style) ?? (element.attribute('transform-origin') && 'transform-origin');
  if (placing) return notFollowed(element, `sets ${placing} in its style`);
  const transform = readTransform(element.attribute('transform') ?? '');
  if (!transform) return unreadable(element, 'transform');
  const cut = ['clip-path', 'mask'].find((name) => (said(name) ?? 'none') !== 'none');
  const visibility = said('visibility') ?? 'inherit';
  const scope: Scope = {
    ...moved(outer, transform),
    visible: visibility === 'inherit' ? outer.visible : visibility === 'visible',
    cutter: cut ? `${calledAs(element)} has a ${cut}` : outer.cutter,
  };
  return element.name === 'svg' ? enterView(scope, element, outer === OUTERMOST) : good(scope);
}

function enterView(scope: Scope, element: Opened, isOutermost: boolean): Result<Scope> {
  const view = readView(element.attribute, scope.viewport, isOutermost);
  if ('fault' in view) return unreadable(element, view.fault);
  const overflows = element.attribute('overflow') === 'visible' || isOutermost || !view.frame;
  const frame = view.frame && { map: [1, 0, 0, 1, 0, 0] as Affine, box: boxAt(view.frame.corner, view.frame.size) };
  const framed = overflows || !frame ? scope : { ...scope, frames: [...scope.frames, frame] };
  return good({ ...moved(framed, view.map), viewport: view.viewport });
}

function moved(scope: Scope, by: Affine): Scope {
  const frames = scope.frames.map(({ map, box }) => ({ map: compose(map, by), box }));
  return { ...scope, map: compose(scope.map, by), frames };
}

function unreadable(element: Opened, name: string): Result<Scope> {
  const found = `${calledAs(element)} has a ${name} that can't be told.`;
  return bad([refusal('outline-unreadable', found, 'give sizes as numbers or in px, in, mm, cm, pt, pc or Q')]);
}

/** What would be drawn elsewhere, or otherwise, than it is read. */
export function notFollowed(element: Opened, does: string): Result<Scope> {
  const found = `${calledAs(element)} ${does}, which isn't followed.`;
  return bad([refusal('outline-not-followed', found, 'save it as a plain path from the drawing program')]);
}
