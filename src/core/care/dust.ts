/** Judges what keeps dust out of the package. */
import { notCounted } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import type { Subject } from './subject';

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
