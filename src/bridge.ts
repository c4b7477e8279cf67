/** The one typed map of host calls: what a screen may ask of the machine it runs on, the same for every host. */
import type { PlainBoardsUsed } from './core/cost/boards-used';
import type { CostWay } from './core/cost/compare';
import type { MachineOptions } from './core/cutting/machine-options';
import type { Problem } from './core/problem';
import type { Unplanned } from './core/sheets/board-asks';
import type { PlannedBoard } from './core/sheets/planned-board';
import type { KeepRule } from './core/sheets/remnants';
import type { Showing } from './core/units';

/** A job file as it lies on disk. `stamp` names this very content, so that a save can notice another's change. */
export interface JobFile {
  /** Absolute path. */
  readonly path: string;
  /** The file's text. */
  readonly text: string;
  /** Hash of the bytes read or written. */
  readonly stamp: string;
}

/** A list that the user keeps with the program, for all jobs. */
export type KeptListName = 'cutters' | 'shelf' | 'stock' | 'prices';

/** Such a list as it lies there; text and stamp are left out while nothing was ever kept. */
export interface KeptFile {
  readonly path: string;
  /** As it is, also when it is no list that can be read. */
  readonly text?: string;
  readonly stamp?: string;
  /** Of the stock: the record by which its last use can be taken back; left out where none is kept. */
  readonly lastUse?: string;
}

/** Why a call could not be done, in words that say what, where and what would be right. */
export interface HostFailure {
  readonly code:
    | 'not-found'
    | 'not-a-file'
    | 'not-a-folder'
    | 'not-allowed'
    | 'disk-full'
    | 'changed-on-disk'
    | 'exists'
    | 'too-large'
    | 'not-readable'
    | 'job-has-errors'
    | 'cancelled'
    | 'failed';
  readonly message: string;
  /** With `job-has-errors`: the problems found. */
  readonly problems?: readonly Problem[];
}

/** What every call answers with; only a broken connection rejects. */
export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: HostFailure };

export interface HostInfo {
  /** `desktop`: Electron, with the system's own file dialogs. `browser`: the local web host; the screen shows its own chooser. */
  readonly kind: 'desktop' | 'browser';
  readonly version: string;
  /** Where a first save or export is offered: the user's documents or home folder. */
  readonly folder: string;
  /** Path separator of this machine. */
  readonly separator: '/' | '\\';
  /** The job file named when the program was started, to be opened first. */
  readonly startWith?: string;
}

export interface FolderEntry {
  readonly name: string;
  readonly path: string;
  readonly kind: 'folder' | 'file';
}

export interface FolderListing {
  readonly folder: string;
  /** Undefined at the root. */
  readonly parent?: string;
  readonly entries: readonly FolderEntry[];
}

/** A demo job that ships with the program. */
export interface SampleJob {
  readonly name: string;
  readonly title: string;
  readonly text: string;
}

/** The files an export can make. */
export type OutputKind = 'template' | 'cut-card' | 'cut-list' | 'proof' | 'package-sheet' | HangingKind | MachineKind;
/** How the frame hangs, on paper: the sheet, and where its nails go at full scale. */
export type HangingKind = 'hanging-sheet' | 'wall-template';
/** The tool's paths for a machine, each in a format of its own. */
export type MachineKind = 'dxf' | 'svg' | 'hpgl' | 'gcode' | 'csv' | 'json';
export type PaperName = 'blank' | 'letter' | 'legal' | 'tabloid' | 'a4' | 'a3';
export type ViewName = 'back' | 'front';
export type UnitName = 'in' | 'mm' | 'cm';

export interface ExportOptions {
  /** `blank`: one page of the blank's own size. */
  readonly paper: PaperName;
  readonly view: ViewName;
  readonly units: UnitName;
  readonly only: readonly OutputKind[];
  /** Prints every second tile head down, so that a printer that draws a trapezoid does not add up its drift. */
  readonly turnEverySecondPage: boolean;
  /** What is not said is as `core/cutting/machine-options.ts` has it. */
  readonly machine?: Partial<MachineOptions> | undefined;
}

export interface ExportedFile {
  readonly kind: OutputKind;
  readonly path: string;
  readonly bytes: number;
}

/**
 * What a plan of sheets comes to on paper: the plan with its cuts, a drawing of each sheet (SVG), a label for each piece, and
 * lists of pieces and of cuts (CSV).
 */
