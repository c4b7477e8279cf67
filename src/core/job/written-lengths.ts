/** Lengths and sizes as a job file may write them. */
import * as z from 'zod';

export const length = z.union([z.string().max(60), z.number()]).meta({
  id: 'Length',
  description:
    'A length as one writes it at the bench: "11 1/4 in", "6-1/2", "6½", "0\'6 1/2\\"", "16.5 cm", "165.1 mm", "12,5 mm". Without a unit, or as a bare number, it is in the job\'s units. What is written is kept.',
});

export const size = z.union([z.string().max(80), z.strictObject({ width: length, height: length })]).meta({
  id: 'Size',
  description:
    'Width x height as the piece hangs: "8 x 10 in", "204 x 291 mm", an ISO 216 name such as "A4" (upright) or "A4 landscape", or { "width": ..., "height": ... }.',
});

/** From the edges of something. */
export const place = z.strictObject({
  left: length.optional(),
  right: length.optional(),
  top: length.optional(),
  bottom: length.optional(),
});

export type WrittenPlace = z.infer<typeof place>;
