/** What is written in a drawn box, as far as it has room. */

/** Of the usual letter's height, how wide it is on average, and how high a line stands. */
const WIDE = 0.56;
const LINE = 1.3;

export interface LabelLine {
  readonly text: string;
  /** A number that is cut short is another number: where it has no room it is parted at its cross, or left out. */
  readonly isSize?: boolean;
}

/** Lines from the first on that have room; names shortened where they are too long. @param letter height, pixels. */
export function linesThatFit(
  lines: readonly LabelLine[],
  box: { readonly width: number; readonly height: number },
  letter: number,
): string[] {
  const room = Math.floor((box.width - letter * 0.6) / (letter * WIDE));
  const most = Math.max(0, Math.floor((box.height - letter * 0.3) / (letter * LINE)));
  const told: string[] = [];
  for (const { text, isSize } of lines) {
    const more = isSize ? parted(text, room) : shortened(text, room);
    if (told.length + more.length <= most) told.push(...more);
  }
  return told;
}

function parted(size: string, room: number): string[] {
  if (size.length <= room) return [size];
  const cross = size.indexOf(' x ');
  const halves = cross < 0 ? [] : [size.slice(0, cross + 2), size.slice(cross + 3)];
  return halves.every((half) => half.length <= room) ? halves : [];
}

/** Nothing where too little of it would be left to know it by. */
function shortened(name: string, room: number): string[] {
  if (name.length <= room) return [name];
  return room < 5 ? [] : [`${name.slice(0, room - 1).trimEnd()}…`];
}
