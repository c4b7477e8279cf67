/** Reads the frame: its size or ready-made name and which way it hangs, and the measures of its moulding. */
import { findReadyMade, READY_MADE_SIZES } from '../frame/ready-made';
import type { Size } from '../geometry/box';
import { defaultLength, DEFAULT_FRAME_COLOUR, type DefaultLength } from './defaults';
import type { Frame } from './job';
import { profileFaults, type Profile } from './profile';
import { openFront, readFloat } from './read-float';
import type { Reader } from './reader';
import type { WrittenFrame } from './written-frame';

export function readFrame(written: WrittenFrame, reader: Reader): Frame {
  const said = readBlank(written, reader);
  const { hung } = written;
  const blank = said && hung ? hang(said, hung) : said;
  const part = (key: 'allowance' | 'lip' | 'mouldingWidth', name: string, fallback: DefaultLength, most: number) =>
    reader.length(written[key], `frame.${key}`, { name, least: 0, most }, defaultLength(fallback, reader.units));
  const float = readFloat(written.float ?? {}, reader);
  const closed = {
    allowance: part('allowance', 'Allowance', 'allowance', 100),
    lip: part('lip', 'Rabbet lip', 'lip', 200),
  };
  const { allowance, lip } = written.build === 'float' ? openFront(written, float, reader) : closed;
  const mouldingWidth = part('mouldingWidth', 'Moulding width', 'mouldingWidth', 500);
  const rabbetDepth = reader.optionalLength(written.rabbetDepth, 'frame.rabbetDepth', {
    name: 'Rabbet depth',
    least: 0,
    above: true,
    most: 500,
  });
  const mouldingDepth = reader.optionalLength(written.mouldingDepth, 'frame.mouldingDepth', {
    name: 'Moulding depth',
    least: 0,
    above: true,
    most: 500,
  });
  const grooves = readGrooves(written, reader);
  const profile = { width: mouldingWidth, lip, depth: mouldingDepth, rabbetDepth, grooves };
  tellProfile({ ...profile, ...(written.build === 'float' ? { insideDepth: float.insideDepth } : {}) }, reader);
  const weight = reader.optionalMass(written.weight, 'frame.weight', 'Weight of the frame');
  return {
    ...(blank ? { blank } : {}),
    ...(written.readyMade === undefined ? {} : { readyMade: written.readyMade }),
    ...(written.name === undefined ? {} : { name: written.name }),
    ...(hung && blank !== said ? { turned: hung } : {}),
    allowance,
    lip,
    mouldingWidth,
    ...(mouldingDepth === undefined ? {} : { mouldingDepth }),
    ...(rabbetDepth === undefined ? {} : { rabbetDepth }),
    colour: written.colour ?? DEFAULT_FRAME_COLOUR,
    build: written.build ?? 'open back',
    corners: written.corners ?? 'mitred',
    comesWith: [...new Set(written.comesWith)],
    grooves: grooves.toSorted((a, b) => a - b),
    float,
    ...(weight === undefined ? {} : { weight }),
    ...(written.density === undefined ? {} : { density: written.density }),
  };
}

/** In the order in which they are written. */
function readGrooves({ grooves = [] }: WrittenFrame, reader: Reader): number[] {
  const limits = { name: 'Distance to the groove', least: 0, above: true, most: 500 };
  return grooves.map((groove, index) => reader.length(groove, `frame.grooves[${index}]`, limits, NaN));
}

const MEASURES = { width: 'mouldingWidth', depth: 'mouldingDepth', grooves: 'grooves' } as const;

/** @param profile with its grooves as they are written. */
function tellProfile(profile: Profile, reader: Reader): void {
  for (const { of, index, words, ...fault } of profileFaults(profile, reader.showing)) {
    const message = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
    reader.say({ ...fault, at: `frame.${MEASURES[of]}${index === undefined ? '' : `[${index}]`}`, message });
  }
}

function readBlank(written: WrittenFrame, reader: Reader): Size | undefined {
  if (written.size !== undefined && written.readyMade !== undefined) {
    reader.say({
      code: 'frame-said-twice',
      at: 'frame.readyMade',
      message: 'The frame has both a size and the name of a ready-made size; keep one of them.',
      fix: { label: 'Keep the size', edits: [{ at: 'frame.readyMade', value: undefined }] },
    });
  }
  return written.size === undefined
    ? readReadyMade(written.readyMade, reader)
    : reader.size(written.size, 'frame.size', 'the frame');
}

function readReadyMade(name: string | undefined, reader: Reader): Size | undefined {
  if (name === undefined) return undefined;
  const found = findReadyMade(name);
  if (found) {
    const { width, height } = found.size;
    return found.turned ? { width: height, height: width } : { width, height };
  }
  const metric = reader.units !== 'in';
  const names = READY_MADE_SIZES.filter(({ name }) => name.endsWith(' in') !== metric)
    .map((size) => size.name)
    .join(', ');
  reader.say({
    code: 'ready-made-unknown',
    at: 'frame.readyMade',
    message: `"${name.slice(0, 40)}" is no ready-made size; write it as "size" instead, or take one of ${names}.`,
    value: name.slice(0, 60),
    remedy: 'a name of the list, or "size" in its place',
  });
  return { width: NaN, height: NaN };
}

function hang(size: Size, way: 'portrait' | 'landscape'): Size {
  const lying = size.width > size.height;
  // A square hangs either way, and a size that could not be read has its problem already.
  if (!(size.width !== size.height)) return size;
  return lying === (way === 'landscape') ? size : { width: size.height, height: size.width };
}
