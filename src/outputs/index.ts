/** The table of outputs, and the one door through which a job's text becomes files. */
import type { ExportOptions, MachineKind, OutputKind, Progress } from '../bridge';
import { buildProblems } from '../core/build-problems';
import { planCuts } from '../core/cutting/plan-cuts';
import { parseJobText } from '../core/job/text';
import { layOut } from '../core/layout/lay-out';
import { bad, good, isError, type Problem, type Result } from '../core/problem';
import type { Shelf } from '../core/shelf/shelf';
import { showingOf } from '../core/units';
import { loadPictures, NO_PICTURES } from './proof/load-pictures';
import type { Fonts, MakerHooks, OutputContext } from './context';
import { makeCutCard } from './cut-card/cut-card';
import { makeCutList } from './cut-list/cut-list';
import { fullBlanks } from './machine/behind-words';
import { makeHangingSheet } from './hanging/hanging-sheet';
import { makeWallTemplate } from './hanging/wall-template';
import { makeDxf } from './machine/dxf';
import { linesLeftOut } from './machine/line-words';
import { makePathCsv } from './machine/path-csv';
import { makePathJson } from './machine/path-json';
import { makeGcode, makeHpgl } from './machine/programs';
import { makeSvg } from './machine/svg';
import { nothingToCut } from './nothing-to-cut';
import { makePackageSheet } from './package/package-sheet';
import { makeProof } from './proof/proof';
import { makeTemplate } from './template/template';

export { makeCutList, makeHangingSheet, makePackageSheet, makeProof, makeTemplate, makeWallTemplate };
export type { Fonts, OutputContext };

interface OutputWords {
  /** Ends the file's name. */
  readonly ending: string;
  readonly words: string;
  /** What it is called where it is left out. */
  readonly called: string;
  /** Part of the whole work, for progress; only in proportion to the others. */
  readonly weight: number;
  /** True of what shows the picture in its frame, and so is made also where nothing is cut. */
  readonly withoutCuts?: true;
}

/** One file of a job. */
interface WholeOutput extends OutputWords {
  readonly perLayer?: undefined;
  readonly make: (context: OutputContext, hooks: MakerHooks) => Promise<Result<Uint8Array>>;
}

/** One file for each layer of board, counted from 1. */
interface LayerOutput extends OutputWords {
  readonly perLayer: true;
  readonly make: (context: OutputContext, layer: number) => Promise<Result<Uint8Array>>;
}

type Output = WholeOutput | LayerOutput;

const OUTPUTS: Readonly<Record<OutputKind, Output>> = {
  template: {
    ending: '-template.pdf',
    words: 'Making the template',
    called: 'the template',
    weight: 20,
    make: makeTemplate,
  },
  'cut-card': {
    ending: '-cut-card.pdf',
    words: 'Writing the cut cards',
    called: 'the cut cards',
    weight: 4,
    make: makeCutCard,
  },
  'cut-list': {
    ending: '-cut-list.csv',
    words: 'Writing the cutting list',
    called: 'the cutting list',
    weight: 1,
    make: makeCutList,
  },
  proof: {
    ending: '-proof.svg',
    words: 'Drawing the proof',
    called: 'the proof picture',
    weight: 1,
    withoutCuts: true,
    make: makeProof,
  },
  'package-sheet': {
    ending: '-package-sheet.pdf',
    words: 'Writing the package sheet',
    called: 'the package sheet',
    weight: 4,
    withoutCuts: true,
    make: makePackageSheet,
  },
  'hanging-sheet': {
    ending: '-hanging-sheet.pdf',
    words: 'Writing the hanging sheet',
    called: 'the hanging sheet',
    weight: 4,
    withoutCuts: true,
    make: makeHangingSheet,
  },
  'wall-template': {
    ending: '-wall-template.pdf',
    words: 'Drawing the wall template',
    called: 'the wall template',
    weight: 10,
    withoutCuts: true,
    make: makeWallTemplate,
  },
  ...machineOutputs(),
};

function machineOutputs(): Readonly<Record<MachineKind, Output>> {
  const words = 'Writing the paths for machines';
  const called = 'the files for machines';
  return {
    dxf: { ending: '-cuts.dxf', words, called, weight: 1, make: makeDxf },
    svg: { ending: '-cuts.svg', words, called, weight: 1, make: makeSvg },
    hpgl: { ending: '.plt', words, called, weight: 1, perLayer: true, make: makeHpgl },
    gcode: { ending: '.nc', words, called, weight: 1, perLayer: true, make: makeGcode },
    csv: { ending: '-cuts.csv', words, called, weight: 1, make: makePathCsv },
    json: { ending: '-cuts.json', words, called, weight: 1, make: makePathJson },
  };
}

function isOfHanging(kind: OutputKind): boolean {
  return kind === 'hanging-sheet' || kind === 'wall-template';
}

function isForMachine(kind: OutputKind): boolean {
  return kind in machineOutputs();
}

