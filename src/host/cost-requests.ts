/** What papers of costs look like when a screen asks for them. */
import { z } from 'zod';
import type { CostPapersOptions } from '../bridge';
import type { PlainBoardsUsed } from '../core/cost/boards-used';
import { LONGEST } from '../core/cost/read-value';
import { LARGEST } from '../core/job/reader';
import { showing } from './sheet-requests';

const words = z.string().max(1000);
const side = z.number().positive().max(LARGEST);
const MANY = 5000;

export const boardsUsed: z.ZodType<PlainBoardsUsed> = z
  .array(
    z.strictObject({
      board: words,
      sheets: z
        .array(
          z.strictObject({
            size: z.strictObject({ width: side, height: side }),
            count: z.int().min(1).max(1_000_000),
            isRemnant: z.literal(true).optional(),
            /** Digits as an amount has them at the most. */
            price: z
              .string()
              .regex(/^\d{1,12}(?:\.\d{1,6})?$/)
              .optional(),
          }),
        )
        .min(1)
        .max(MANY),
      areas: z.array(z.number().min(0).max(1e15)).min(1).max(MANY),
    }),
  )
  .max(MANY);

export const costPapersOptions: z.ZodType<CostPapersOptions> = z.strictObject({
  how: z.enum(['by itself', 'together', 'compared', 'against custom']),
  moulding: words.optional(),
  only: z
    .array(z.enum(['proposal', 'proposal-without-prices', 'cost-sheet']))
    .min(1)
    .max(3)
    .refine((kinds) => new Set(kinds).size === kinds.length, 'each kind of paper is made once'),
  paper: z.enum(['letter', 'legal', 'tabloid', 'a4', 'a3']),
  customer: z.string().max(LONGEST).optional(),
  showing,
});
