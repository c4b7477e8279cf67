/** What is written in a drawn box, as far as it has room, and where; pixels from the top left of the sheet. */

export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Of the usual letter's height, how wide it is on average and at the most, and how high a line stands. */
const WIDE = 0.56;
const WIDEST = 0.62;
const LINE = 1.3;

export interface LabelLine {
  readonly text: string;
  /** Where it has no room in one line, it is parted at its cross. */
  readonly isSize?: boolean;
}

/** Lines from the first on that have room whole; nothing is cut short, since a part of a number is another number. @param letter height, pixels. */
export function linesThatFit(
  lines: readonly LabelLine[],
  box: { readonly width: number; readonly height: number },
  letter: number,
): string[] {
  const room = Math.floor((box.width - letter * 0.6) / (letter * WIDE));
  const most = Math.max(0, Math.floor((box.height - letter * 0.3) / (letter * LINE)));
  const told: string[] = [];
  for (const { text, isSize } of lines) {
    const more = text.length <= room ? [text] : isSize ? parted(text, room) : [];
    if (told.length + more.length <= most) told.push(...more);
  }
  return told;
}

function parted(size: string, room: number): string[] {
  const cross = size.indexOf(' x ');
  const halves = cross < 0 ? [] : [size.slice(0, cross + 2), size.slice(cross + 3)];
  return halves.every((half) => half.length <= room) ? halves : [];
}

/** Upon which each line stands, from the upper left corner of their box down: no more is covered than has to be. */
export function labelGrounds(lines: readonly string[], box: Room, letter: number): Room[] {
  return lines.map(({ length }, index) => ({
    x: box.x + 1,
    y: box.y + (0.2 + LINE * index) * letter,
    width: Math.min(box.width - 2, (length * WIDEST + 0.6) * letter),
    height: LINE * letter,
  }));
}

/** Of an arrow to the top of a piece, in letters. */
const ARROW = 1.2;

/** In the middle of the edge that hangs at the top, else in the corners opposite the label; undefined where all are taken. */
export function arrowPlace(box: Room, turned: boolean, letter: number, taken: readonly Room[]): Room | undefined {
  const size = ARROW * letter;
  const inset = 0.3 * letter;
  if (Math.min(box.width, box.height) < size + 2 * inset) return undefined;
  const [left, top] = [box.x + inset, box.y + inset];
  const [right, bottom] = [box.x + box.width - inset - size, box.y + box.height - inset - size];
  const middle = turned ? { x: left, y: (top + bottom) / 2 } : { x: (left + right) / 2, y: top };
  const spots = [middle, { x: turned ? left : right, y: turned ? bottom : top }, { x: right, y: bottom }];
  return spots.map((spot) => ({ ...spot, width: size, height: size })).find((spot) => isFree(spot, taken));
}

/** For its letter: the lower left corner of a window, else the others; undefined where it has no room. */
export function letterPlace(name: string, window: Room, letter: number, taken: readonly Room[]): Room | undefined {
  const [width, height] = [(name.length * WIDEST + 0.3) * letter, LINE * letter];
  const inset = 0.2 * letter;
  if (window.width < width + 2 * inset || window.height < height + 2 * inset) return undefined;
  const [left, top] = [window.x + inset, window.y + inset];
  const [right, bottom] = [window.x + window.width - inset - width, window.y + window.height - inset - height];
  const corners = [bottom, top].flatMap((y) => [left, right].map((x) => ({ x, y, width, height })));
  return corners.find((corner) => isFree(corner, taken));
}

function isFree(spot: Room, taken: readonly Room[]): boolean {
  return !taken.some(
    (one) =>
      spot.x < one.x + one.width &&
      one.x < spot.x + spot.width &&
      spot.y < one.y + one.height &&
      one.y < spot.y + spot.height,
  );
}
