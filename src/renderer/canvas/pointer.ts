/** Pointer and wheel on the canvas: panning, zooming and dragging told apart, as calls to whoever draws. */
import type { Point } from '../../core/geometry/box';

export interface PointerCalls {
  /** True when dragging should move the view, whatever lies below. */
  readonly pans: () => boolean;
  readonly hover: (pixel: Point | undefined) => void;
  /** The main button went down and up in one place. */
  readonly click: (pixel: Point) => void;
  /** Begins a drag of what lies at a pixel; false when it cannot be dragged, and the view is moved instead. */
  readonly begin: (pixel: Point) => boolean;
  readonly drag: (from: Point, to: Point) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
  readonly pan: (by: Point) => void;
  readonly zoom: (factor: number, at: Point) => void;
}

/** The most one turn zooms: a mouse's wheel with Ctrl sends steps ten times those of a pinch. */
const MOST_AT_ONCE = { pinch: 1.25, wheel: 2 };

/** A press becomes a drag after this many pixels. */
const SLACK = 3;

interface Press {
  readonly id: number;
  readonly start: Point;
  last: Point;
  mode: 'press' | 'drag' | 'pan';
}

/** Listens on an element; the answer stops listening. */
export function listenToPointer(element: HTMLElement, calls: PointerCalls): () => void {
  let press: Press | undefined;
  const stop = new AbortController();
  const at = (event: PointerEvent | WheelEvent): Point => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const on = <K extends keyof HTMLElementEventMap>(type: K, handler: (event: HTMLElementEventMap[K]) => void) =>
    element.addEventListener(type, handler, { signal: stop.signal, passive: false });

  on('pointerdown', (event) => {
    if (event.target instanceof Element && event.target.closest('[data-own-pointer]')) return;
    const pans = event.button === 1 || calls.pans();
    if (event.button !== 0 && !pans) return;
    event.preventDefault();
    element.focus({ preventScroll: true });
    element.setPointerCapture(event.pointerId);
    press = { id: event.pointerId, start: at(event), last: at(event), mode: pans ? 'pan' : 'press' };
  });
  on('pointermove', (event) => {
    const pixel = at(event);
    if (press === undefined || press.id !== event.pointerId) return calls.hover(pixel);
    if (press.mode === 'press' && Math.hypot(pixel.x - press.start.x, pixel.y - press.start.y) > SLACK) {
      press.mode = calls.begin(press.start) ? 'drag' : 'pan';
    }
    if (press.mode === 'drag') calls.drag(press.start, pixel);
    if (press.mode === 'pan') calls.pan({ x: pixel.x - press.last.x, y: pixel.y - press.last.y });
    press.last = pixel;
  });
  on('pointerup', (event) => {
    if (press?.id !== event.pointerId) return;
    if (press.mode === 'drag') calls.drop();
    if (press.mode === 'press') calls.click(press.start);
    press = undefined;
  });
  const cancel = () => {
    if (press?.mode === 'drag') calls.cancel();
    press = undefined;
  };
  on('pointercancel', cancel);
  on('lostpointercapture', cancel);
  on('pointerleave', () => press === undefined && calls.hover(undefined));
  // Caught on the way down, so that Escape ends the drag and nothing else.
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape' || press?.mode !== 'drag') return;
      event.stopPropagation();
      cancel();
    },
    { signal: stop.signal, capture: true },
  );
  on('wheel', (event) => {
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
    // A pinch comes as a wheel with Ctrl and small steps.
    const [speed, most] = event.ctrlKey ? [0.012, MOST_AT_ONCE.pinch] : [0.0016, MOST_AT_ONCE.wheel];
    if (event.shiftKey && !event.ctrlKey) calls.pan({ x: -event.deltaY * unit - event.deltaX * unit, y: 0 });
    else calls.zoom(Math.min(most, Math.max(1 / most, Math.exp(-event.deltaY * unit * speed))), at(event));
  });
  return () => stop.abort();
}
