/** What a job file may say of the borders. */
import * as z from 'zod';
import { length } from './written-lengths';

export const BORDER_RULES = [
  'centred',
  'equal',
  'bottom-amount',
  'bottom-ratio',
  'height-share',
  'equal-steps',
  'equal-ratios',
  'top-as-sides',
  'by-hand',
] as const;

export const borders = z
  .strictObject({
    rule: z
      .enum(BORDER_RULES)
      .optional()
      .describe(
        'centred: left = right, top = bottom; equal: all four; bottom-amount: bottom = top + amount; bottom-ratio: bottom = ratio x top; height-share: top : bottom = share; equal-steps: sides, top, bottom grow by the same length; equal-ratios: by the same factor; top-as-sides: the bottom takes the rest; by-hand: each is given. Default "centred" in a given frame, "equal" in one made to fit.',
      ),
    measured: z
      .enum(['as cut', 'as seen'])
      .optional()
      .describe('From the edge of the blank, or from the sight edge of the frame. Default "as cut".'),
    all: length.optional().describe('With "equal" in a frame made to fit.'),
    sides: length.optional(),
    left: length.optional(),
    right: length.optional(),
    top: length.optional(),
    bottom: length.optional(),
    amount: length.optional().describe('With "bottom-amount". Default 1/2 in (12 mm in a metric job).'),
    ratio: z
      .number()
      .optional()
      .describe(
        'With "bottom-ratio" (default 1.2, that is 5 : 6) and, in a frame made to fit, "equal-ratios" (default 1.1).',
      ),
    share: z.string().max(40).optional().describe('With "height-share", such as "45:55". Default "45:55".'),
    step: length
      .optional()
      .describe('With "equal-steps" in a frame made to fit. Default 1/4 in (6 mm in a metric job).'),
    range: z
      .strictObject({ least: length.optional(), greatest: length.optional() })
      .optional()
      .describe(
        'What every border should lie within, measured as the others are; for choosing a frame. Default: from 1 1/2 in (40 mm in a metric job), without an upper end.',
      ),
  })
  .meta({ id: 'Borders' });
