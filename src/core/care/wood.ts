/** Judges how far paper lies from the bare wood of its frame. */
import { capital } from '../phrases';
import { boxAt, insets, SIDES } from '../geometry/box';
import { notCounted } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { isPainting, leastBy, type Held, type Subject } from './subject';

/** 1 in, which the source calls 25 mm: FACTS cl. 10.02 (quoted). */
const FROM_WOOD = 25;

/** Undefined where there is no picture; paintings on canvas are excepted (cl. 10.02.1). */
export function judgeWood(subject: Subject): Judgement | undefined {
  const papers = subject.held.filter(({ picture }) => !isPainting(picture));
  const worst = leastBy(papers, (held) => fromWood(held, subject));
  if (!worst) return undefined;
  const distance = fromWood(worst, subject);
  return judged({
    key: 'wood',
    what: 'Paper from bare wood',
    at: 'frame',
    now: `${subject.show.length(Math.max(0, distance))} from ${worst.name} to the frame`,
    demands: [insideTheBoards(worst, subject), clearOfWood(worst, distance, subject)],
    step: liningStep,
  });
}

/** mm from the nearest edge of the sheet to the rabbet wall, with the play shared equally. */
function fromWood({ placed }: Held, { layout }: Subject): number {
  return leastInset(placed.sheet, layout.frame.blank) + layout.frame.allowance / 2;
}

function leastInset(sheet: Held['placed']['sheet'], blank: Subject['layout']['frame']['blank']): number {
  const around = insets(boxAt({ x: 0, y: 0 }, blank), sheet);
  return Math.min(...SIDES.map((side) => around[side]));
}

function insideTheBoards({ placed, name }: Held, { layout }: Subject): Demand {
  const met = leastInset(placed.sheet, layout.frame.blank) > 1e-6;
  const words = met
    ? 'Board lies all round it'
    : `The sheet of ${name} reaches to the edge of the package, and so to the wood; board all round it is asked`;
  return { from: 'protective', met, words, sources: [SOURCES.factsWood] };
}

function clearOfWood({ name }: Held, distance: number, { show }: Subject): Demand {
  const met = distance >= FROM_WOOD - 1e-6;
  const words = met
    ? `At ${show.length(distance)} it is no nearer than 1 in (25 mm)`
    : `${capital(name)} comes within ${show.missing(Math.max(0, distance), FROM_WOOD)} of the frame; 1 in (25 mm) is asked, unless the rabbet is lined with metal foil or glass, or the frame is of metal, which a job can’t say`;
  return { from: 'conservation', met, words, sources: [SOURCES.factsWood] };
}

function liningStep(): Step {
  return {
    words: 'Line the rabbet with metal foil tape, or take a frame that leaves more board round the sheet',
    reaches: 'conservation',
    cost: notCounted('tape is not on a shelf'),
  };
}
