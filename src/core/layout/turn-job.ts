/** A whole written job turned by a quarter or turned over, so that its layout is the same mat the other way round. */
import { eachSide } from '../geometry/box';
import { exactText } from '../job/exact-text';
import type { Motion } from '../job/motion';
import type { OpenedJob } from '../job/read';
import { movedBorders, type Reached } from '../job/turn-borders';
import { movedFrame, movedLayer } from '../job/turn-frame';
import { movedFree } from '../job/turn-in-job';
import { movedItem } from '../job/turn-item';
import { isQuarterTurn, movedSides } from '../job/motion';
import type { WrittenJob, WrittenNode } from '../job/written';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { axesToHold, takesWhatIsLeft, withHeldGaps } from './held-gaps';
import type { Layout } from './layout';

/**
 * Pictures are turned with their windows; turned over are only the openings, since a picture can't be: without a mat,
 * nothing is.
 */
export function turnJob({ written, job }: OpenedJob, layout: Layout, motion: Motion): Result<WrittenJob> {
  const isBare = job.layers.length === 0;
  if (isBare && !isQuarterTurn(motion)) return good(written);
  const problems: Problem[] = [];
  const say = (problem: Problem) => void problems.push(problem);
  const whole = written.windows ?? job.impliedWindows;
  // Borders that are kept for a mat weight the bottom whichever way the picture stands.
  const arranged =
    whole === undefined
      ? {}
      : isBare
        ? { windows: movedItem(whole, 'windows', motion, say) }
        : movedArrangement(whole, { written, job }, layout, motion, say);
  const { frame, mat, free } = written;
  const moved: WrittenJob = {
    ...written,
    ...(frame ? { frame: movedFrame(frame, motion) } : {}),
    ...(mat?.layers ? { mat: { ...mat, layers: mat.layers.map((layer) => movedLayer(layer, motion)) } } : {}),
    ...arranged,
    ...(free
      ? {
          free: free.map((window, index) => ({
            ...movedFree(window, `free[${index}]`, motion, say),
            at: movedSides(window.at, motion),
          })),
        }
      : {}),
  };
  return problems.some(isError) ? bad(problems) : good(moved, problems);
}

/** Windows and the borders round them; a job whose windows are all placed freely has no borders to share. */
function movedArrangement(
  whole: WrittenNode,
  { written, job }: OpenedJob,
  layout: Layout,
  motion: Motion,
  say: (problem: Problem) => void,
): Pick<WrittenJob, 'windows' | 'borders'> {
  const reached = job.borders.measured === 'as seen' ? layout.borders.seen : layout.borders.cut;
  const texts = eachSide((side) => exactText(reached[side], job.units));
  const { rule } = job.borders;
  const isEven = rule === 'centred' || rule === 'equal';
  const axes = isEven ? [] : axesToHold(whole, reached, motion);
  const held = axes.reduce((node, axis) => withHeldGaps(node, axis, texts[axis === 'across' ? 'left' : 'top']), whole);
  if (axes.length > 0) say(gapsHeld());
  const asked: Reached = {
    rule,
    texts,
    isGiven: job.frame.blank !== undefined,
    isStretched: takesWhatIsLeft(whole),
  };
  const { borders, isHeld } = movedBorders(written.borders ?? {}, asked, motion);
  if (isHeld) say(bordersHeld(rule));
  const saysBorders = written.borders !== undefined || isHeld;
  return { windows: movedItem(held, 'windows', motion, say), ...(saysBorders ? { borders } : {}) };
}

function bordersHeld(rule: string): Problem {
  return {
    code: 'borders-held',
    severity: 'note',
    at: 'borders.rule',
    message: `The rule "${rule}" weights the bottom and knows no other side, so the borders are now given by hand, each as wide as it was.`,
  };
}

function gapsHeld(): Problem {
  return {
    code: 'gaps-held',
    severity: 'note',
    at: 'windows',
    message:
      'Gaps shared the border at the left or the top, which now lies at their other end, so they are now given as lengths, each as wide as it was.',
  };
}
