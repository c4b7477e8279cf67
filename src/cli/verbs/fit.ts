/** `fit`: how many windows of one size a blank holds, and which way they stand best. */
import { Option } from 'commander';
import { SIDES, type Side } from '../../core/geometry/box';
import { howMany, placesOf, type HowMany } from '../../core/layout/how-many';
import { FIT_SHAPES, readHowMany, type FitShape } from '../../core/layout/how-many-ask';
import { howManyWords } from '../../core/layout/how-many-words';
import { readLength, unitWord, type Unit } from '../../core/units';
import { jsonOption } from '../options';
import { jsonText } from '../print/problems';
import { wrap } from '../print/text';
import { refuse } from '../refuse';
import type { Verb } from '../verb';

const UNITS = ['in', 'mm', 'cm'] as const satisfies readonly Unit[];

type SideOption = `border${Capitalize<Side>}`;

interface Options extends Readonly<Partial<Record<SideOption, string>>> {
  readonly size: string;
  readonly on: string;
  readonly gap: string;
  readonly border: string;
  readonly shape: FitShape;
  readonly units?: Unit;
  readonly json?: true;
}

export const fit: Verb<Options> = {
  name: 'fit',
  summary: 'say how many windows of one size a blank holds',
  more: `Tried are all windows upright, all turned on their side, a block of each beside or above one
another, and, of ovals, staggered rows and columns with the gap between outlines at their
nearest. The gap lies between the openings of the bottom layer, borders are measured from the
edge of the blank as cut; what is left over is shared equally. A number without a unit is in
the unit of --units, or else in that which the size names.`,
  examples: [
    'npm run -s matwright -- fit --size "4 x 6 in" --on "16 x 20 in" --gap "1/2 in" --border "2 in"',
    'npm run -s matwright -- fit --size "60 x 60 mm" --on "300 x 400 mm" --gap "8 mm" --border "30 mm" --border-bottom "45 mm" --shape oval --json',
  ],
  takesJob: false,
  options: [
    new Option('--size <size>', 'of one window, width x height').makeOptionMandatory(),
    new Option('--on <size>', 'of the blank, width x height').makeOptionMandatory(),
    new Option('--gap <length>', 'least distance between neighbours').makeOptionMandatory(),
    new Option('--border <length>', 'least border on every side').makeOptionMandatory(),
    ...SIDES.map((side) => new Option(`--border-${side} <length>`, `least border at the ${side}, where it is another`)),
    new Option('--shape <shape>', 'ovals, and so circles, may be staggered').choices(FIT_SHAPES).default('rectangle'),
    new Option('--units <unit>', 'of lengths without a unit, and of the answer').choices(UNITS),
    jsonOption('"count", "borders" and every place, all lengths in mm'),
  ],
  async run(world, options) {
    const { size, on, gap, shape, json = false } = options;
    const units = options.units ?? unitOf(size) ?? unitOf(on) ?? 'in';
    const border = { left: sideOf('Left'), top: sideOf('Top'), right: sideOf('Right'), bottom: sideOf('Bottom') };
    function sideOf(side: Capitalize<Side>): string {
      return options[`border${side}`] ?? options.border;
    }
    const alike = Object.values(border).every((each) => each === options.border);
    const read = readHowMany({ size, on, gap, border: alike ? options.border : border, shape }, units);
    if (!read.ok) return refuse({ code: 2, problems: read.problems }, json, world);
    const answer = howMany(read.value);
    const lines = howManyWords(answer, { unit: units, inchStep: 16, metricStep: 0.5 });
    await world.say(
      json ? jsonText(asData(answer)) : `${lines.flatMap((line) => wrap(line, world.columns)).join('\n')}\n`,
    );
    return 0;
  },
};

function asData(answer: HowMany) {
  const { ask, best, borders, plain, smallerGap, smallerBorder } = answer;
  return {
    ok: true,
    lengths: 'mm',
    ask,
    count: best.count,
    best,
    borders,
    plain,
    ...(smallerGap ? { smallerGap } : {}),
    ...(smallerBorder ? { smallerBorder } : {}),
    places: placesOf(answer),
    problems: [],
  };
}

/** The unit that the last length of a size names. */
function unitOf(size: string): Unit | undefined {
  const word = unitWord(size);
  const reading = word === undefined ? undefined : readLength(`1 ${word}`, 'in');
  return reading?.ok ? reading.unit : undefined;
}