export interface ExportHooks {
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
  readonly fonts: Fonts;
  /** What the user has: loads of wire and hooks, prices; without it only what the job says is known. */
  readonly shelf?: Shelf | undefined;
  /** Reads a picture's file as a data URL; without it, or when it fails, the proof shows a card. */
  readonly readPicture?: ((file: string) => Promise<Result<string>>) | undefined;
}

export interface OutputFile {
  readonly kind: OutputKind;
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What the files of the chosen outputs of a job are called, in the order they are made; a job that can't be read has none. */
export function outputNames(jobText: string, baseName: string, only: readonly OutputKind[]): string[] {
  const opened = parseJobText(jobText);
  if (!opened.ok) return [];
  return kindsOf(only)
    .flatMap((kind) => partsOf(OUTPUTS[kind], baseName, opened.value.job.layers.length))
    .map(({ name }) => name);
}

/** A file of an output, and the layer it is of. */
interface Part {
  readonly name: string;
  readonly layer?: number;
}

/** None of an output of cuts where no layer is cut. */
function partsOf({ ending, perLayer, withoutCuts }: Output, baseName: string, layers: number): Part[] {
  if (layers === 0 && !withoutCuts) return [];
  if (!perLayer) return [{ name: `${baseName}${ending}` }];
  return Array.from({ length: layers }, (_, index) => ({
    name: `${baseName}-layer-${index + 1}${ending}`,
    layer: index + 1,
  }));
}

function kindsOf(only: readonly OutputKind[]): OutputKind[] {
  return (Object.keys(OUTPUTS) as OutputKind[]).filter((kind) => only.includes(kind));
}

/**
 * Makes the chosen outputs of a job, given as its file's text; the same text and options give the same bytes.
 * A job that cannot be read, laid out or printed gives its problems. Rejects with the signal's reason
 * (an `AbortError`) when cancelled.
 */
export async function exportFiles(
  jobText: string,
  baseName: string,
  options: ExportOptions,
  hooks: ExportHooks,
): Promise<Result<readonly OutputFile[]>> {
  const opened = openContext(jobText, options, hooks);
  if (!opened.ok) return opened;
  const shown = options.only.includes('proof') ? await loadPictures(opened.value.job, hooks) : NO_PICTURES;
  const context = { ...opened.value, pictures: shown.pictures };
  const { kinds, leftOut } = parted(kindsOf(options.only), context);
  if (leftOut.some(isError)) return bad(leftOut);
  const whole = kinds.reduce((sum, kind) => sum + OUTPUTS[kind].weight, 0);
  const files: OutputFile[] = [];
  const problems: Problem[] = [...opened.problems, ...shown.problems, ...leftOut];
  if (kinds.some(isForMachine)) {
    problems.push(...linesLeftOut(context.layout, options.view), ...fullBlanks(context.plan, context.showing));
  }
  let before = 0;
  for (const kind of kinds) {
    const output = OUTPUTS[kind];
    const { weight, words } = output;
    const report = (done: number, step: string) => hooks.onProgress?.({ done: (before + done * weight) / whole, step });
    report(0, words);
    for (const { name, layer } of partsOf(output, baseName, context.plan.layers.length)) {
      const made = output.perLayer
        ? await output.make(context, layer ?? 1)
        : await output.make(context, { onProgress: report, ...(hooks.signal ? { signal: hooks.signal } : {}) });
      hooks.signal?.throwIfAborted();
      if (!made.ok) return made;
      files.push({ kind, name, bytes: made.value });
      problems.push(...made.problems);
    }
    before += weight;
  }
  hooks.onProgress?.({ done: 1, step: 'Done' });
  return good(files, problems);
}

/** The kinds that something can be made of, and what is said of the others. */
function parted(wanted: readonly OutputKind[], { plan }: OutputContext) {
  const kinds = wanted.filter((kind) => partsOf(OUTPUTS[kind], '', plan.layers.length).length > 0);
  const others = wanted.filter((kind) => !kinds.includes(kind)).map((kind) => OUTPUTS[kind].called);
  return { kinds, leftOut: nothingToCut(others, kinds.length > 0) };
}

function openContext(jobText: string, options: ExportOptions, { fonts, shelf }: ExportHooks): Result<OutputContext> {
  const opened = parseJobText(jobText);
  if (!opened.ok) return opened;
  const { job, written } = opened.value;
  const ofHanging = options.only.some(isOfHanging);
  const layout = layOut(job);
  if (!layout.ok) return layout;
  const context: OutputContext = {
    job,
    layout: layout.value,
    plan: planCuts(job, layout.value),
    showing: showingOf(job, options.units),
    options,
    fonts,
    ...(shelf ? { shelf } : {}),
    pictures: NO_PICTURES.pictures,
  };
  return good(context, [
    ...opened.problems,
    ...layout.problems,
    ...buildProblems(job, layout.value, ofHanging ? { ...written, hanging: written.hanging ?? {} } : written, shelf),
  ]);
}
