/** `schema`: the JSON Schema of job files, made from the definition that checks them. */
import { jobJsonSchema } from '../../core/job/json-schema';
import { jsonText } from '../print/problems';
import type { Verb } from '../verb';

export const schema: Verb = {
  name: 'schema',
  summary: 'print the JSON Schema of job files',
  more: `JSON Schema draft 2020-12, for editors and for programs that write jobs. The same lies in
resources/job.schema.json; "check" finds more than a schema can say.`,
  examples: ['npm run -s matwright -- schema'],
  takesJob: false,
  options: [],
  async run(world) {
    await world.say(jsonText(jobJsonSchema()));
    return 0;
  },
};
