/** `hang`: by what a frame hangs, what that carries, and where hooks and nails go on the wall. */
import { hang } from '../../core/hanging/hang';
import { hangingAsk } from '../../core/hanging/ask-of';
import { hangingWords } from '../../core/hanging/words/hanging-words';
import { bySeverity } from '../../core/problem';
import { hangingText } from '../description/hanging';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { findJob } from '../read-job';
import { refuse } from '../refuse';
import { findShelf, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';

export const hangVerb: Verb<{ shelf?: string; json?: true }> = {
  name: 'hang',
  summary: 'say how the framed picture hangs, what that carries, and where its nails go',
  more: `The job's "hanging" says what it hangs by and what it weighs, its "wall" where it hangs, by itself
or in a row, a grid, on stairs or in a group; what they leave out is worked out from the frame.
Loads are parts of the weight, and masses where it is known. A shelf (resources/shelf.md) gives
wire, hooks and rings with their ratings: those that the job names, else the lightest that hold.
The paper for it: export --only hanging-sheet,wall-template.`,
  examples: [
    'npm run -s matwright -- hang resources/samples/7-library-wall.json',
    'npm run -s matwright -- hang resources/samples/2-fern-cyanotype.json --json',
  ],
  takesJob: true,
  options: [
    shelfOption('a table of what you have: wire, hooks, rings, with what they may carry'),
    jsonOption('"hanging" and "wall": every length in mm, every weight in kg, every load as a part of the weight'),
  ],
  async run(world, { shelf: file, json = false }, name) {
    const found = await findJob(name, world);
    if (!found.ok) return refuse(found, json, world);
    const shelf = file === undefined ? undefined : await findShelf(file, world);
    if (shelf && !shelf.ok) return refuse({ code: 2, problems: shelf.problems }, json, world);
    const ask = hangingAsk(found.job, found.layout, shelf?.value);
    const hung = hang(ask);
    const told = found.problems.filter(({ at }) => !/^(hanging|wall)/.test(at));
    const problems = bySeverity([...told, ...(shelf?.problems ?? []), ...hung.problems]);
    if (!hung.ok) return refuse({ code: 1, problems }, json, world);
    if (json) {
      await world.say(jsonText({ ok: true, lengths: 'mm', weights: 'kg', ...hung.value, problems }));
    } else {
      await world.say(hangingText(found.job, hangingWords(ask, hung.value), world.columns));
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};
