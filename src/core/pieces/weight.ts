/** What a framed picture weighs, item by item: what is known, between bounds, and what could not be counted. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { BOARD_DENSITY, givenDensity, GLAZING_DENSITIES, type Density } from './density';
import { frameWeight } from './frame-weight';
import type { FrameMoulding } from './moulding';
import type { Piece } from './piece';
import { exactly, product, total, type Range } from './range';
import { capital } from '../phrases';

export interface WeighedItem {
  /** Such as `Glazing`. */
  readonly name: string;
  /** kg; undefined: not known, and so not counted. */
  readonly kg?: Range;
  /** How it was reached, or what would have to be known. */
  readonly how: string;
  /** Of a published density: who says so. */
  readonly source?: string;
}

export interface Weighed {
  /** From the front to the back, then the frame. */
  readonly items: readonly WeighedItem[];
  /** kg, of all that could be counted. */
  readonly counted: Range;
  /** What could not, in words: `the frame`, `the backing`. */
  readonly notCounted: readonly string[];
}

/** @param pieces the job's cuts list. */
export function weigh(job: Job, layout: Layout, pieces: readonly Piece[], moulding: FrameMoulding): Weighed {
  const front = ['glazing', 'spacer', 'mat'];
  const isFront = ({ kind }: Piece) => front.includes(kind);
  const all = [
    ...pieces.filter(isFront).map((piece) => weighPiece(piece, job)),
    ...pictures(job, layout),
    ...pieces.filter((piece) => !isFront(piece)).map((piece) => weighPiece(piece, job)),
    ...fixings(job),
    frame(job, layout, moulding),
  ];
  return {
    items: all.map(({ called: _, ...item }) => item),
    counted: total(all.flatMap(({ kg }) => kg ?? [])),
    notCounted: [...new Set(all.flatMap(({ kg, called }) => (kg ? [] : called)))],
  };
}

/** With what a sentence calls it. */
interface Called extends WeighedItem {
  readonly called: string;
}

/** Square mm x mm in a litre. */
const LITRE = 1e6;

function weighPiece({ name, kind, material, count, area, thickness, layer }: Piece, job: Job): Called {
  const called = layer === undefined ? `the ${kind}` : `layer ${layer}`;
  const density = densityOf(kind, job);
  if (!density || !thickness) return { name, called, how: lacking(kind, material) };
  const kg = product([exactly((count * area.net) / LITRE), thickness, density]);
  const { of, source } = density;
  return { name, called, kg, how: `${densityText(density)} g/cm³, ${of}`, ...(source === undefined ? {} : { source }) };
}

/** A job can say the density of its boards and glazing, and of nothing else. */
function lacking(kind: Piece['kind'], material: string): string {
  if (kind === 'spacer' || kind === 'dust cover') return 'nothing is known of its weight';
  return `no published density of ${material}; give one in the job`;
}

function densityText({ least, greatest }: Density): string {
  return least === greatest ? String(least) : `${least.toFixed(2)} to ${greatest.toFixed(2)}`;
}

function densityOf(kind: Piece['kind'], { package: { glazing, mountBoard, backing } }: Job): Density | undefined {
  const given = { glazing, 'mount board': mountBoard, backing }[kind as 'glazing']?.density;
  if (given !== undefined) return givenDensity(given);
  if (kind === 'glazing') return glazing && GLAZING_DENSITIES[glazing.material];
  const isBoard = kind === 'mat' || kind === 'mount board' || (kind === 'backing' && backing?.material === 'mat board');
  return isBoard ? BOARD_DENSITY : undefined;
}

/** A picture that is parted over several windows is one; those of unknown weight stand together. */
function pictures(job: Job, { windows }: Layout): Called[] {
  const placed = windows.flatMap(({ picture }) => (picture && !picture.part?.index ? picture.index : []));
  const shown = (windows.length > 0 ? placed : [...job.pictures.keys()]).flatMap((index) => {
    const picture = job.pictures[index];
    return picture
      ? [{ ...picture, title: picture.title === '' ? `picture ${index + 1}` : `picture “${picture.title}”` }]
      : [];
  });
  const known = shown.flatMap(({ weight, title }): Called[] =>
    weight === undefined ? [] : [{ name: capital(title), called: title, kg: exactly(weight), how: 'as the job says' }],
  );
  const [first, ...others] = shown.filter(({ weight }) => weight === undefined);
  if (!first) return known;
  const several = others.length === 0 ? first.title : `${others.length + 1} pictures`;
  const called = shown.length > 1 ? several : 'the picture';
  return [...known, { name: capital(several), called, how: 'weigh it, and say so in the job' }];
}

function fixings({ package: { hinging, fixing } }: Job): Called[] {
  // A groove is nothing that weighs.
  const things = [
    ...(hinging.method === 'none' ? [] : ['hinges']),
    ...(fixing.kind === 'groove' ? [] : [fixing.kind]),
  ].join(' and ');
  return things === ''
    ? []
    : [{ name: capital(things), called: `the ${things}`, how: 'not known; a few grams as a rule' }];
}

function frame(job: Job, layout: Layout, moulding: FrameMoulding): Called {
  const found = frameWeight(job, layout.frame, moulding);
  const how =
    job.frame.build === 'float'
      ? 'weigh it: how much wood its ledge has is not known'
      : 'give its weight, or the density of its wood with the moulding’s depth, or the weight of a metre on the shelf';
  return { name: 'Frame', called: 'the frame', how, ...found };
}
