/** Clear dangers to a picture that a job says outright; what it leaves unsaid is for `judgeCare`. */
import { capital } from '../phrases';
import type { Job } from '../job/job';
import type { Quality } from '../job/package';
import type { Layout } from '../layout/layout';
import { bySeverity, type Problem } from '../problem';
import { isAcid, isAlkaline, phAskedText, qualityText } from './board-demands';
import { cautionsFor } from './cautions';
import { holdsCharge } from './glazing';
import { hasKind, subjectOf, type Subject } from './subject';

/** Warnings and notes; none where the job says nothing of its package. */
export function careProblems(job: Job, layout: Layout): Problem[] {
  const subject = subjectOf(job, layout, []);
  return bySeverity([
    ...askConservator(subject),
    ...cannotComeOff(subject),
    ...liftsPastel(subject),
    ...boardProblems(subject),
  ]);
}

/** Told once for all pictures of a kind; documents and cloth only where the job says more of them. */
function askConservator(subject: Subject): Problem[] {
  const { held } = subject;
  const asking = held.find(({ picture }) => picture.concerns.length > 0 || picture.kind === 'pastel or charcoal');
  const [first] = cautionsFor(subject);
  if (!asking || !first) return [];
  const more = asking.picture.concerns.length > 0 ? 'concerns' : 'kind';
  return [
    { code: 'ask-conservator', severity: 'note', at: `pictures[${asking.placed.index}].${more}`, message: first.words },
  ];
}

function cannotComeOff({ job, hasPaper }: Subject): Problem[] {
  const { method } = job.package.hinging;
  if (!hasPaper || (method !== 'self-adhesive tape' && method !== 'glued down')) return [];
  const isTape = method === 'self-adhesive tape';
  const what = isTape
    ? 'Self-adhesive tape on a picture stains it in time and can’t be taken off unharmed'
    : 'A picture that is glued down or dry mounted is harmed by it, and it can’t be undone';
  return [
    {
      code: isTape ? 'tape-on-picture' : 'picture-glued-down',
      severity: 'warning',
      at: 'package.hinging.method',
      message: `${what} (Library of Congress, Guide to Preservation Matting and Framing); hang it by paper hinges, or by corners or strips without paste.`,
      value: method,
      remedy: 'paper hinges, corners or edge strips',
      fix: { label: 'Plan with paper hinges', edits: [{ at: 'package.hinging.method', value: 'paper hinges' }] },
    },
  ];
}

function liftsPastel(subject: Subject): Problem[] {
  const { glazing } = subject.job.package;
  if (!glazing || !holdsCharge(glazing) || !hasKind(subject, ['pastel or charcoal'])) return [];
  const edits = ['antistatic', 'density'].map((key) => ({ at: `package.glazing.${key}`, value: undefined }));
  return [
    {
      code: 'charge-lifts-pastel',
      severity: 'warning',
      at: 'package.glazing.material',
      message: `${capital(glazing.material)} can hold a charge that lifts pastel and charcoal off the paper (Florida Department of State, Archives); take glass, or a plastic that its maker treats against it.`,
      value: glazing.material,
      remedy: 'glass, or a plastic treated against charge',
      fix: { label: 'Plan with glass', edits: [{ at: 'package.glazing.material', value: 'glass' }, ...edits] },
    },
  ];
}

interface Board {
  readonly at: string;
  readonly what: string;
  readonly quality: Quality;
  readonly touches: boolean;
}

function boardProblems(subject: Subject): Problem[] {
  const { layers, package: parts } = subject.job;
  const boards: Board[] = layers.map(({ board, quality }, index) => ({
    at: `mat.layers[${index}].quality`,
    what: `Layer ${index + 1}, “${board.slice(0, 40)}”,`,
    quality,
    touches: index === layers.length - 1,
  }));
  const { mountBoard } = parts;
  if (mountBoard) {
    boards.push({
      at: 'package.mountBoard.quality',
      what: 'The mount board',
      quality: mountBoard.quality,
      touches: true,
    });
  }
  const cyanotype = hasKind(subject, ['cyanotype']);
  return boards.flatMap((board) => [
    ...(isAcid(board.quality, cyanotype && board.touches) ? [acid(board, cyanotype && board.touches)] : []),
    ...(cyanotype && board.touches && isAlkaline(board.quality) ? [alkaline(board)] : []),
  ]);
}

function acid({ at, what, quality }: Board, needsNeutral: boolean): Problem {
  const asked = phAskedText(quality, needsNeutral);
  const isNeutral = needsNeutral || quality.reserve === 0;
  const by = isNeutral
    ? 'CCI Notes 11/5; Library of Congress, Specification 200-201-16'
    : 'Library of Congress, Guide to Preservation Matting and Framing and Specification 300-313-16';
  return {
    code: 'board-acid',
    severity: 'warning',
    at: `${at}.ph`,
    message: `${what} has a pH of ${quality.ph}: acid board browns and weakens paper; pH ${asked} is asked (${by}).`,
    value: `pH ${quality.ph}`,
    limit: `pH ${asked}`,
    remedy: `a board of pH ${asked}`,
  };
}

function alkaline({ at, what, quality }: Board): Problem {
  const sound: Quality = { fibre: 'cotton', ph: 7, reserve: 0, photoTested: true };
  return {
    code: 'cyanotype-on-alkaline-board',
    severity: 'warning',
    at,
    message: `${what} is alkaline (${qualityText(quality)}) and lies against a cyanotype, which bleaches there when it is damp; take a neutral board without reserve, pH 7 (CCAHA, Matting and Framing Specifications).`,
    value: qualityText(quality),
    remedy: 'a neutral board without reserve, pH 7',
    fix: { label: 'Plan with a neutral board', edits: [{ at, value: sound }] },
  };
}
