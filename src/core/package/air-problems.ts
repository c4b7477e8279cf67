/** Pictures with too little air before the glazing, and mats that press on them or lie hollow. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import { airOf, type Air, type Lack } from './air';
import { LACK_WORDS, matWords, picturesCalled } from './air-words';
import { matOnPictures } from './pressure';

/** One for each kind of lack, with the pictures it holds of. */
export function airProblems(job: Job, layout: Layout, show: Show): Problem[] {
  const lacking = airOf(job, layout).flatMap(({ lack, ...air }) => (lack ? [{ air, lack }] : []));
  const codes = [...new Set(lacking.map(({ lack }) => lack.code))];
  return codes.map((code) =>
    problemOf(
      job,
      lacking.filter(({ lack }) => lack.code === code),
      show,
    ),
  );
}

interface Lacking {
  readonly air: Air;
  readonly lack: Lack;
}

function problemOf(job: Job, lacking: readonly Lacking[], show: Show): Problem {
  const worst = lacking.reduce((a, b) => (b.lack.missing > a.lack.missing ? b : a));
  const { code, severity, asked, source } = worst.lack;
  const names = picturesCalled(
    job,
    lacking.map(({ air }) => air.index),
  );
  const { spacer } = job.package;
  const thick = show.stepUp((spacer?.thickness.nominal ?? 0) + worst.lack.missing);
  const found = show.limit(
    code === 'air-for-medium' || code === 'air-for-size' ? worst.air.air.nominal : worst.air.air.least,
  );
  const remedy = `a spacer of ${show.limit(thick)}${code === 'picture-touches-glazing' ? '' : ', or one more layer of mat'}`;
  return {
    code,
    severity,
    at: 'package.spacer',
    message: `${LACK_WORDS[code](names)}: ${found} where ${show.limit(asked)} is asked (${source}). Take ${remedy}.`,
    value: found,
    limit: show.limit(asked),
    remedy,
    fix: {
      label: `A spacer of ${show.limit(thick)}`,
      edits: [{ at: 'package.spacer', value: { thickness: show.exact(thick) } }],
    },
  };
}

export function matProblems(job: Job, layout: Layout, show: Show): Problem[] {
  const found = matOnPictures(job, layout);
  return (['presses', 'hollow'] as const).flatMap((kind): Problem[] => {
    const alike = found.filter((one) => one.kind === kind);
    const [first] = alike;
    if (!first) return [];
    const worst = alike.reduce((a, b) => (b.strips > a.strips ? b : a));
    const names = picturesCalled(
      job,
      alike.map(({ index }) => index),
    );
    return [
      {
        code: kind === 'presses' ? 'mat-presses-picture' : 'mat-lies-hollow',
        severity: kind === 'presses' ? 'warning' : 'note',
        at: `pictures[${first.index}]`,
        message: `${matWords(worst, names, show)}${alike.length > 1 ? ' The height is that of the thickest.' : ''}`,
        value: show.limit(worst.strips),
        remedy: `strips of board ${show.limit(worst.strips)} high beside the picture`,
      },
    ];
  });
}
