/** Colours in the light from the upper left. */

/** Mixes a `#rrggbb` colour with white (positive part) or black (negative part), -1 to 1. */
export function shaded(colour: string, part: number): string {
  const towards = part > 0 ? 255 : 0;
  const mixed = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(value + (towards - value) * Math.abs(part));
  });
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}

/** Dark or light, whichever can be read on a colour (relative luminance of WCAG 2, in short). */
export function inkOn(colour: string): string {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  return 0.2126 * red ** 2.2 + 0.7152 * green ** 2.2 + 0.0722 * blue ** 2.2 > 0.35 ? '#222222' : '#f4f4f4';
}
