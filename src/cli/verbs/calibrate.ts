/** `calibrate`: a sheet to measure a cutter by, and what the measures of a trial square say of it. */
import { listed } from '../../core/phrases';
import { InvalidArgumentError, Option } from 'commander';
import { resolve } from 'node:path';
import type { PaperName, UnitName } from '../../bridge';
import { calibratedCutter, calibrationWords } from '../../core/cutting/calibrated-cutter';
import { calibrate, type Calibration } from '../../core/cutting/calibration';
import { readCalibration } from '../../core/cutting/calibration-ask';
import { bad, isError, type Problem, type Result } from '../../core/problem';
import { readLength, showSetting, unitWord, type Showing, type Unit } from '../../core/units';
import { jsonOption } from '../options';
import { jsonText, problemsText } from '../print/problems';
import { wrap } from '../print/text';
import { machineProblem, refuse } from '../refuse';
import type { Verb } from '../verb';
import type { ExitCode, World } from '../world';

const UNITS = ['in', 'mm', 'cm'] as const satisfies readonly UnitName[];
const PAPERS = ['letter', 'legal', 'tabloid', 'a4', 'a3'] as const satisfies readonly PaperName[];

interface Options {
  readonly sheet?: string;
  readonly paper?: (typeof PAPERS)[number];
  readonly replace?: true;
  readonly scale?: string;
  readonly borders?: readonly string[];
  readonly corners?: readonly string[];
  readonly usedOvercut: string;
  readonly board?: string;
  readonly units?: Unit;
  readonly json?: boolean;
}

export const calibrateVerb: Verb<Options> = {
  name: 'calibrate',
  summary: 'find what a cutter’s scale is off by and how far its cuts must run past a corner',
  more: `Cut a square in a scrap with the guide at one reading of the scale, measure it, and give what
you measured; --sheet writes a page that tells how, with room to write. Borders are measured on
the side that faced you, corners on the face: negative where the cuts stop short. Several lengths
are parted by commas, or by semicolons where the lengths themselves have decimal commas. Cut
away from your hands, and keep fingers behind the blade.`,
  examples: [
    'npm run -s matwright -- calibrate --sheet trial-square.pdf --paper a4 --units mm',
    'npm run -s matwright -- calibrate --scale "2 in" --borders "1 31/32, 1 31/32, 2, 1 31/32" --corners "-1/64, 0, -1/64, 0" --used-overcut 1/16 --board 1/16',
    'npm run -s matwright -- calibrate --scale "50 mm" --borders "49,5; 49,6; 49,5; 49,4" --corners "0,4; 0,5; 0,4; 0,3" --used-overcut 2 --json',
  ],
  takesJob: false,
  options: [
    new Option('--sheet <file>', 'write the sheet as a PDF, in place of reckoning'),
    new Option('--paper <size>', 'of the sheet (default: letter for inches, else a4)').choices(PAPERS),
    new Option('--replace', 'write over a file of that name'),
    new Option('--scale <length>', 'what the scale read for all four cuts'),
    new Option('--borders <lengths>', 'left, top, right, bottom, from the edge of the scrap to the cut').argParser(
      (words) => readList(words, [4]),
    ),
    new Option(
      '--corners <lengths>',
      'how far the cuts run over each of the four corners, or over all alike',
    ).argParser((words) => readList(words, [1, 4])),
    new Option('--used-overcut <length>', 'how far past the corners the blade was run').default('0'),
    new Option('--board <thickness>', 'of the scrap, for the list of overcuts'),
    new Option('--units <unit>', 'of lengths without a unit, and of the answer (default: that of --scale)').choices(
      UNITS,
    ),
    jsonOption('"scaleOffset", "overcut" and "spread", all lengths in mm'),
  ],
  run(world, options) {
    return options.sheet === undefined ? reckon(world, options) : writeSheet(world, options, options.sheet);
  },
};

