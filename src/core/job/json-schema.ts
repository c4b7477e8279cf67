/** The JSON Schema of job files, made from the definition that checks them. */
import * as z from 'zod';
import { writtenJob } from './written';

/** JSON Schema draft 2020-12, as published in resources. */
export function jobJsonSchema(): unknown {
  return z.toJSONSchema(writtenJob, { io: 'input', target: 'draft-2020-12' });
}
