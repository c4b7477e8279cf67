/** What a job file may say of the stuff things are made of: how thick, how heavy, how sound. */
import * as z from 'zod';
import { length } from './written-lengths';

/** Beside a nominal `thickness`. */
export const thicknesses = {
  thinnest: length.optional().describe('What it may be at least. Default: as is usual for the material.'),
  thickest: length.optional().describe('What it may be at most. Default: as is usual for the material.'),
};

export const mass = z.string().max(40).meta({
  id: 'Mass',
  description: 'A weight with its unit: "350 g", "2.5 kg", "8.4 lb", "3 lb 6 oz".',
});

export const density = z
  .number()
  .positive()
  .max(25)
  .describe('In g/cm³ (kg per litre). Default: as published for the material, else unknown and not counted.');

export const FIBRES = ['cotton', 'purified pulp', 'wood pulp'] as const;

export const quality = z
  .strictObject({
    fibre: z.enum(FIBRES).optional().describe('What it is made of. Default unknown.'),
    ph: z.number().min(0).max(14).optional().describe('As its maker states it. Default unknown.'),
    reserve: z
      .number()
      .min(0)
      .max(20)
      .optional()
      .describe('Alkaline reserve, percent of calcium carbonate; 0 for an unbuffered board. Default unknown.'),
    photoTested: z
      .boolean()
      .optional()
      .describe('True where it has passed the photographic activity test (ISO 18916).'),
  })
  .meta({ id: 'Quality', description: 'How sound a board is for what lies against it, as its maker states it.' });
