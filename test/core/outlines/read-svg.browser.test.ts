/** SVG files beside Chromium: where it draws an outline, ours lies too. */
import { afterEach, describe, expect, it } from 'vitest';
import { shiftOutline } from '../../../src/core/geometry/outline';
import { outlineInSize, readOutlinePath } from '../../../src/core/outlines/path-outline';
import { readSvg } from '../../../src/core/outlines/read-svg';
import { trueDistance } from '../geometry/true-distance';
import { DRAWINGS } from './drawings';

const MILLIMETRES = 25.4 / 96;
/** Chromium keeps its paths in single precision, and makes arcs of curves of its own. */
const ALIKE = 0.02;

afterEach(() => {
  document.body.replaceChildren();
});

/** Points along the one shape that Chromium shows, mm from the drawing's upper left corner. */
function shownPoints(svg: string): { x: number; y: number }[] {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  const root = document.body.appendChild(document.importNode(parsed, true)) as unknown as SVGSVGElement;
  const shapes = [
    ...root.querySelectorAll<SVGGeometryElement>('path, rect, circle, ellipse, polygon, polyline'),
  ].filter(
    (shape) =>
      shape.getBoundingClientRect().width > 0 &&
      shape.checkVisibility({ visibilityProperty: true }) &&
      getComputedStyle(shape).fill !== 'none',
  );
  const corner = root.getBoundingClientRect();
  const [shape] = shapes.filter((each) => !each.closest('defs, symbol, clipPath, metadata'));
  const length = shape!.getTotalLength();
  const matrix = shape!.getScreenCTM()!;
  return Array.from({ length: 200 }, (_, step) => {
    const { x, y } = shape!.getPointAtLength((length * step) / 200).matrixTransform(matrix);
    return { x: (x - corner.x) * MILLIMETRES, y: (y - corner.y) * MILLIMETRES };
  });
}

describe('Chromium’s own geometry', () => {
  // A repeat has its shape where no page can reach it.
  it.each(DRAWINGS.filter(({ svg }) => !svg.includes('<use')))('$name', ({ svg }) => {
    const read = readSvg(svg);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { path, natural } = read.value;
    const found = readOutlinePath(path);
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    const { left, top } = found.contour.bounds;
    const outline = shiftOutline(outlineInSize(path, natural)!, { x: left, y: -top });
    for (const { x, y } of shownPoints(svg)) expect(trueDistance(outline, { x, y: -y })).toBeLessThan(ALIKE);
  });
});
