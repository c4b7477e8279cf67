/** Tries one picture of a show in frames: which borders it gets, by the layout's own rules, and whether they are in range. */
import type { PerSide, Size } from '../geometry/box';
import type { Frame, Job } from '../job/job';
import { cellOf } from '../layout/cell-of';
import type { Cell } from '../layout/cells';
import { extentOf, stretchOf } from '../layout/extent';
import { layOut } from '../layout/lay-out';
import { SLACK } from '../layout/limits/slack';
import { hiddenBorder } from '../layout/frame-sizes';
import { solveBlank } from '../layout/solve-blank';
import { fitOf, type Fit } from '../package/fit';
import { stackOf, type Stack } from '../package/stack';
import type { Problem } from '../problem';

/** Borders as the range is measured, mm, or what keeps a layout from being made. */
export type Tried =
  { readonly ok: true; readonly borders: PerSide } | { readonly ok: false; readonly problem?: Problem };

/** How far the borders at the sides differ from those above and below, mm: the smaller, the more even. */
export function unevenness({ left, top, right, bottom }: PerSide): number {
  return Math.abs(left + right - top - bottom) / 2;
}

export class Trial {
  readonly #job: Job;
  readonly #root: Cell | undefined;
  /** The size of the windows together, where no frame changes it; undefined where each frame has to be laid out. */
  readonly #content: Size | undefined;
  readonly #sound = new Map<string, boolean>();
  /** By how it is held; the same in every frame, since no border changes what lies behind a window. */
  readonly #stacks = new Map<string, Stack>();

  /** @param job of the picture, in a frame of any given size. */
  constructor(job: Job) {
    this.#job = job;
    this.#root = job.windows && cellOf(job.windows, job);
    this.#content = this.#root && job.free.length === 0 ? fixedSize(this.#root) : undefined;
  }

  /** What the windows take without borders, mm; undefined where that is the frame's to say. */
  get natural(): Size | undefined {
    if (!this.#root || stretches(this.#root)) return undefined;
    const { least } = this.#job.borders.range;
    const { length: width } = extentOf(this.#root, 'across', least);
    const { length: height } = extentOf(this.#root, 'up', least);
    return { width, height };
  }

  /** The blank that the borders would be made to fit, where they say how wide they are. */
  fitted({ blank: _, ...frame }: Frame): Size | undefined {
    const solved = this.#root && solveBlank({ ...this.#job, frame }, this.#root);
    return solved?.ok ? solved.value.blank : undefined;
  }

  /** The borders in a frame that suits it, where all are in range and the job can be cut; undefined in any other. */
  suits(frame: Frame): PerSide | undefined {
    if (this.#content && this.#isFarOff(frame, this.#content)) return undefined;
    const tried = this.#content && this.#isSound(frame) ? this.solved(frame) : this.laidOut(frame);
    return tried.ok && this.isInRange(tried.borders) ? tried.borders : undefined;
  }

  /** Borders that the rule leaves, in range or not. */
  solved(frame: Frame): Tried {
    if (!this.#root) return this.laidOut(frame);
    const solved = solveBlank({ ...this.#job, frame }, this.#root);
    if (!solved.ok) return failedBy(solved.problems);
    const { across, up } = solved.value;
    return { ok: true, borders: { left: across.start, right: across.end, top: up.start, bottom: up.end } };
  }

  /** Whether the package goes into the depth of such a frame; undefined where it can't be laid out in it. */
  depthIn(frame: Frame, fixing: Job['package']['fixing']): Fit | undefined {
    const job = { ...this.#job, frame, package: { ...this.#job.package, fixing } };
    const stack = this.#stackOf(job);
    return stack && fitOf(job, stack);
  }

  /** The same of a frame that is made to size; its room is the depth of the pattern's own moulding, where that is known. */
  depthMade(blank: Size): Fit | undefined {
    const { frame, package: held } = this.#job;
    return this.depthIn({ ...frame, blank }, held.fixing);
  }

  #stackOf(job: Job): Stack | undefined {
    const { kind, room } = job.package.fixing;
    const key = `${kind} ${room}`;
    const known = this.#stacks.get(key);
    if (known) return known;
    const laid = layOut(job);
    const layout = laid.ok ? laid.value : laid.sketch;
    if (!layout) return undefined;
    const stack = stackOf(job, layout);
    this.#stacks.set(key, stack);
    return stack;
  }

  /** The same of a layout without errors. */
  laidOut(frame: Frame): Tried {
    const laid = layOut({ ...this.#job, frame });
    if (!laid.ok) return failedBy(laid.problems);
    const { cut, seen } = laid.value.borders;
    return { ok: true, borders: this.#job.borders.measured === 'as seen' ? seen : cut };
  }

  isInRange({ left, top, right, bottom }: PerSide): boolean {
    const { least, greatest = Infinity } = this.#job.borders.range;
    return (
      Math.min(left, top, right, bottom) >= least - SLACK && Math.max(left, top, right, bottom) <= greatest + SLACK
    );
  }

  /** True where two borders across from one another come to less than twice the least, or more than twice the greatest. */
  #isFarOff(frame: Frame, content: Size): boolean {
    const { borders } = this.#job;
    const { least, greatest = Infinity } = borders.range;
    const hidden = borders.measured === 'as seen' ? hiddenBorder({ frame }) : 0;
    return (['width', 'height'] as const).some((side) => {
      const both = (frame.blank?.[side] ?? 0) - content[side] - 2 * hidden;
      return both < 2 * (least - SLACK) || both > 2 * (greatest + SLACK);
    });
  }

  /**
   * Whether the layout has no errors where every border is the least there may be. Wider borders then bring none: what a
   * frame can spoil is what comes too near its edge. Where there are errors each frame is laid out by itself.
   */
  #isSound({ blank: _, ...frame }: Frame): boolean {
    const key = `${frame.lip} ${frame.allowance}`;
    const known = this.#sound.get(key);
    if (known !== undefined) return known;
    const { least } = this.#job.borders.range;
    const sides = { left: least, right: least, top: least, bottom: least };
    const borders = { ...this.#job.borders, rule: 'by-hand' as const, ...sides };
    const sound = layOut({ ...this.#job, frame, borders }).ok;
    this.#sound.set(key, sound);
    return sound;
  }
}

function stretches(root: Cell): boolean {
  return stretchOf(root, 'across') > 0 || stretchOf(root, 'up') > 0;
}

/** Undefined where gaps share in what a frame leaves. */
function fixedSize(root: Cell): Size | undefined {
  const [width, height] = [extentOf(root, 'across', 0), extentOf(root, 'up', 0)];
  if (stretches(root) || width.growth > 0 || height.growth > 0) return undefined;
  return { width: width.length, height: height.length };
}

function failedBy(problems: readonly Problem[]): Tried {
  const problem = problems.find(({ severity }) => severity === 'error');
  return problem ? { ok: false, problem } : { ok: false };
}
