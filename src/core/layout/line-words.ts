/** The measures of grooves and ruled lines in words, the same on screen, paper and terminal. */
import type { FaceLine } from '../job/job';
import { decimalText, showSetting, type Showing } from '../units';
import { grooveDepth } from './face-lines';

/** A setting that a thousandth of an inch counts for: on the shown step, or in decimals. */
export function settingText(mm: number, showing: Showing): string {
  return showSetting(mm, showing).withUnit;
}

/** Pens are sold by their width in millimetres, wherever one is. */
export function penText(mm: number): string {
  return `${Number(decimalText(mm, 'mm', 2))} mm`;
}

/** `1/16 in wide, 0.031 in deep`, or `pen of 0.5 mm`. */
export function lineMeasures(
  line:
    | { readonly kind: 'groove'; readonly width: number; readonly angleDegrees: number }
    | { readonly kind: 'ruled'; readonly width: number },
  showing: Showing,
): string {
  if (line.kind === 'ruled') return `pen of ${penText(line.width)}`;
  return `${settingText(line.width, showing)} wide, ${settingText(grooveDepth(line), showing)} deep`;
}

export function lineWord({ kind }: Pick<FaceLine, 'kind'>): 'groove' | 'ruled line' {
  return kind === 'groove' ? 'groove' : 'ruled line';
}
