/** What is written in a drawn box, as far as it has room. */

/** Of the usual letter's height, how wide it is on average, and how high a line stands. */
const WIDE = 0.56;
const LINE = 1.3;

/** Lines from the first on that have room, shortened where they are too long; none where not even the first has. @param letter height, pixels. */
export function linesThatFit(
  lines: readonly string[],
  box: { readonly width: number; readonly height: number },
  letter: number,
): string[] {
  const room = Math.floor((box.width - letter * 0.5) / (letter * WIDE));
  const most = Math.floor((box.height - letter * 0.2) / (letter * LINE));
  const [first = '', ...others] = lines;
  if (most < 1 || room < first.length) return [];
  return [first, ...others.map((line) => shortened(line, room)).filter((line) => line !== '')].slice(0, most);
}

/** Empty where too little of it would be left to know it by. */
function shortened(line: string, room: number): string {
  if (line.length <= room) return line;
  return room < 5 ? '' : `${line.slice(0, room - 1).trimEnd()}…`;
}
