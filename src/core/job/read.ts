/** Understands a written job: checks it against the schema, fills in defaults, turns lengths into millimetres. */
import { bad, good, isError, type Problem, type Result } from '../problem';
import type { InchStep, MetricStep } from '../units';
import { goesBare } from './bare-kinds';
import type { Arrangement, FreeWindow, Job, Picture } from './job';
import { tellKept } from './kept-for-a-mat';
import { layersIn } from './layers-in';
import { migrate } from './migrate';
import { ArrangementReader } from './read-arrangement';
import { readBorders } from './read-borders';
import { compareLayers, readCutting } from './read-cutting';
import { readFrame } from './read-frame';
import { readHanging } from './read-hanging';
import { LineReader } from './read-lines';
import { readLayers } from './read-mat';
import { readPackage } from './read-package';
import { readPictures } from './read-picture';
import { readWall } from './read-wall';
import { Reader } from './reader';
import { schemaProblems } from './schema-problems';
import { writtenJob, type WrittenJob, type WrittenNode } from './written';

/** A job as it was written and as it is understood. */
export interface OpenedJob {
  readonly written: WrittenJob;
  readonly job: Job;
}

/** Deeper than any job can be; keeps hostile files from exhausting the stack. */
const MOST_NESTING = 60;

/** Reads a parsed file. `written` is the value itself, so whatever the user typed is kept. */
export function readJob(value: unknown): Result<OpenedJob> {
  if (depthExceeds(value, MOST_NESTING)) {
    return bad([
      {
        code: 'nested-too-deep',
        severity: 'error',
        at: '',
        message: `The file is nested more than ${MOST_NESTING} deep; no job is.`,
      },
    ]);
  }
  const current = migrate(value);
  if (!current.ok) return current;
  const checked = writtenJob.safeParse(current.value);
  if (!checked.success) return bad(schemaProblems(checked.error.issues, current.value));
  const written = current.value as WrittenJob;
  const { job, problems } = understand(written);
  return problems.some(isError) ? bad(problems) : good({ written, job }, problems);
}

function understand(written: WrittenJob): { job: Job; problems: readonly Problem[] } {
  const units = written.units ?? 'in';
  const steps = {
    in: Number(written.steps?.in?.slice(2) ?? 16) as InchStep,
    mm: Number(written.steps?.mm ?? 0.5) as MetricStep,
  };
  const reader = new Reader(units, steps);
  const pictures = readPictures(written.pictures ?? [], reader);
  const frame = readFrame(written.frame ?? {}, reader);
  const cutting = readCutting(written.cutting ?? {}, reader);
  const layers = readLayers(layersIn(written), reader, cutting.cutter?.bevelAngleDegrees);
  compareLayers(cutting, layers, reader);
  tellKept(written, reader);
  const lines = new LineReader(written.mat?.lines ?? [], reader, cutting.cutter?.bevelAngleDegrees);
  const arrangement = new ArrangementReader(pictures, reader, lines);
  const free = (written.free ?? []).map((item, index) => arrangement.free(item, `free[${index}]`));
  const implied = written.windows === undefined ? allPictures(pictures, free) : undefined;
  const node = written.windows ?? implied;
  const windows: Arrangement | undefined = node === undefined ? undefined : arrangement.node(node, 'windows');
  if (!windows && free.length === 0) {
    reader.say({
      code: 'nothing-to-mat',
      at: 'pictures',
      message: 'The job has no picture and no window; add a picture with its size.',
    });
  }
  const job: Job = {
    title: written.title ?? 'Untitled',
    units,
    steps,
    pictures,
    frame,
    package: readPackage(
      written.package ?? {},
      { frame, inside: { layers, pictures }, bare: pictures.some(({ kind }) => goesBare(kind)) },
      reader,
    ),
    layers,
    measuredAt: written.mat?.measuredAt ?? 'opening',
    ...(windows ? { windows } : {}),
    ...(implied === undefined ? {} : { impliedWindows: implied }),
    free,
    borders: readBorders(written.borders ?? {}, frame.blank !== undefined, reader),
    cutting,
    hanging: readHanging(written.hanging ?? {}, reader),
    wall: readWall(written.wall ?? {}, reader),
  };
  return { job, problems: reader.problems };
}

/** What is arranged when the job does not say: every picture that has no freely placed window, in a row. */
function allPictures(pictures: readonly Picture[], free: readonly FreeWindow[]): WrittenNode | undefined {
  const placed = new Set(free.map(({ window }) => window.picture));
  const items = pictures.filter((_, index) => !placed.has(index)).map(({ id }) => id);
  if (items.length === 0) return undefined;
  return items.length === 1 ? items[0] : { kind: 'row', items };
}

function depthExceeds(value: unknown, most: number): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > most) return true;
    level = level.flatMap((item) => (item !== null && typeof item === 'object' ? Object.values(item) : []));
  }
  return false;
}
