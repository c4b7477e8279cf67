/** Judges the boards that lie in front of and behind the picture: every layer of the mat, and the mount board. */
import { defaultLength } from '../job/defaults';
import type { Job } from '../job/job';
import type { Quality } from '../job/package';
import { usualThickness } from '../job/tolerances';
import type { Edit } from '../problem';
import { colourOf } from '../shelf/colour-of';
import type { ShelfBoard } from '../shelf/shelf';
import { boardDemands, FOUR_PLY, qualityText, type BoardNeeds } from './board-demands';
import { boardNamed, cheapestBoard, costOfTaking, NOTHING_TO_PAY } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES } from './sources';
import { hasKind, type Subject } from './subject';

/** A board of the package, as the job has it. */
interface Board {
  readonly key: string;
  readonly what: string;
  readonly at: string;
  /** Empty where there is none yet. */
  readonly name: string;
  readonly quality: Quality;
  /** mm. */
  readonly thinnest: number;
  readonly needs: BoardNeeds;
  /** Which of the mat's, from 0; undefined: the mount board. */
  readonly layer?: number;
}

/** Every board that counts for whether there is a grade at all. */
export function judgeBoards(subject: Subject): Judgement[] {
  const mount = judgeMount(subject);
  return [...layerBoards(subject).map((board) => judgeBoard(board, subject)), ...(mount ? [mount] : [])];
}

export function judgeBoard(board: Board, subject: Subject): Judgement {
  const { quality, needs, thinnest, key, what, at } = board;
  const demands = boardDemands(quality, needs, thinnest, subject.show);
  const now = `${qualityText(quality)}; ${subject.show.length(thinnest)} thick`;
  const known = quality.fibre !== undefined;
  return judged({ key, what, at, now, known, demands, step: () => boardStep(board, subject) });
}

/** The lowest layer lies against the picture; those above only against the same air. */
function layerBoards(subject: Subject): Board[] {
  const { layers } = subject.job;
  return layers.map(({ board, quality, thinnest }, index) => ({
    key: `layer ${index + 1}`,
    what: layers.length === 1 ? `Mat “${board}”` : `Layer ${index + 1} of the mat, “${board}”`,
    at: `mat.layers[${index}]`,
    name: board,
    quality,
    thinnest,
    needs: needsOf(subject, index === layers.length - 1),
    layer: index,
  }));
}

/** A cyanotype is a photograph too. @param touches whether the board lies against the picture. */
export function needsOf(subject: Subject, touches: boolean): BoardNeeds {
  return {
    photo: hasKind(subject, ['photograph', 'cyanotype']),
    neutral: touches && hasKind(subject, ['cyanotype']),
  };
}

function judgeMount(subject: Subject): Judgement | undefined {
  const { mountBoard } = subject.job.package;
  const item = { key: 'mount board', what: 'Mount board', at: 'package.mountBoard' } as const;
  if (!mountBoard) return subject.hasPaper ? withoutMount(item, subject) : undefined;
  const { board: name, quality, thickness } = mountBoard;
  return judgeBoard({ ...item, name, quality, thinnest: thickness.least, needs: needsOf(subject, true) }, subject);
}

function withoutMount(item: Pick<Judgement, 'key' | 'what' | 'at'>, subject: Subject): Judgement {
  const missing: Demand = {
    from: 'protective',
    met: false,
    words: 'There is none, so the picture lies against the backing; a board as sound as the mat is asked behind it',
    sources: [SOURCES.lcGuide, SOURCES.florida],
  };
  const board: Board = { ...item, name: '', quality: {}, thinnest: 0, needs: needsOf(subject, true) };
  return judged({ ...item, now: 'none', demands: [missing], step: () => plannedBoard(board, subject) });
}

/** What the shelf knows of the very board is written down; else another is taken. */
function boardStep(board: Board, subject: Subject): Step {
  const kept = boardNamed(subject, board.name)?.quality;
  const does = kept && doesFully(kept, board, board.thinnest, subject);
  if (!kept || !does) return plannedBoard(board, subject);
  const words = `Your shelf has “${board.name}” as ${qualityText(kept)}: write that into the job`;
  const edits = [{ at: `${board.at}.quality`, value: kept }];
  return { words, reaches: 'conservation', fix: { label: 'Write it down', edits }, cost: NOTHING_TO_PAY };
}

