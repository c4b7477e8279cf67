/** Reads the job's pictures: sheet, image, margins and signed overlap. */
import { allSides, type PerSide, type Size } from '../geometry/box';
import { defaultLength, type DefaultLength } from './defaults';
import type { Picture, PictureKind } from './job';
import { readRange } from './read-thickness';
import type { Reader } from './reader';
import type { WrittenLength, WrittenPicture } from './written';

/** Of what is no sheet of paper. */
const USUAL_THICKNESS: Readonly<Partial<Record<PictureKind, DefaultLength>>> = {
  'painting on canvas': 'canvasDepth',
  'painting on panel': 'panelThickness',
};

export function readPictures(written: readonly WrittenPicture[], reader: Reader): Picture[] {
  const seen = new Map<string, number>();
  return written.map((picture, index) => {
    const at = `pictures[${index}]`;
    const read = readPicture(picture, at, index, reader);
    const before = seen.get(read.id);
    if (before !== undefined) {
      reader.say({
        code: 'id-twice',
        at: `${at}.id`,
        message: `Pictures ${before + 1} and ${index + 1} both have the id "${read.id}"; give each its own.`,
        value: read.id,
      });
    }
    seen.set(read.id, index);
    return read;
  });
}

function readPicture(written: WrittenPicture, at: string, index: number, reader: Reader): Picture {
  const title = written.title ?? '';
  const what = title === '' ? `picture ${index + 1}` : `picture "${title.slice(0, 40)}"`;
  const sheet = reader.size(written.size, `${at}.size`, what);
  const image = written.image === undefined ? sheet : reader.size(written.image, `${at}.image`, `the image of ${what}`);
  const thickness = reader.length(
    written.thickness,
    `${at}.thickness`,
    { name: `Thickness of ${what}`, least: 0, above: true, most: 100 },
    defaultLength(USUAL_THICKNESS[written.kind ?? 'other'] ?? 'pictureThickness', reader.units),
  );
  const range = readRange(written, { at, what }, thickness, reader);
  const weight = reader.optionalMass(written.weight, `${at}.weight`, `Weight of ${what}`);
  return {
    id: written.id ?? String(index + 1),
    title,
    kind: written.kind ?? 'other',
    sheet,
    image,
    margins: readMargins(written, sheet, image, at, what, reader),
    overlapFrom: written.overlapFrom ?? 'image',
    overlap: reader.perSide(written.overlap, `${at}.overlap`, defaultLength('overlap', reader.units), (value, where) =>
      readOverlap(value, where, what, reader),
    ),
    thickness,
    thicknessSaid: written.thickness !== undefined,
    thinnest: range.least,
    thickest: range.greatest,
    varies: range.varies,
    ...(weight === undefined ? {} : { weight }),
    concerns: written.concerns ?? [],
    ...(written.file === undefined ? {} : { file: written.file }),
  };
}

/** `covers 1/8 in` and `1/8 in` are positive, `shows 1/4 in` and `-1/4 in` negative. */
function readOverlap(written: WrittenLength, at: string, what: string, reader: Reader): number {
  const limits = {
    name: `Overlap of ${what}`,
    least: -1000,
    most: 1000,
    words: '"covers" or "shows" with a length, such as shows 1/4 in',
  };
  const worded = typeof written === 'string' ? /^\s*(covers|shows)\s+(.*)$/i.exec(written) : null;
  if (!worded) return reader.length(written, at, limits, NaN);
  const amount = reader.length(worded[2], at, { ...limits, least: 0 }, NaN);
  return worded[1]?.toLowerCase() === 'shows' && amount !== 0 ? -amount : amount;
}

function readMargins(
  written: WrittenPicture,
  sheet: Size,
  image: Size,
  at: string,
  what: string,
  reader: Reader,
): PerSide {
  if (written.image === undefined) return allSides(0);
  const spare = { width: sheet.width - image.width, height: sheet.height - image.height };
  if (spare.width < 0 || spare.height < 0) {
    reader.say({
      code: 'image-larger-than-sheet',
      at: `${at}.image`,
      message: `The image of ${what} is ${reader.showSize(image)}, larger than its sheet of ${reader.showSize(sheet)}.`,
      limit: reader.showSize(sheet),
      remedy: 'measure both again; the sheet is the whole paper',
    });
    return allSides(0);
  }
  const margin = (side: 'left' | 'top', most: number) =>
    reader.length(
      written.margins?.[side],
      `${at}.margins.${side}`,
      { name: `Margin at the ${side} of ${what}`, least: 0, most },
      most / 2,
    );
  const left = margin('left', spare.width);
  const top = margin('top', spare.height);
  return { left, top, right: spare.width - left, bottom: spare.height - top };
}
