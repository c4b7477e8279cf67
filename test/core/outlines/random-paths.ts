/** Path data to try outlines with: smooth closed curves, and anything the letters of a path may make. */
import fc from 'fast-check';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Closed, of cubic curves, round a middle: spokes of many lengths, with handles that are smooth or leave corners. */
export const anyCurvedPath = fc
  .array(fc.record({ far: share, before: share, after: share, slant: share }), { minLength: 3, maxLength: 14 })
  .map((spokes) => {
    const place = (index: number, far: number, off: number) => {
      const angle = ((index + off) / spokes.length) * 2 * Math.PI;
      return `${(100 + far * Math.cos(angle)).toFixed(3)} ${(100 + far * Math.sin(angle)).toFixed(3)}`;
    };
    const reach = ({ far }: { far: number }) => 40 + 50 * far;
    const curves = spokes.map((spoke, index) => {
      const next = spokes[(index + 1) % spokes.length]!;
      const bulge = 1 + 0.4 * (spoke.slant - 0.5);
      return `C${place(index, reach(spoke) * bulge, 0.45 * spoke.after)} ${place(index + 1, reach(next) * bulge, -0.45 * next.before)} ${place(index + 1, reach(next), 0)}`;
    });
    return `M${place(0, reach(spokes[0]!), 0)}${curves.join('')}Z`;
  });

const number = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: -60, max: 60 }).map(String) },
  { weight: 4, arbitrary: fc.double({ min: -60, max: 60, noNaN: true }).map((value) => `${value}`) },
  { weight: 1, arbitrary: fc.constantFrom('1e300', '-1e-300', '0', '1e999', '.5.5', '-', '', '09') },
);
const COUNTS = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 } as const;

const command = fc.constantFrom(...(Object.keys(COUNTS) as (keyof typeof COUNTS)[])).chain((letter) =>
  fc
    .tuple(fc.boolean(), fc.array(number, { minLength: COUNTS[letter], maxLength: COUNTS[letter] }))
    .map(([small, numbers]) => {
      const flagged =
        letter === 'A' ? numbers.map((each, at) => (at === 3 || at === 4 ? `${each.length % 2}` : each)) : numbers;
      return `${small ? letter.toLowerCase() : letter}${flagged.join(' ')}`;
    }),
);

/** Mostly no outline at all. */
export const anyPathData = fc
  .tuple(fc.array(command, { maxLength: 12 }), fc.boolean(), fc.string({ maxLength: 3 }))
  .map(([commands, closes, end]) => `M0 0${commands.join('')}${closes ? 'Z' : ''}${end.length === 3 ? end : ''}`);
