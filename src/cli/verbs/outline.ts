/** `outline`: the outline drawn in an SVG file, as a window of a job has it. */
import { Option } from 'commander';
import type { Size } from '../../core/geometry/box';
import { sizeLike } from '../../core/outlines/proportions';
import { readSvg, type ImportedOutline } from '../../core/outlines/read-svg';
import { bad, good, type Problem, type Result } from '../../core/problem';
import { decimalText, readLength, sizeText } from '../../core/units';
import { jsonOption } from '../options';
import { jsonText } from '../print/problems';
import { wrap } from '../print/text';
import { readText } from '../read-text';
import { refuse } from '../refuse';
import type { Verb } from '../verb';

interface Options {
  readonly width?: string;
  readonly height?: string;
  readonly json?: true;
}

export const outline: Verb<Options> = {
  name: 'outline',
  summary: 'make a window’s shape of the outline drawn in an SVG file',
  more: `The file must draw one closed outline that does not cross itself: path, rect, circle, ellipse or
polygon, in groups or not; transforms, viewBox and units are followed, 96 px to the inch. Text,
pictures and scripts are refused. One side given, the other keeps the proportions; both stretch it;
neither leaves it as large as it is drawn. The answer is the window to put into a job. A length has
to say its unit.`,
  examples: [
    'npm run -s matwright -- outline resources/samples/leaf.svg',
    'npm run -s matwright -- outline resources/samples/leaf.svg --height "9 1/2 in" --json',
  ],
  takesJob: false,
  takesFile: { name: 'SVG', what: 'the SVG file, or - for standard input' },
  options: [
    new Option('--width <length>', 'of the window, such as "8 in"'),
    new Option('--height <length>', 'of the window'),
    jsonOption('the "shape" for a window, its "size" and the size it was drawn in, "natural", in mm'),
  ],
  async run(world, options, name) {
    const { json = false } = options;
    const sides = readSides(options);
    if (!sides.ok) return refuse({ code: 2, problems: sides.problems }, json, world);
    const text = await readText(name, world, 'Save the drawing as plain SVG.');
    if (!text.ok) return refuse({ code: 2, problems: text.problems }, json, world);
    const read = readSvg(text.value);
    if (!read.ok) return refuse({ code: 1, problems: read.problems }, json, world);
    const size = sizeLike(read.value.natural, sides.value);
    await world.say(json ? jsonText(asData(read.value, size)) : inWords(read.value, size, world.columns));
    return 0;
  },
};

function readSides(options: Options): Result<Partial<Size>> {
  const problems: Problem[] = [];
  const read = (side: 'width' | 'height') => {
    const written = options[side];
    if (written === undefined) return {};
    const reading = readLength(written, 'mm');
    if (reading.ok && !reading.bare && reading.mm > 0) return { [side]: reading.mm };
    const remedy = 'a length above nothing with its unit, such as "8 in" or "200 mm"';
    const why = reading.ok ? `“${written}” will not do` : reading.message;
    problems.push({
      code: 'length-unreadable',
      severity: 'error',
      at: `--${side}`,
      message: `The ${side}: ${why}; write ${remedy}.`,
      value: written,
      remedy,
    });
    return {};
  };
  const sides = { ...read('width'), ...read('height') };
  return problems.length > 0 ? bad(problems) : good(sides);
}

function shapeOf({ path }: ImportedOutline) {
  return { kind: 'outline', path };
}

function asData(outline: ImportedOutline, size: Size) {
  return { ok: true, lengths: 'mm', natural: outline.natural, size, shape: shapeOf(outline), problems: [] };
}

function inWords(outline: ImportedOutline, size: Size, columns: number): string {
  const both = (of: Size) =>
    `${sizeText(of, { unit: 'mm', inchStep: 16, metricStep: 0.1 })}, ${sizeText(of, { unit: 'in', inchStep: 16, metricStep: 0.1 })}`;
  const drawn = `Drawn ${both(outline.natural)}; as a window ${both(size)}:`;
  const exact = (mm: number) => Number(decimalText(mm, 'mm', 4));
  const window = {
    kind: 'window',
    size: `${exact(size.width)} x ${exact(size.height)} mm`,
    shape: shapeOf(outline),
  };
  return `${wrap(drawn, columns).join('\n')}\n${JSON.stringify(window, null, 1).replace(/\n */g, ' ')}\n`;
}
