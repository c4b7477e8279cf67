/** `export`: the template, the cutting list and the proof picture as files, all of them or none. */
import { InvalidArgumentError, Option } from 'commander';
import type { ExportOptions, OutputKind, PaperName, UnitName, ViewName } from '../../bridge';
import { showingOf } from '../../core/units';
import { cutterOption } from '../cutter-option';
import { exportInto, filesText, readFolder, refusedExport } from '../export-into';
import { MACHINE_HELP, MACHINE_KINDS, machineFrom, machineOptions, type MachineWords } from '../machine-options';
import { jsonOption, viewOption } from '../options';
import { pathLengths, pathLengthsText } from '../print/path-lengths';
import { jsonText, problemsText } from '../print/problems';
import { findJob, type FoundJob } from '../read-job';
import { refuse } from '../refuse';
import { readShelfFile, shelfOption } from '../shelf-option';
import type { Verb } from '../verb';

const USUAL_KINDS = ['template', 'cut-list', 'proof'] as const satisfies readonly OutputKind[];
const HANGING_KINDS = ['hanging-sheet', 'wall-template'] as const satisfies readonly OutputKind[];
const KINDS: readonly OutputKind[] = [
  'template',
  'cut-card',
  'cut-list',
  'proof',
  'package-sheet',
  ...HANGING_KINDS,
  ...MACHINE_KINDS,
];
const PAPERS = ['blank', 'letter', 'legal', 'tabloid', 'a4', 'a3'] as const satisfies readonly PaperName[];
const UNITS = ['in', 'mm', 'cm'] as const satisfies readonly UnitName[];

interface Options extends MachineWords {
  readonly out?: string;
  readonly paper?: PaperName;
  readonly view: ViewName;
  readonly units?: UnitName;
  readonly only?: readonly OutputKind[];
  readonly turnEverySecondPage?: true;
  readonly cutter?: string;
  readonly shelf?: string;
  readonly replace?: true;
  readonly json?: true;
}

export const exportVerb: Verb<Options> = {
  name: 'export',
  summary: 'write the full-scale template, the cutting list and the proof picture',
  more: `The files are named after the job's file (from standard input: after its title):
NAME-template.pdf, NAME-cut-list.csv, NAME-proof.svg; with --only cut-card NAME-cut-card.pdf,
for each layer the steps with a guided cutter, its settings, starts and stops; with
--only package-sheet what goes into the frame, the pieces to cut and the check list; with
--only hanging-sheet,wall-template how the frame hangs, and its nail points at full scale.
A shelf (--shelf) gives both their prices and loads. All are written or none: not when the
job has errors, not when a file of one of these names is there already (unless --replace is
given), not when Ctrl-C ends it. Print templates at 100 %, never "fit to page". A job without
a mat has nothing to cut: of it only the proof is written, which is told.

${MACHINE_HELP}`,
  examples: [
    'npm run -s matwright -- export resources/samples/1-sea-chart.json --out templates',
    'npm run -s matwright -- export resources/samples/3-nine-linocuts.json --out templates --paper a3 --only template',
    'npm run -s matwright -- export resources/samples/2-fern-cyanotype.json --out templates --only cut-card --cutter "resources/cutters.json#Long table cutter"',
    'npm run -s matwright -- export resources/samples/7-library-wall.json --out wall --only hanging-sheet,wall-template',
    'npm run -s matwright -- export resources/samples/6-painted-sea.json --out bench --only package-sheet --shelf resources/shelf.csv',
    'npm run -s matwright -- export - --only cut-list,proof --replace < resources/samples/2-fern-cyanotype.json',
    'npm run -s matwright -- export resources/samples/1-sea-chart.json --out machine --only dxf,gcode --depth "2 mm" --rotary C',
  ],
  takesJob: true,
  options: [
    new Option(
      '--out <folder>',
      'where to write; made if it is not there (default: beside the job; the current folder for -)',
    ).argParser(readFolder),
    new Option(
      '--paper <size>',
      'paper of the template; "blank" is one page of the frame’s size (default: letter for a job in inches, else a4)',
    ).choices(PAPERS),
    viewOption('the side the board is cut from'),
    new Option('--units <unit>', 'unit of the lengths shown (default: the job’s)').choices(UNITS),
    new Option(
      '--only <kinds>',
      `some of ${KINDS.join(',')}, parted by commas; "machine" for ${MACHINE_KINDS.join(',')} (default: ${USUAL_KINDS.join(',')}, and of a job that says how it hangs ${HANGING_KINDS.join(',')})`,
    ).argParser(readKinds),
    new Option(
      '--turn-every-second-page',
      'print every second tile head down, so that a printer’s drift does not add up',
    ),
    cutterOption(),
    shelfOption('what you have, for the package and hanging sheets: prices, loads of wire and hooks'),
    ...machineOptions(),
    new Option('--replace', 'write over files of the same names; without it none is ever touched'),
    jsonOption('the "files" written, with "kind", "path" and "bytes"; for machines "paths" with their lengths in mm'),
  ],
  async run(world, options, name) {
    const { json = false } = options;
    const found = await findJob(name, world, options.cutter);
    if (!found.ok) return refuse(found, json, world);
    const choices = choicesFor(found, options);
    const shelf = options.shelf === undefined ? undefined : await readShelfFile(options.shelf, world);
    if (shelf?.ok === false) return refuse({ code: 2, problems: shelf.problems }, json, world);
    const reply = await exportInto(world, found, choices, {
      ...(options.out === undefined ? {} : { out: options.out }),
      ...(options.replace ? { replace: true } : {}),
      ...(shelf ? { shelf: shelf.value.text } : {}),
    });
    if (!reply.ok) {
      const { code, problems } = reply.failure;
      if (code === 'job-has-errors') return refuse({ code: 1, problems: problems ?? [] }, json, world);
      return refuse(refusedExport(reply.failure), json, world);
    }
    const { files } = reply.value;
    const problems = [...(shelf?.problems ?? []), ...reply.value.problems];
    const warnings = problems.filter(({ severity }) => severity === 'warning');
    if (warnings.length > 0) world.tell(`${problemsText(warnings, world.columns)}\n`);
    const paths = pathLengths(found, choices.only, options.view, machineFrom(options));
    if (json) await world.say(jsonText({ ok: true, files, ...(paths ? { paths } : {}), problems }));
    else {
      const told = paths ? `\n${pathLengthsText(paths, showingOf(found.job, options.units))}` : '';
      await world.say(filesText(files, world.columns) + told);
    }
    return 0;
  },
};

function choicesFor({ job, written }: FoundJob, options: Options): ExportOptions {
  return {
    paper: options.paper ?? (job.units === 'in' ? 'letter' : 'a4'),
    view: options.view,
    units: options.units ?? job.units,
    only: options.only ?? (written.hanging || written.wall ? [...USUAL_KINDS, ...HANGING_KINDS] : USUAL_KINDS),
    turnEverySecondPage: options.turnEverySecondPage ?? false,
    machine: machineFrom(options),
  };
}

function readKinds(words: string): readonly OutputKind[] {
  const named = words.split(',').map((word) => word.trim());
  const given = named.flatMap((word): readonly string[] => (word === 'machine' ? MACHINE_KINDS : [word]));
  const wrong = given.find((word) => !KINDS.some((kind) => kind === word));
  if (wrong !== undefined) throw new InvalidArgumentError(`"${wrong}" is none of ${[...KINDS, 'machine'].join(', ')}.`);
  return KINDS.filter((kind) => given.includes(kind));
}
