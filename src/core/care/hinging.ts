/** Judges how the picture is held: so that it can be taken out unharmed, or by what never comes off. */
import { capital } from '../phrases';
import type { Hinging } from '../job/package';
import type { Fix } from '../problem';
import { notCounted } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { hasKind, type Subject } from './subject';

/** Undefined for what holds itself. */
export function judgeHinging(subject: Subject): Judgement | undefined {
  if (!subject.hasPaper) return undefined;
  const { method } = subject.job.package.hinging;
  return judged({
    key: 'hinging',
    what: 'How the picture is held',
    at: 'package.hinging.method',
    now: method ?? 'not said',
    known: method !== undefined,
    demands: [reversible(method), ...mounted(subject), ...heldWhereSeen(subject, method)],
    step: () => (hasKind(subject, ['textile']) ? textileStep(method) : hinge()),
  });
}

const WORDS: Readonly<Record<Hinging | 'unknown', string>> = {
  'paper hinges': 'Paper hinges with starch paste come off with a little water',
  corners: 'Corners hold it without paste',
  'edge strips': 'Strips along its edges hold it without paste',
  'self-adhesive tape': 'Self-adhesive tape stains and can’t be taken off unharmed; none is known that is fit',
  'glued down': 'It is glued or dry mounted, which harms it and can’t be undone',
  none: 'Nothing holds it, so it slips behind the mat',
  unknown: 'How it is held is not said; paper hinges, or corners or strips without paste, are asked',
};

const REVERSIBLE: ReadonlySet<Hinging | undefined> = new Set(['paper hinges', 'corners', 'edge strips']);

function reversible(method: Hinging | undefined): Demand {
  const sources = [SOURCES.lcGuide, SOURCES.lcHinges, SOURCES.factsReversible, SOURCES.aicTreasures];
  return { from: 'protective', met: REVERSIBLE.has(method), words: WORDS[method ?? 'unknown'], sources };
}

/** A job can't say it, so that the highest grade is not given to cloth. */
function mounted(subject: Subject): Demand[] {
  if (!hasKind(subject, ['textile'])) return [];
  const words = 'A textile is mounted on a solid support of its own, which a job can’t say';
  return [{ from: 'conservation', met: false, words, sources: [SOURCES.cciTextiles] }];
}

/** Corners and strips would be seen, or would have nothing to hold it to. */
function heldWhereSeen({ held }: Subject, method: Hinging | undefined): Demand[] {
  const floating = held.find(({ floats }) => floats);
  if (!floating || !REVERSIBLE.has(method)) return [];
  const met = method === 'paper hinges';
  const words = met
    ? `${capital(floating.name)} floats on hinges folded behind it`
    : `${capital(floating.name)} floats, and ${method} would be seen; folded paper hinges behind it are asked`;
  return [{ from: 'conservation', met, words, sources: [SOURCES.lcHinges] }];
}

function hinge(): Step {
  return {
    words: 'Hang it by paper hinges of kozo with wheat or rice starch paste, or have it done: it takes training',
    reaches: 'conservation',
    fix: plan('paper hinges'),
    cost: notCounted('paper and paste are not on a shelf'),
  };
}

/** Paste is not for cloth. */
function textileStep(method: Hinging | undefined): Step {
  if (REVERSIBLE.has(method)) {
    const words = 'Have a textile conservator mount it on a solid support covered with cloth';
    return { words, reaches: 'conservation', cost: notCounted('the work is the conservator’s') };
  }
  const cost = notCounted('strips are not on a shelf');
  return { words: 'Hold its edges by strips, without paste', reaches: 'protective', fix: plan('edge strips'), cost };
}

function plan(method: Hinging): Fix {
  return { label: `Plan with ${method}`, edits: [{ at: 'package.hinging.method', value: method }] };
}
