/** Plans a show: chooses the frame sizes, and gives each picture its frame and its mat. */
import { nearestWord } from '../nearest-word';
import { bad, good, type Problem, type Result } from '../problem';
import { ofKind, type Shelf } from '../shelf/shelf';
import { showingOf } from '../units';
import { candidatesOf } from './candidates';
import { chooseSizes } from './choose-sizes';
import { choosingFor } from './choosing-for';
import { costsOf } from './costs';
import { hangAll } from './hang';
import { patternOf, withRange, type Pattern } from './pattern';
import { OWN_FRAME, type ShowPicture } from './picture';
import type { ShowOptions, ShowPlan } from './plan';
import { worthTelling } from './tell';
import { framesToBuy } from './to-buy';
import { tooShallow } from './why-left';
import { tryPicture } from './try-pictures';
import { titled } from './words';

/**
 * The same plan for the same pictures, frames and options, whatever the order of the list and of the shelf and whatever unit
 * they are written in. Pictures that no frame takes are told apart, and do not keep the rest from being planned.
 */
export function planShow(
  pictures: readonly ShowPicture[],
  given: Pattern,
  shelf: Shelf,
  options: ShowOptions = {},
): Result<ShowPlan> {
  const checked = patternOf(given);
  const ranged = checked.ok ? withRange(checked.value, options.range ?? {}) : checked;
  if (!ranged.ok) return ranged;
  const unknown = unknownFrames(pictures, shelf);
  if (unknown.length > 0) return bad(unknown);
  const pattern = ranged.value;
  const count = pictures.reduce((sum, one) => sum + one.count, 0);
  const costs = costsOf(shelf, pattern.job, count, options.by);
  if (!costs.ok) return costs;
  const candidates = candidatesOf(pattern, shelf, costs.value, boundTo(pictures));
  const tried = pictures.map((picture) => tryPicture(pattern, picture, candidates.frames));
  const choosing = choosingFor(tried, candidates, options.onShelfOnly ?? false);
  const { sizes, ...chosen } = chooseSizes(choosing, candidates, costs.value, options);
  const places = hangAll({ pattern, tried, choosing, candidates, costs: costs.value, sizes, options });
  const { by, counted, notCounted } = costs.value;
  const { range, measured } = pattern.job.borders;
  const plan = {
    showing: showingOf(pattern.job),
    range: { ...range, measured },
    aim: options.aim ?? 'cost',
    ...{ by, counted, notCounted },
    pictures: count,
    sizes: candidates.sizes,
    leftOut: [...candidates.leftOut, ...tooShallow(tried, candidates, pattern.job)],
    ...chosen,
    places,
    toBuy: framesToBuy(places),
  };
  return good({ ...plan, problems: worthTelling(plan) });
}

function boundTo(pictures: readonly ShowPicture[]): ReadonlySet<string> {
  return new Set(pictures.flatMap(({ frame }) => frame?.toLowerCase() ?? []));
}

/** Names in the list that no frame of the shelf has. */
function unknownFrames(pictures: readonly ShowPicture[], shelf: Shelf): Problem[] {
  const names = ofKind(shelf, 'frame').map(({ name }) => name);
  const known = new Set([OWN_FRAME, ...names.map((name) => name.toLowerCase())]);
  return pictures.flatMap(({ frame, line }): Problem[] => {
    if (frame === undefined || known.has(frame.toLowerCase())) return [];
    const near = nearestWord(frame, [...names, OWN_FRAME]);
    const meant = near === undefined ? '' : ` Is ${titled(near)} meant?`;
    return [
      {
        code: 'show-frame-unknown',
        severity: 'error',
        at: `line ${line}, column frame`,
        message: `Line ${line}, column “frame”: the shelf has no frame called ${titled(frame)}; write its name, “${OWN_FRAME}”, or nothing.${meant}`,
      },
    ];
  });
}
