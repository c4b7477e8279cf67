/** What a job file may say of a window's shape: a word, or a group with its measures. */
import * as z from 'zod';
import { MOST_CHARACTERS } from '../outlines/contour';
import { length } from './written-lengths';

/** Those that a word alone stands for. */
export const SHAPE_KINDS = [
  'rectangle',
  'rounded',
  'oval',
  'arch',
  'pointed',
  'polygon',
  'cut-corners',
  'stepped',
  'scooped',
] as const;
export const MOST_SIDES = 60;
export const MOST_STEPS = 12;

const rectangle = z.strictObject({ kind: z.literal('rectangle') });
const rounded = z.strictObject({
  kind: z.literal('rounded'),
  radius: length.optional().describe('Of the corners. Default 1/2 in (12 mm in a metric job).'),
});
const oval = z.strictObject({
  kind: z.literal('oval'),
  reveal: z
    .enum(['parallel', 'axes'])
    .optional()
    .describe(
      '"parallel": every layer follows the one below at the same distance all round. "axes": each layer is an ellipse with both axes longer by twice the reveal, as an oval-cutting head makes it; the reveal then differs a little. Default "parallel".',
    ),
});
const arch = z.strictObject({
  kind: z.literal('arch'),
  rise: length
    .optional()
    .describe('Height of the arc over the upright sides. Default half the width, which makes it a semicircle.'),
});
const pointed = z.strictObject({
  kind: z.literal('pointed'),
  rise: length
    .optional()
    .describe(
      'Height of the point over the upright sides; half the width or more. Default: each arc is drawn from the foot of the other.',
    ),
});
const polygon = z.strictObject({
  kind: z.literal('polygon'),
  sides: z.int().min(3).max(MOST_SIDES).optional().describe('Default 8. The largest regular one that the size holds.'),
});
const cutCorners = z.strictObject({
  kind: z.literal('cut-corners'),
  cut: length.optional().describe('Taken off each side at a corner. Default 1 in (25 mm in a metric job).'),
});
const stepped = z.strictObject({
  kind: z.literal('stepped'),
  step: length.optional().describe('Width and height of a step. Default 1/2 in (12 mm in a metric job).'),
  count: z.int().min(1).max(MOST_STEPS).optional().describe('Steps in each corner. Default 1.'),
});
const scooped = z.strictObject({
  kind: z.literal('scooped'),
  radius: length.optional().describe('Of the hollow corners. Default 1 in (25 mm in a metric job).'),
});

const outline = z.strictObject({
  kind: z.literal('outline'),
  path: z
    .string()
    .max(MOST_CHARACTERS)
    .describe('SVG path data of one closed line, y down, in numbers of any scale: it is stretched to the window.'),
});

export const shape = z
  .union([
    z.enum(SHAPE_KINDS),
    z.discriminatedUnion('kind', [
      rectangle,
      rounded,
      oval,
      arch,
      pointed,
      polygon,
      cutCorners,
      stepped,
      scooped,
      outline,
    ]),
  ])
  .meta({
    id: 'Shape',
    description: 'Of the opening of the bottom layer; the layers above follow it. Default "rectangle".',
  });

export type WrittenShape = z.infer<typeof shape>;