export type SheetPaperKind = 'sheet-plan' | 'sheet-drawings' | 'labels' | 'sheet-cuts';

/** A plan of sheets as papers tell it. */
export interface SheetPlans {
  /** At the head of every page. */
  readonly title: string;
  readonly boards: readonly PlannedBoard[];
  /** Told beside the plan, so that nobody thinks that they were cut. */
  readonly unplanned: readonly Unplanned[];
  /** Undefined: as is usual. */
  readonly keep?: KeepRule | undefined;
}

export interface SheetPapersOptions {
  readonly paper: Exclude<PaperName, 'blank'>;
  readonly showing: Showing;
  readonly only: readonly SheetPaperKind[];
}

export interface SheetPaperFile {
  readonly kind: SheetPaperKind;
  readonly path: string;
  readonly bytes: number;
}

/** Papers of what jobs cost: for the customer with prices or without, and for the shop with every line (PDF). */
export type CostPaperKind = 'proposal' | 'proposal-without-prices' | 'cost-sheet';

export interface CostPapersOptions {
  readonly how: CostWay;
  /** Name of a moulding of the shelf, in place of the jobs' own; against custom: of which the frame to size is made. */
  readonly moulding?: string | undefined;
  readonly only: readonly CostPaperKind[];
  readonly paper: Exclude<PaperName, 'blank'>;
  /** At the head of proposals. */
  readonly customer?: string | undefined;
  readonly showing: Showing;
}

export interface CostPaperFile {
  readonly kind: CostPaperKind;
  readonly path: string;
  readonly bytes: number;
}

/** Unsaved work kept by the host, so that a crash or a closed window loses nothing. */
export interface Recovery {
  /** Which session of the screen it belongs to. */
  readonly id: string;
  /** The file it was opened from, if any. */
  readonly path?: string;
  readonly title: string;
  readonly text: string;
  /** When it was kept, ISO 8601. */
  readonly kept: string;
}

/** Progress of a long call, 0 to 1, with the step in words. */
export interface Progress {
  readonly done: number;
  readonly step: string;
}

