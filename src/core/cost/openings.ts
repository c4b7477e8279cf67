/** What of a mat is counted: windows, their openings in each layer, straight cuts, and openings with curves. */
import type { LayerOpening, Layout } from '../layout/layout';

export interface Openings {
  readonly layers: number;
  readonly windows: number;
  /** Windows that are no rectangles. */
  readonly oddShapes: number;
  /** In all layers together: openings without a curve, openings with one, and straight cuts of both. */
  readonly straight: number;
  readonly curved: number;
  readonly straightCuts: number;
}

/** Nothing without a mat. */
export function openingsOf({ layers, windows }: Pick<Layout, 'layers' | 'windows'>): Openings {
  if (layers.length === 0) return { layers: 0, windows: 0, oddShapes: 0, straight: 0, curved: 0, straightCuts: 0 };
  const openings = windows.flatMap((window) => window.layers);
  const curved = openings.filter(hasCurve).length;
  return {
    layers: layers.length,
    windows: windows.length,
    oddShapes: windows.filter(({ shape }) => shape !== 'rectangle').length,
    straight: openings.length - curved,
    curved,
    straightCuts: openings.reduce((sum, opening) => sum + straightCuts(opening), 0),
  };
}

function hasCurve({ outlines }: LayerOpening): boolean {
  return outlines?.opening.some(({ kind }) => kind !== 'line') ?? false;
}

function straightCuts({ outlines }: LayerOpening): number {
  return outlines ? outlines.opening.filter(({ kind }) => kind === 'line').length : 4;
}
