/** Colours as a job file writes them. */
import * as z from 'zod';

export const colour = z
  .string()
  .regex(/^#[0-9a-fA-F]{6}$/, 'a colour is # and six hexadecimal digits, such as #f4efe4')
  .meta({ id: 'Colour', description: '# and six hexadecimal digits, such as "#f4efe4".' });
