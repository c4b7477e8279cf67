/** Judges the edges: dust that comes in, bare wood beside the paper, and how far the mat holds the sheet. */
import { boxAt, insets, SIDES } from '../geometry/box';
import { notCounted, NOTHING_TO_PAY } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { capital, isPainting, type Held, type Subject } from './subject';

export function judgeDust({ job, hasPaper }: Subject): Judgement {
  const { sealed, dustCover, backing } = job.package;
  const hasBack = job.frame.build === 'with back';
  // Behind a painting its backing board closes it.
  const closed = sealed || dustCover || hasBack || (!hasPaper && backing !== undefined);
  return judged({
    key: 'dust',
    what: 'Dust seal',
    at: 'package.sealed',
    now: sealed
      ? 'edges sealed'
      : dustCover
        ? 'dust cover, edges not sealed'
        : hasBack
          ? 'the frame’s own back'
          : 'none',
    demands: [isClosed(closed), isSealed(sealed)],
    step: () => sealStep(hasPaper),
  });
}

function isClosed(met: boolean): Demand {
  const words = met ? 'It is closed behind' : 'Neither a dust cover nor a seal closes it; one of them is asked';
  return { from: 'protective', met, words, sources: [SOURCES.practice] };
}

function isSealed(met: boolean): Demand {
  const words = met
    ? 'Sealed edges keep dust, insects and polluted air out'
    : 'The edges of the package are not sealed, so dust, insects and polluted air come in; sealed edges are asked';
  return { from: 'conservation', met, words, sources: [SOURCES.aicSealed, SOURCES.cciBacking] };
}

function sealStep(hasPaper: boolean): Step {
  return {
    words: hasPaper
      ? 'Tape the edges of the package, glazing to backing, before it goes into the frame'
      : 'Seal the backing board against the stretcher',
    reaches: 'conservation',
    fix: { label: 'Plan with sealed edges', edits: [{ at: 'package.sealed', value: true }] },
    cost: notCounted('tape is not on a shelf'),
  };
}

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

/** Common practice, no source, mm: 1/16 in (1.5 mm) barely keeps a sheet from slipping, 1/8 in (3 mm) holds it. */
const HOLDS = { barely: 1.5, well: 3 } as const;

/** Undefined where no mat holds a sheet: none lies on it, or all of them float. */
export function judgeHold(subject: Subject): Judgement | undefined {
  const under = subject.job.layers.length > 0 ? subject.held.filter(({ floats }) => !floats) : [];
  const worst = leastBy(under, holdOf);
  if (!worst) return undefined;
  const hold = holdOf(worst);
  return judged({
    key: 'hold',
    what: 'How far the mat covers the sheet',
    at: `pictures[${worst.placed.index}].overlap`,
    now: `${subject.show.fine(hold)} of ${worst.name}`,
    demands: [slips(hold, subject), holdsWell(hold, subject)],
    step: holdStep,
  });
}

/** Where an edge is seen the hinges hold it, so that only covered sides are asked. */
function holdOf({ placed }: Held): number {
  return Math.min(...SIDES.map((side) => placed.hold[side]).filter((hold) => hold >= 0));
}

function slips(hold: number, { show }: Subject): Demand {
  const met = hold >= HOLDS.barely - 1e-6;
  const words = met
    ? 'It does not slip through its window'
    : `Covered by only ${show.fine(hold)} it may slip through its window; 1/16 in (1.5 mm) is the least`;
  return { from: 'protective', met, words, sources: [SOURCES.practice] };
}

function holdsWell(hold: number, { show }: Subject): Demand {
  const met = hold >= HOLDS.well - 1e-6;
  const words = met
    ? `Covered by ${show.fine(hold)} it is held well`
    : `Covered by ${show.fine(hold)} it is held a little; 1/8 in (3 mm) is asked`;
  return { from: 'conservation', met, words, sources: [SOURCES.practice] };
}

function holdStep(): Step {
  return {
    words: 'Let the mat cover the sheet by 1/8 in (3 mm) on every side',
    reaches: 'conservation',
    cost: NOTHING_TO_PAY,
  };
}

function leastBy<T>(items: readonly T[], of: (item: T) => number): T | undefined {
  return items.reduce<T | undefined>((least, item) => (least && of(least) <= of(item) ? least : item), undefined);
}
