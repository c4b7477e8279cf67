/** Spells out what a job leaves unsaid, just as far as an edit needs it: the implied row of pictures, a window written as a bare id, a shape as a word. */
import { setAt, valueAt } from '../../core/job/edit';
import { layersIn } from '../../core/job/layers-in';
import type { WrittenJob } from '../../core/job/written';
import type { Edit } from '../../core/problem';
import { arrangementOf } from './tree';

/** The same job, in which the groups that the edits reach into are written out. */
export function spellOut(written: WrittenJob, edits: readonly Edit[]): WrittenJob {
  return edits.reduce((job, { at }) => spellOutShape(spellOutPath(job, at), at), written);
}

function spellOutPath(written: WrittenJob, at: string): WrittenJob {
  const layers =
    /^mat\.layers\[/.test(at) && written.mat?.layers === undefined
      ? setAt(written, 'mat.layers', layersIn(written))
      : written;
  if (!/^windows[.[]/.test(at)) return layers;
  const whole = arrangementOf(layers);
  const job = layers.windows === undefined && whole !== undefined ? { ...layers, windows: whole } : layers;
  const owner = at.slice(0, at.length - (/(\.shape)?\.[^.[\]]+(\.(width|height))?$/.exec(at)?.[0].length ?? 0));
  const item = valueAt(job, owner);
  return typeof item === 'string' ? setAt(job, owner, { kind: 'window', picture: item }) : job;
}

/** A measure needs a shape written as a group to stand in. */
function spellOutShape(written: WrittenJob, at: string): WrittenJob {
  const shape = /^(.+\.shape)\.[^.]+$/.exec(at)?.[1];
  const word = shape && valueAt(written, shape);
  return shape && typeof word === 'string' ? setAt(written, shape, { kind: word }) : written;
}
