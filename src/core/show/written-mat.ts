/** Writes the job of one picture of a show: the pattern's mat, the picture in the place of the pattern's, and its frame. */
import { findReadyMade, nameOfSize } from '../frame/ready-made';
import type { Size } from '../geometry/box';
import { exactText } from '../job/exact-text';
import type { WrittenJob, WrittenPicture } from '../job/written';
import type { WrittenFrame } from '../job/written-frame';
import { massWritten } from '../shelf/print-shelf';
import { colourOf } from '../shelf/colour-of';
import type { ShelfFrame } from '../shelf/shelf';
import type { Unit } from '../units';
import type { Pattern } from './pattern';
import type { ShowPicture } from './picture';

/** A frame for one picture. */
export interface FrameChoice {
  /** As it hangs. */
  readonly blank: Size;
  /** From the shelf; undefined of one made to size. */
  readonly frame?: ShelfFrame;
}

/** Lengths of the picture and of the frame stand in the job's unit, or in the one that they are plain in. */
export function writeMat({ written, job }: Pattern, picture: ShowPicture, choice: FrameChoice): WrittenJob {
  const {
    $schema,
    format,
    version,
    title: _title,
    notes: _notes,
    units,
    steps,
    pictures = [],
    frame = {},
    ...rest
  } = written;
  const said = [picture.wall, choice.frame && `Frame: ${choice.frame.name}`, picture.note].filter(
    (note) => note !== undefined,
  );
  const heading = present({
    $schema,
    format,
    version,
    title: picture.title,
    notes: said.join('. ').slice(0, 4000) || undefined,
  });
  return {
    ...heading,
    ...present({ units, steps }),
    pictures: [writtenPicture(pictures[0] ?? { size: '' }, picture, job.units)],
    frame: writtenFrame(frame, choice, job.units),
    ...rest,
  };
}

/** What belongs to the pattern's own picture is left out: its file, its weight, what makes it one for a conservator. */
function writtenPicture(stands: WrittenPicture, picture: ShowPicture, unit: Unit): WrittenPicture {
  const { id, kind, overlapFrom, overlap, thickness, thinnest, thickest } = stands;
  const thick =
    picture.thickness === undefined
      ? { thickness, thinnest, thickest }
      : { thickness: lengthText(picture.thickness, unit) };
  return present({
    id,
    title: picture.title,
    kind: picture.kind ?? kind,
    size: sizeText(picture.sheet, unit),
    image: picture.image && sizeText(picture.image, unit),
    overlapFrom,
    overlap: picture.overlap === undefined ? overlap : overlapText(picture.overlap, unit),
    ...thick,
  });
}

/** The shelf's measures before the pattern's; what is known of the pattern's own frame alone is left out. */
function writtenFrame(pattern: WrittenFrame, { blank, frame }: FrameChoice, unit: Unit): WrittenFrame {
  const { allowance, lip, mouldingWidth, mouldingDepth, rabbetDepth, colour, density } = pattern;
  const shared = { allowance, lip, mouldingWidth, mouldingDepth, rabbetDepth, colour, density };
  if (!frame) return present({ ...writtenBlank(blank, unit), ...shared });
  const length = (mm: number | undefined) => (mm === undefined ? undefined : lengthText(mm, unit));
  return present({
    ...writtenBlank(blank, unit),
    ...shared,
    lip: length(frame.lip) ?? lip,
    mouldingWidth: length(frame.face) ?? mouldingWidth,
    rabbetDepth: length(frame.rabbetDepth) ?? rabbetDepth,
    // Of another moulding it says nothing beside a rabbet of its own.
    mouldingDepth: length(frame.depth) ?? (frame.rabbetDepth === undefined ? mouldingDepth : undefined),
    name: frame.name,
    colour: (frame.colour === undefined ? undefined : colourOf(frame.colour)) ?? colour,
    build: frame.build === 'open back' ? undefined : frame.build,
    corners: frame.corners === 'mitred' ? undefined : frame.corners,
    comesWith: frame.comesWith.length > 0 ? [...frame.comesWith] : undefined,
    grooves: frame.grooves.length > 0 ? frame.grooves.map((groove) => lengthText(groove, unit)) : undefined,
    weight: frame.weight === undefined ? undefined : massWritten(frame.weight, undefined),
  });
}

/** By its name where it is sold by one. */
function writtenBlank(blank: Size, unit: Unit): WrittenFrame {
  const upright = { width: Math.min(blank.width, blank.height), height: Math.max(blank.width, blank.height) };
  const name = nameOfSize(upright);
  const sold = name === undefined ? undefined : findReadyMade(name)?.size;
  if (name === undefined || sold?.width !== upright.width || sold.height !== upright.height) {
    return { size: sizeText(blank, unit) };
  }
  return present({ readyMade: name, hung: blank.width > blank.height ? ('landscape' as const) : undefined });
}

function overlapText(mm: number, unit: Unit): string {
  return mm < 0 ? `shows ${lengthText(-mm, unit)}` : `covers ${lengthText(mm, unit)}`;
}

function lengthText(mm: number, unit: Unit): string {
  return shortest(unit, (one) => `${exactText(mm, one)} ${one}`);
}

function sizeText({ width, height }: Size, unit: Unit): string {
  return shortest(unit, (one) => `${exactText(width, one)} x ${exactText(height, one)} ${one}`);
}

/** Another unit has to be shorter by more than this to be taken, in characters. */
const SHORTER_BY = 3;

/** In the job's own unit, unless another says it much shorter: `420 mm`, not `16.53543307 in`. */
function shortest(unit: Unit, text: (unit: Unit) => string): string {
  const own = text(unit);
  const others = (['in', 'mm'] as const).filter((one) => one !== unit).map(text);
  return others.reduce((best, one) => (one.length < best.length - SHORTER_BY ? one : best), own);
}

/** Without what is not said. */
function present<T extends object>(values: { [K in keyof T]?: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as T;
}
