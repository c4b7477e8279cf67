/** Remembers the window's size between runs; a lost or broken memory only means the usual size. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserWindow } from 'electron';

export interface WindowSize {
  /** In device-independent pixels. */
  readonly width: number;
  readonly height: number;
  readonly maximized: boolean;
}

const usual: WindowSize = { width: 1280, height: 800, maximized: false };

/** The size kept last, never larger than the screen's free area or smaller than is usable. */
export function readWindowSize(state: string, area: { width: number; height: number }): WindowSize {
  const { width, height, maximized } = { ...usual, ...readKept(join(state, 'window.json')) };
  return { width: between(width, 640, area.width), height: between(height, 480, area.height), maximized };
}

/** Keeps the size; runs while the window closes, hence at once and not later. */
export function keepWindowSize(state: string, window: BrowserWindow): void {
  const { width, height } = window.getNormalBounds();
  const size: WindowSize = { width, height, maximized: window.isMaximized() };
  try {
    mkdirSync(state, { recursive: true, mode: 0o700 });
    writeFileSync(join(state, 'window.json'), JSON.stringify(size));
  } catch {
    // A size that can't be kept is no reason to trouble somebody who is leaving.
  }
}

function readKept(path: string): Partial<WindowSize> {
  try {
    const kept = JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;
    return {
      ...(Number.isFinite(kept['width']) ? { width: kept['width'] as number } : {}),
      ...(Number.isFinite(kept['height']) ? { height: kept['height'] as number } : {}),
      maximized: kept['maximized'] === true,
    };
  } catch {
    return {};
  }
}

function between(value: number, least: number, most: number): number {
  return Math.round(Math.max(least, Math.min(value, most)));
}