/** Name of each call, what it takes, what it gives. */
export interface HostCalls {
  info: { request: Record<string, never>; reply: HostInfo };
  samples: { request: Record<string, never>; reply: readonly SampleJob[] };
  /** The invented price list that ships with the program. */
  demoPrices: { request: Record<string, never>; reply: { readonly text: string } };
  /** Desktop only: the system's open dialog; no path when the user changed their mind, several only where `many` may be chosen. */
  pickJob: {
    request: { readonly title?: string; readonly of?: 'job' | 'table' | 'job or list'; readonly many?: boolean };
    reply: { readonly path?: string; readonly paths?: readonly string[] };
  };
  /** Desktop only: the system's save dialog. */
  pickSavePath: { request: { readonly suggested: string; readonly title?: string }; reply: { readonly path?: string } };
  /** Desktop only: the system's folder dialog. */
  pickFolder: { request: { readonly suggested?: string }; reply: { readonly folder?: string } };
  /** Folders, and files with one of the endings (without dot), for the screen's own chooser. */
  listFolder: { request: { readonly folder?: string; readonly endings: readonly string[] }; reply: FolderListing };
  readJob: { request: { readonly path: string }; reply: JobFile };
  /** Atomic. With `stamp`, refuses (`changed-on-disk`) when the file is no longer what was read; without it, and without `replace`, refuses (`exists`) an existing file. */
  saveJob: {
    request: { readonly path: string; readonly text: string; readonly stamp?: string; readonly replace?: boolean };
    reply: JobFile;
  };
  readKept: { request: { readonly list: KeptListName }; reply: KeptFile };
  /**
   * Atomic, also between programs: refuses (`changed-on-disk`) when the list is no longer what the stamp names; without
   * one, when there is a list. `setAside` moves what lies there to another name first, whatever it is. `lastUse`, of the
   * stock alone, is the new record of its last use, saved with it or not at all; empty: there is none any more; unless said it
   * stays as it is.
   */
  saveKept: {
    request: {
      readonly list: KeptListName;
      readonly text: string;
      readonly stamp?: string;
      readonly setAside?: boolean;
      readonly lastUse?: string;
    };
    reply: KeptFile;
  };
  /** The sheet that a cutter is calibrated by, as a PDF; without `replace` refuses (`exists`) an existing file. */
  writeCalibrationSheet: {
    request: {
      readonly path: string;
      readonly paper: PaperName;
      readonly units: UnitName;
      readonly cutter?: string;
      readonly replace: boolean;
    };
    reply: { readonly path: string; readonly bytes: number };
  };
  /** Whole or not at all; without `replace` refuses (`exists`) where a file of one of the names is there. */
  writeFolder: {
    request: {
      readonly folder: string;
      /** Plain names of files, without folders. */
      readonly files: readonly { readonly name: string; readonly text: string }[];
      readonly replace: boolean;
    };
    reply: { readonly paths: readonly string[] };
  };
  /** A picture's file as a data URL for the canvas; relative paths are taken from the job's folder. */
  readPicture: { request: { readonly file: string; readonly jobPath?: string }; reply: { readonly dataUrl: string } };
  /** Reports progress; cancelled with `cancel`. No file is left half written. */
  exportJob: {
    request: {
      readonly id: string;
      readonly text: string;
      /** Pictures with relative names are taken from this file's folder. */
      readonly jobPath?: string;
      readonly folder: string;
      readonly baseName: string;
      readonly options: ExportOptions;
      /** The table of what the user has: loads of wire and hooks, prices. */
      readonly shelf?: string | undefined;
      readonly replace: boolean;
    };
    /** With the warnings and notes of the job, and of pictures that could not be shown in the proof. */
    reply: { readonly files: readonly ExportedFile[]; readonly problems: readonly Problem[] };
  };
  /** Papers of a plan that was made by the screen; reports progress, cancelled with `cancel`. All files are written or none. */
  exportSheets: {
    request: {
      readonly id: string;
      readonly plans: SheetPlans;
      readonly folder: string;
      readonly baseName: string;
      readonly options: SheetPapersOptions;
      readonly replace: boolean;
    };
    /** With warnings of names that the type on paper can't show. */
    reply: { readonly files: readonly SheetPaperFile[]; readonly problems: readonly Problem[] };
  };
  /** What jobs cost, on paper, reckoned from their texts; reports progress, cancelled with `cancel`. All files are written or none. */
  exportCosts: {
    request: {
      readonly id: string;
      /** Texts of job files. */
      readonly jobs: readonly string[];
      /** Tables of what the user has, and of the user's prices. */
      readonly shelf: string;
      readonly prices: string;
      /** What a plan of sheets used, for the jobs in their order. */
      readonly boards?: PlainBoardsUsed | undefined;
      readonly options: CostPapersOptions;
      readonly folder: string;
      readonly baseName: string;
      readonly replace: boolean;
    };
    /** With warnings and notes of the jobs, and of names that the type on paper can't show. */
    reply: { readonly files: readonly CostPaperFile[]; readonly problems: readonly Problem[] };
  };
  cancel: { request: { readonly id: string }; reply: { readonly cancelled: boolean } };
  keepRecovery: { request: Omit<Recovery, 'kept'>; reply: { readonly kept: string } };
  listRecoveries: { request: Record<string, never>; reply: readonly Recovery[] };
  dropRecovery: { request: { readonly id: string }; reply: { readonly dropped: boolean } };
  /** Shows the exported file in the system's file manager; desktop only. */
  showInFolder: { request: { readonly path: string }; reply: { readonly shown: boolean } };
  /** The screen answers the host's `closing` event: may the window go? */
  allowClose: { request: Record<string, never>; reply: { readonly closed: boolean } };
}

export type CallName = keyof HostCalls;

/** What the host tells the screen without being asked. */
export interface HostEvents {
  /** A menu item or its key was chosen; the name is one of the screen's own command names. */
  command: { readonly name: string };
  /** The window is about to close; the screen asks about unsaved work and then calls `allowClose`. */
  closing: Record<string, never>;
  /** The program was started again with a job file: the running one should open it. */
  openJob: { readonly path: string };
}

/** What a screen holds: implemented once over Electron's bridge and once over the local web host. */
export interface HostClient {
  call<K extends CallName>(
    name: K,
    request: HostCalls[K]['request'],
    onProgress?: (progress: Progress) => void,
  ): Promise<Reply<HostCalls[K]['reply']>>;
  on<E extends keyof HostEvents>(event: E, handler: (payload: HostEvents[E]) => void): () => void;
}

declare global {
  interface Window {
    /** Put there by the preload script in Electron; absent under the web host. */
    readonly matwrightHost?: HostClient;
  }
}
