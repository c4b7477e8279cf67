/** Judges what closes the package behind. */
import { capital } from '../phrases';
import type { Package } from '../job/package';
import { boardDemands, qualityText } from './board-demands';
import { notCounted } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { type Subject } from './subject';

type Backing = NonNullable<Package['backing']>;

export function judgeBacking(subject: Subject): Judgement {
  const { backing } = subject.job.package;
  const said = backing && isBoard(backing) ? `: ${qualityText(backing.quality)}` : '';
  return judged({
    key: 'backing',
    what: 'Backing',
    at: 'package.backing',
    now: backing ? `${backing.material}${said}` : 'none',
    known: !backing || !isBoard(backing) || backing.quality.fibre !== undefined,
    demands: backing ? demandsOf(backing, subject) : [noBack(subject)],
    step: () => backingStep(),
  });
}

/** Of these it depends on what they are made of. */
function isBoard({ material }: Backing): boolean {
  return material === 'mat board' || material === 'corrugated board' || material === 'other';
}

function noBack({ hasPaper }: Subject): Demand {
  const words = 'There is none, so dust, knocks and damp come in from behind; a backing is asked';
  const sources = hasPaper ? [SOURCES.florida] : [SOURCES.cciBacking];
  return { from: 'protective', met: false, words, sources };
}

function demandsOf(backing: Backing, subject: Subject): Demand[] {
  if (isBoard(backing)) return boardDemands(backing.quality, { photo: false, neutral: false }, undefined, subject.show);
  if (!subject.hasPaper) return [behindPainting(backing)];
  return [awayFromPaper(backing, subject), ofNeither(backing)];
}

const STEADY: ReadonlySet<Backing['material']> = new Set(['polypropylene board', 'hardboard']);

function behindPainting({ material }: Backing): Demand {
  const met = STEADY.has(material);
  const words = met
    ? `${capital(material)} is stiff and light enough behind a painting`
    : `Behind a painting it is of ${material}; fluted plastic or hardboard is named`;
  return { from: 'conservation', met, words, sources: [SOURCES.cciBacking] };
}

/** Wood gives off acid through the board before it; foam board does harm where it lies against the picture. */
function awayFromPaper({ material }: Backing, { job }: Subject): Demand {
  const isWood = material === 'hardboard' || material === 'plywood';
  const isNext = job.package.mountBoard === undefined && material === 'foam board';
  const words = isWood
    ? `${capital(material)} is wood and gives off acid; it is not for behind paper`
    : isNext
      ? 'Foam board lies against the picture, where it does harm'
      : `${capital(material)} does not lie against the picture`;
  return { from: 'protective', met: !isWood && !isNext, words, sources: [SOURCES.florida] };
}

function ofNeither({ material }: Backing): Demand {
  const met = material === 'polypropylene board';
  const words = met
    ? 'Fluted polypropylene gives off no acid'
    : `The guidance advises against ${material}; fluted polypropylene or sound board is asked`;
  return { from: 'conservation', met, words, sources: [SOURCES.florida, SOURCES.cciBacking] };
}

function backingStep(): Step {
  const edits = [
    { at: 'package.backing.material', value: 'polypropylene board' },
    { at: 'package.backing.quality', value: undefined },
    { at: 'package.backing.density', value: undefined },
  ];
  return {
    words: 'Take fluted polypropylene for the backing; what comes with a ready-made frame will not do',
    reaches: 'conservation',
    fix: { label: 'Plan with fluted polypropylene', edits },
    cost: notCounted('backings are not on a shelf'),
  };
}
