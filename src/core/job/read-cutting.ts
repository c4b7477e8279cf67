/** Reads how the mat is cut: the cutter, what is said in its place, and the way the layers come together. */
import { defaultLength } from './defaults';
import type { Cutter, Cutting, Layer } from './job';
import { MOST_BEVEL_DEGREES } from './read-mat';
import type { Reader } from './reader';
import type { WrittenCutter, WrittenCutting } from './written-cutter';

/** Longest overcut, mm: more is a slip of the pen. */
const MOST_OVERCUT = 50;
const OFF_THE_SCALE = 100;

export function readCutting(written: WrittenCutting, reader: Reader): Cutting {
  const cutter = written.cutter && readCutter(written.cutter, 'cutting.cutter', reader);
  const overcut = reader.optionalLength(written.overcut, 'cutting.overcut', {
    name: 'Overcut',
    least: 0,
    most: MOST_OVERCUT,
  });
  return {
    ...(overcut === undefined ? {} : { overcut }),
    waste: written.waste ?? cutter?.waste ?? 'right',
    ...(cutter ? { cutter } : {}),
    layers: written.layers ?? 'apart',
    behindTrim: reader.length(
      written.behindTrim,
      'cutting.behindTrim',
      { name: 'What a layer cut behind is smaller by', least: 0, above: true, most: 100 },
      defaultLength('behindTrim', reader.units),
    ),
  };
}

/** A cutter in mm; its overcuts from the thinnest board to the thickest. */
export function readCutter(written: WrittenCutter, at: string, reader: Reader): Cutter {
  const { name } = written;
  const reach = reader.optionalLength(written.reach, `${at}.reach`, {
    name: `Reach of ${name}`,
    least: 0,
    above: true,
  });
  const scaleOffset = reader.optionalLength(written.scaleOffset, `${at}.scaleOffset`, {
    name: `Scale offset of ${name}`,
    least: -OFF_THE_SCALE,
    most: OFF_THE_SCALE,
  });
  const bevelAngleDegrees =
    written.bevelAngle === undefined
      ? undefined
      : reader.number(written.bevelAngle, `${at}.bevelAngle`, `Bevel angle of ${name}`, 0, MOST_BEVEL_DEGREES, NaN);
  return {
    name,
    ...(reach === undefined ? {} : { reach }),
    ...(scaleOffset === undefined ? {} : { scaleOffset }),
    overcuts: readOvercuts(written, at, reader),
    ...(bevelAngleDegrees === undefined ? {} : { bevelAngleDegrees }),
    ...(written.waste === undefined ? {} : { waste: written.waste }),
  };
}

function readOvercuts({ name, overcuts = [] }: WrittenCutter, at: string, reader: Reader): Cutter['overcuts'] {
  const read = overcuts.map(({ thickness, overcut }, index) => {
    const place = `${at}.overcuts[${index}]`;
    return {
      thickness: reader.length(
        thickness,
        `${place}.thickness`,
        { name: `A board of ${name}`, least: 0, above: true, most: 50 },
        NaN,
      ),
      overcut: reader.length(
        overcut,
        `${place}.overcut`,
        { name: `An overcut of ${name}`, least: 0, most: MOST_OVERCUT },
        NaN,
      ),
    };
  });
  read.forEach(({ thickness }, index) => {
    const first = read.findIndex((other) => Math.abs(other.thickness - thickness) < SAME_BOARD);
    if (first === index || first < 0) return;
    reader.say({
      code: 'overcut-said-twice',
      at: `${at}.overcuts[${index}]`,
      message: `${name} has two overcuts for a board of ${reader.show(thickness)}; keep one of them.`,
      value: reader.show(thickness),
      fix: { label: 'Keep the first', edits: [{ at: `${at}.overcuts[${index}]`, value: undefined }] },
    });
  });
  return read.toSorted((a, b) => a.thickness - b.thickness);
}

/** Boards that differ by less are one, mm. */
export const SAME_BOARD = 0.001;

/** What is worth a look where cutter and layers do not agree. */
export function compareLayers({ cutter, overcut }: Cutting, layers: readonly Layer[], reader: Reader): void {
  if (!cutter) return;
  layers.forEach((layer, index) => {
    const at = `mat.layers[${index}]`;
    const { bevelAngleDegrees: own } = cutter;
    const { angleDegrees } = layer.bevel;
    if (own !== undefined && Math.abs(angleDegrees - own) > 1e-9) {
      reader.say({
        code: 'bevel-differs-from-cutter',
        severity: 'warning',
        at: `${at}.bevel.angle`,
        message: `Layer ${index + 1} asks for a bevel of ${angleDegrees}°, but ${cutter.name} cuts ${own}°; set the blade anew, or leave the angle to the cutter.`,
        value: `${angleDegrees}°`,
        limit: `${own}°`,
        remedy: `${own}°`,
        fix: { label: `Take the cutter's ${own}°`, edits: [{ at: `${at}.bevel.angle`, value: undefined }] },
      });
    }
    const [thinnest, thickest] = [cutter.overcuts[0], cutter.overcuts.at(-1)];
    if (overcut !== undefined || !thinnest || !thickest) return;
    const thin = layer.thickness < thinnest.thickness - SAME_BOARD;
    const thick = layer.thickness > thickest.thickness + SAME_BOARD;
    if (!thin && !thick) return;
    const nearest = thin ? thinnest : thickest;
    reader.say({
      code: 'overcut-from-nearest-board',
      severity: 'note',
      at: `${at}.thickness`,
      message: `Layer ${index + 1} is ${reader.show(layer.thickness)} thick, for which ${cutter.name} has no overcut; the nearest, that for ${reader.show(nearest.thickness)}, is taken. Try it on a scrap.`,
      value: reader.show(layer.thickness),
      limit: reader.show(nearest.thickness),
    });
  });
}