/** In the words of CCI Notes 11/5: purified pulp is the more economical; cyanotypes ask for neutral board. */
function plannedQuality({ neutral, photo }: BoardNeeds): Quality {
  const sound: Quality = neutral
    ? { fibre: 'cotton', ph: 7, reserve: 0 }
    : { fibre: 'purified pulp', ph: 8, reserve: 3 };
  return photo ? { ...sound, photoTested: true } : sound;
}

/** Of the shelf where it has one that is known to do; or else whatever its maker states to be such. */
function plannedBoard(board: Board, subject: Subject): Step {
  const found = cheapestBoard(
    subject,
    ({ quality, thickness }) => quality !== undefined && doesFully(quality, board, thickness, subject),
  );
  return 'cost' in found ? anyBoard(board, subject, found.cost) : shelfBoard(board, found, subject);
}

function anyBoard(board: Board, subject: Subject, cost: Step['cost']): Step {
  const quality = plannedQuality(board.needs);
  const thin = board.thinnest < FOUR_PLY;
  const thickness = subject.show.exact(defaultLength('boardThickness', subject.job.units));
  const edits: Edit[] = [
    ...there(board),
    { at: `${board.at}.quality`, value: quality },
    ...(thin ? thicker(board.at, thickness) : []),
  ];
  const words = `Take a board of ${qualityText(quality)}${thin ? `, ${thickness} thick` : ''}, as its maker states it`;
  return { words, reaches: 'conservation', fix: { label: 'Plan with such a board', edits }, cost };
}

/** By its own name, so that the job is bought for as it is judged. */
function shelfBoard(board: Board, { name, quality = {}, thickness: mm, colour }: ShelfBoard, subject: Subject): Step {
  const thin = board.thinnest < FOUR_PLY;
  const thickness = mm ?? (thin ? defaultLength('boardThickness', subject.job.units) : undefined);
  const face = board.layer === undefined || colour === undefined ? undefined : colourOf(colour);
  const edits: Edit[] = [
    ...there(board),
    { at: `${board.at}.board`, value: name },
    { at: `${board.at}.quality`, value: quality },
    ...(face === undefined ? [] : [{ at: `${board.at}.colour`, value: face }]),
    ...(thickness === undefined ? [] : thicker(board.at, subject.show.exact(thickness))),
  ];
  const taken = {
    name,
    piece: pieceOf(board),
    into: (job: Job) => withBoard(job, board, { name, quality, thickness }),
  };
  return {
    words: `Take “${name}” of your shelf, which is ${qualityText(quality)}`,
    reaches: 'conservation',
    fix: { label: `Plan with “${name}”`, edits },
    taken,
    cost: costOfTaking(subject, taken),
  };
}

/** Where there is none yet there will be. */
function there({ name, at }: Board): Edit[] {
  return name === '' ? [{ at: `${at}.without`, value: undefined }] : [];
}

/** As the cuts list calls it. */
function pieceOf({ layer }: Board): string {
  return layer === undefined ? 'Mount board' : `Mat layer ${layer + 1}`;
}

interface NewBoard {
  readonly name: string;
  readonly quality: Quality;
  /** Undefined: as thick as the one before. */
  readonly thickness: number | undefined;
}

function withBoard(job: Job, { layer: at }: Board, { name, quality, thickness }: NewBoard): Job {
  if (at === undefined) {
    const { mountBoard } = job.package;
    const nominal = thickness ?? mountBoard?.thickness.nominal ?? defaultLength('boardThickness', job.units);
    return {
      ...job,
      package: { ...job.package, mountBoard: { ...mountBoard, board: name, quality, thickness: usualThickness('mat board', nominal) } }, // prettier-ignore
    };
  }
  const range = thickness === undefined ? undefined : usualThickness('mat board', thickness);
  const thick = range && { thickness: range.nominal, thinnest: range.least, thickest: range.greatest };
  return {
    ...job,
    layers: job.layers.map((layer, index) => (index === at ? { ...layer, board: name, quality, ...thick } : layer)),
  };
}

function thicker(at: string, thickness: string): Edit[] {
  return [
    { at: `${at}.thinnest`, value: undefined },
    { at: `${at}.thickest`, value: undefined },
    { at: `${at}.thickness`, value: thickness },
  ];
}

function doesFully(quality: Quality, { needs }: Board, thinnest: number | undefined, { show }: Subject): boolean {
  return boardDemands(quality, needs, thinnest, show).every(({ met }) => met);
}
