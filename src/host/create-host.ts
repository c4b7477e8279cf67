/** The host calls, each with its handler: the one implementation that Electron and the web host both serve. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, sep } from 'node:path';
import type { CallName, HostCalls, HostInfo, Progress, Reply } from '../bridge';
import { writeCalibrationSheet } from './calibration-sheet';
import { readDemoPrices } from './demo-prices';
import { exportCosts } from './export-costs';
import { exportJob } from './export-job';
import { exportSheets } from './export-sheets';
import { done, failed } from './failure';
import { listFolder } from './folders';
import { readJob, saveJob } from './job-files';
import { readKept, saveKept } from './kept-lists';
import { readPicture } from './pictures';
import { dropRecovery, keepRecovery, listRecoveries } from './recovery';
import { checkRequest, isCallName } from './requests';
import { readSamples } from './samples';
import type { Shell } from './shell';
import { writeFolder } from './write-folder';

export interface HostSetup {
  readonly version: string;
  /** The program's resources: fonts and samples. */
  readonly resources: string;
  /** Where unsaved work and the user's lists are kept. */
  readonly state: string;
  readonly shell: Shell;
  /** The job file named when the program was started. */
  readonly startWith?: string | undefined;
}

export interface CallContext {
  readonly onProgress?: ((progress: Progress) => void) | undefined;
  /** The asker went away: long work is given up. */
  readonly gone?: AbortSignal | undefined;
}

type Handlers = {
  readonly [K in CallName]: (
    request: HostCalls[K]['request'],
    context: CallContext,
  ) => Promise<Reply<HostCalls[K]['reply']>>;
};

/** Answers any call by name; whatever arrives, the answer is a reply. */
export interface Host {
  call(name: unknown, request: unknown, context?: CallContext): Promise<Reply<unknown>>;
}

export function createHost(setup: HostSetup): Host {
  const handlers = createHandlers(setup);
  return {
    call: async (name, request, context = {}) => {
      if (!isCallName(name)) return failed('failed', `There is no call named “${String(name)}”.`);
      try {
        return await answer(handlers, name, request, context);
      } catch (error) {
        console.error(error);
        return failed('failed', `A fault in Matwright itself stopped this: ${messageOf(error)}`);
      }
    },
  };
}

async function answer<K extends CallName>(
  handlers: Handlers,
  name: K,
  request: unknown,
  context: CallContext,
): Promise<Reply<unknown>> {
  const checked = checkRequest(name, request);
  if (!checked.ok) return failed('failed', checked.message);
  return await handlers[name](checked.request, context);
}

function createHandlers({ shell, resources, state, ...facts }: HostSetup): Handlers {
  const running = new Map<string, AbortController>();
  /** Long work under the name by which it is cancelled; it is given up too when the asker has gone. */
  const stoppable = async <T>(id: string, gone: AbortSignal | undefined, work: (signal: AbortSignal) => Promise<T>) => {
    const stop = new AbortController();
    running.set(id, stop);
    try {
      return await work(gone ? AbortSignal.any([stop.signal, gone]) : stop.signal);
    } finally {
      if (running.get(id) === stop) running.delete(id);
    }
  };
  const kept = join(state, 'unsaved');
  const info = describeHost(shell.kind, facts.version, facts.startWith);
  return {
    info: async () => done(info),
    samples: () => readSamples(resources),
    demoPrices: () => readDemoPrices(resources),
    listFolder: (request) => listFolder(request, info.folder),
    readJob: ({ path }) => readJob(path),
    saveJob: (request) => saveJob(request),
    readKept: ({ list }) => readKept(state, list),
    saveKept: (request) => saveKept(state, request),
    writeCalibrationSheet: (request) => writeCalibrationSheet(request, resources),
    writeFolder: (request) => writeFolder(request),
    readPicture: (request) => readPicture(request),
    exportJob: ({ id, ...request }, { onProgress, gone }) =>
      stoppable(id, gone, (signal) => exportJob(request, { resources, onProgress, signal })),
    exportSheets: ({ id, ...request }, { onProgress, gone }) =>
      stoppable(id, gone, (signal) => exportSheets(request, { resources, onProgress, signal })),
    exportCosts: ({ id, ...request }, { onProgress, gone }) =>
      stoppable(id, gone, (signal) => exportCosts(request, { resources, onProgress, signal })),
    cancel: async ({ id }) => {
      const cancelled = running.has(id);
      running.get(id)?.abort();
      return done({ cancelled });
    },
    keepRecovery: (request) => keepRecovery(kept, request),
    listRecoveries: () => listRecoveries(kept),
    dropRecovery: ({ id }) => dropRecovery(kept, id),
    pickJob: shell.pickJob,
    pickSavePath: shell.pickSavePath,
    pickFolder: shell.pickFolder,
    showInFolder: shell.showInFolder,
    allowClose: shell.allowClose,
  };
}

function describeHost(kind: HostInfo['kind'], version: string, startWith: string | undefined): HostInfo {
  const documents = join(homedir(), 'Documents');
  return {
    kind,
    version,
    folder: existsSync(documents) ? documents : homedir(),
    separator: sep,
    ...(startWith === undefined ? {} : { startWith }),
  };
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