async function writeSheet(
  world: World,
  { paper, units = 'in', replace, json = false }: Options,
  file: string,
): Promise<ExitCode> {
  const { writeCalibrationSheet } = await import('../../host/calibration-sheet');
  const path = resolve(world.folder, file);
  const choices = { paper: paper ?? (units === 'in' ? 'letter' : 'a4'), units };
  const reply = await writeCalibrationSheet({ path, ...choices, replace: replace ?? false }, world.resources);
  if (!reply.ok) {
    const { code, message } = reply.failure;
    const told = code === 'exists' ? message.replace('Replace it', 'Write over it with --replace') : message;
    return refuse({ code: 2, problems: [machineProblem(code, told)] }, json, world);
  }
  const { bytes } = reply.value;
  await world.say(json ? jsonText({ ok: true, ...reply.value }) : `${(bytes / 1000).toFixed(1)} kB  ${path}\n`);
  return 0;
}

async function reckon(world: World, options: Options): Promise<ExitCode> {
  const { json = false, board } = options;
  const units = options.units ?? unitOf(options.scale ?? '') ?? 'in';
  const showing: Showing = { unit: units, inchStep: 64, metricStep: 0.1 };
  const found = calibrated(options, units, showing);
  const thickness = board === undefined ? undefined : readLength(board, units);
  const problems = [
    ...found.problems,
    ...(thickness && !thickness.ok ? [boardProblem(thickness.message, thickness.remedy)] : []),
  ];
  if (!found.ok || problems.some(isError)) return refuse({ code: 2, problems }, json, world);
  world.tell(problems.length === 0 ? '' : `${problemsText(problems, world.columns)}\n`);
  const entry = thickness?.ok ? calibratedCutter({ name: '' }, found.value, thickness.mm, units) : undefined;
  if (json) {
    const { scaleOffset, overcuts } = entry ?? {};
    const cutter = entry ? { cutter: { scaleOffset, overcuts } } : {};
    await world.say(jsonText({ ok: true, lengths: 'mm', ...found.value, ...cutter, problems }));
    return 0;
  }
  const lines = calibrationWords(found.value, showing).flatMap((line) => wrap(line, world.columns));
  const written = entry
    ? [
        '',
        'In your list of cutters:',
        `  "scaleOffset": ${JSON.stringify(entry.scaleOffset)},`,
        `  "overcuts": ${JSON.stringify(entry.overcuts)}`,
      ]
    : [];
  await world.say(`${[...lines, ...written].join('\n')}\n`);
  return 0;
}

function calibrated(options: Options, units: Unit, showing: Showing): Result<Calibration> {
  const { scale, borders, corners, usedOvercut } = options;
  if (scale === undefined || borders === undefined || corners === undefined) {
    const lacking = Object.entries({ scale, borders, corners }).flatMap(([name, given]) =>
      given === undefined ? [`--${name}`] : [],
    );
    const words =
      lacking.length === 3
        ? 'Give what was measured with --scale, --borders and --corners, or a file for the sheet with --sheet.'
        : `${listed(lacking)} ${lacking.length === 1 ? 'is' : 'are'} missing: --scale, --borders and --corners together say what was measured.`;
    return bad([machineProblem('value-missing', words)]);
  }
  const [left = '', top = '', right = '', bottom = ''] = borders;
  const read = readCalibration({ scale, borders: { left, top, right, bottom }, corners, usedOvercut }, units);
  return read.ok ? calibrate(read.value, (mm) => showSetting(mm, showing).withUnit) : read;
}

function boardProblem(message: string, remedy: string): Problem {
  return {
    code: 'length-unreadable',
    severity: 'error',
    at: 'board',
    message: `The board’s thickness: ${message}.`,
    remedy,
  };
}

/** Lengths parted by semicolons where there are any, else by commas. */
function readList(words: string, counts: readonly number[]): readonly string[] {
  const parts = words.split(words.includes(';') ? ';' : ',').map((part) => part.trim());
  if (counts.includes(parts.length)) return parts;
  const wanted = counts.length === 1 ? 'four lengths are' : 'one length, or four, are';
  throw new InvalidArgumentError(
    `${wanted} wanted, parted by commas (by semicolons where they have decimal commas); ${parts.length} were given.`,
  );
}

function unitOf(length: string): Unit | undefined {
  const word = unitWord(length);
  const reading = word === undefined ? undefined : readLength(`1 ${word}`, 'in');
  return reading?.ok ? reading.unit : undefined;
}
