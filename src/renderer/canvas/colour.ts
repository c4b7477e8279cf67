/** Colours of drawn materials: mixing towards light and shade. */

interface Rgb {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

function parse(hex: string): Rgb {
  const value = Number.parseInt(hex.slice(1), 16);
  return { red: (value >> 16) & 255, green: (value >> 8) & 255, blue: value & 255 };
}

function print({ red, green, blue }: Rgb): string {
  return `#${[red, green, blue].map((part) => Math.round(part).toString(16).padStart(2, '0')).join('')}`;
}

/** Goes `share` (0 to 1) of the way from one #rrggbb colour to another. */
export function mixColours(from: string, to: string, share: number): string {
  const a = parse(from);
  const b = parse(to);
  const mix = (x: number, y: number) => x + (y - x) * share;
  return print({ red: mix(a.red, b.red), green: mix(a.green, b.green), blue: mix(a.blue, b.blue) });
}

/** A colour under light (positive, up to 1) or in shade (negative, down to -1). */
export function lightColour(hex: string, light: number): string {
  return light >= 0 ? mixColours(hex, '#ffffff', light) : mixColours(hex, '#16120c', -light);
}
