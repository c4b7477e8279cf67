/** `describe`: every size of a job and how it was reached, for people or, in full precision, for machines. */
import type { ViewName } from '../../bridge';
import { planCuts } from '../../core/cutting/plan-cuts';
import { ringSpaces } from '../../core/layout/ring-spaces';
import { describeJob } from '../description/describe-job';
import { cutterOption } from '../cutter-option';
import { jsonOption, viewOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { findJob } from '../read-job';
import { refuse } from '../refuse';
import type { Verb } from '../verb';

export const describe: Verb<{ json?: true; view: ViewName; cutter?: string }> = {
  name: 'describe',
  summary: 'print every size of a job and how it was reached',
  more: `With --json: "job" (as understood, defaults filled in), "layout" (every window, layer, border
and gap, in front view) and "plan" (every cut in both views), all lengths in millimetres,
nothing rounded, measured from the lower left corner of the view; "rings" (where there are any: what
lies between windows that follow one another round, and to the middle); and "problems".`,
  examples: [
    'npm run -s matwright -- describe resources/samples/2-fern-cyanotype.json',
    'npm run -s matwright -- describe resources/samples/1-sea-chart.json --view front',
    'npm run -s matwright -- describe resources/samples/1-sea-chart.json --cutter "resources/cutters.json#Long table cutter"',
    'npm run -s matwright -- describe --json resources/samples/3-nine-linocuts.json',
  ],
  takesJob: true,
  options: [
    viewOption('the side the board is cut from, for the cutting order'),
    cutterOption(),
    jsonOption('every length of the layout and the cut plan in mm'),
  ],
  async run(world, { json = false, view, cutter }, name) {
    const found = await findJob(name, world, cutter);
    if (!found.ok) return refuse(found, json, world);
    const { job, layout, problems } = found;
    const plan = planCuts(job, layout);
    if (json) {
      // The layout's own problems are among the job's.
      const told = { job, layout: { ...layout, problems: undefined }, plan };
      const rings = ringSpaces(job, layout);
      const answer = { ok: true, lengths: 'mm', ...told, ...(rings.length > 0 ? { rings } : {}), problems };
      await world.say(jsonText(answer));
    } else {
      await world.say(describeJob({ job, layout, plan, view, width: world.columns }));
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};
