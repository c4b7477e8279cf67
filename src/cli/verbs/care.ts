/** `care`: how well a build keeps its pictures, held against published guidance, and what the next grade would take. */
import { NO_CERTIFICATE } from '../../core/care/cautions';
import { costWords, findingWords, gradeWords } from '../../core/care/care-words';
import { judgeCare, type Care } from '../../core/care/judge-care';
import { describeCare } from '../description/care';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { findJob } from '../read-job';
import { refuse } from '../refuse';
import { findShelf, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';

export const care: Verb<{ json?: true; shelf?: string }> = {
  name: 'care',
  summary: 'grade the care a build takes of its pictures, by published guidance',
  more: `The grades are decorative, protective and conservation; resources/README.md says what each
asks. The whole is graded as the least of its items. What the job does not say is never taken
for good, and without knowing the boards there is no grade. Each source is named with how
surely it is known. It certifies nothing: what is valuable, fragile, old or double-sided goes
to a conservator.`,
  examples: [
    'npm run -s matwright -- care resources/samples/2-fern-cyanotype.json',
    'npm run -s matwright -- care resources/samples/2-fern-cyanotype.json --shelf resources/shelf.csv',
    'npm run -s matwright -- care --json resources/samples/1-sea-chart.json',
  ],
  takesJob: true,
  options: [
    shelfOption('price the steps to the next grade by what you have'),
    jsonOption('"grade" (left out where there is none), "items", "next", "cautions" and "advice"'),
  ],
  async run(world, { json = false, shelf: file }, name) {
    const found = await findJob(name, world);
    if (!found.ok) return refuse(found, json, world);
    const { job, layout } = found;
    const shelf = file === undefined ? undefined : await findShelf(file, world);
    if (shelf?.ok === false) return refuse({ code: 2, problems: shelf.problems }, json, world);
    const judgement = judgeCare(job, layout, shelf?.value);
    const problems = [...found.problems, ...(shelf?.problems ?? [])];
    if (json) {
      await world.say(jsonText({ ok: true, ...asData(judgement), problems }));
    } else {
      await world.say(describeCare(job.title, judgement, world.columns));
      world.tell(problems.length === 0 ? '' : `\n${problemsText(problems, world.columns)}`);
    }
    return 0;
  },
};

/** Items in full, and referred to by their keys from elsewhere. */
function asData(judgement: Care) {
  const { grade, items, holding, unknown, next, cautions, advice } = judgement;
  const keys = (list: Care['items']) => list.map(({ key }) => key);
  return {
    ...(grade === undefined ? {} : { grade }),
    words: gradeWords(judgement),
    certificate: NO_CERTIFICATE,
    cautions,
    items: items.map((item) => ({ ...item, finding: findingWords(item) })),
    holding: keys(holding),
    unknown: keys(unknown),
    ...(next
      ? {
          next: {
            ...next,
            steps: next.steps.map(({ item, step }) => ({ item: item.key, ...step })),
            words: costWords(next),
          },
        }
      : {}),
    advice,
  };
}
