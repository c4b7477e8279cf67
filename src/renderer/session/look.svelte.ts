/** How the screen stands: the open view, light or dark, front or back; none of it is part of the job or its history. */
import type { CostPapersOptions, ExportOptions, SheetPapersOptions } from '../../bridge';
import type { PerSide } from '../../core/geometry/box';
import type { Job } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import type { FitShape } from '../../core/layout/how-many-ask';
import type { Aim } from '../../core/show/plan';
import type { Unit } from '../../core/units';

export const VIEWS = [
  'pictures',
  'frame',
  'mat',
  'windows',
  'cutting',
  'package',
  'hanging',
  'shelf',
  'sheets',
  'costs',
] as const;
export type ViewId = (typeof VIEWS)[number];
export type Theme = 'light' | 'dark';

/** Lengths as typed, in the unit then shown. */
export interface AskedHowMany {
  readonly unit: Unit;
  readonly size: string;
  readonly on: string;
  readonly gap: string;
  readonly border: string;
  /** Undefined: as the other borders. */
  readonly bottom: string | undefined;
  readonly shape: FitShape;
}

/** What was measured of a trial square, as typed, in the unit then shown. */
export interface MeasuredTrial {
  readonly unit: Unit;
  /** Thickness of the scrap. */
  readonly board: string;
  readonly scale: string;
  readonly usedOvercut: string;
  readonly borders: PerSide<string>;
  readonly corners: readonly string[];
}

/** The list of a show as it was read. */
export interface ShowList {
  readonly path: string;
  readonly text: string;
}

/** What was last asked of a show. */
export interface AskedShow {
  /** The list, as it was read. */
  readonly list?: ShowList;
  readonly aim: Aim;
  readonly most: number;
  readonly onShelfOnly: boolean;
  readonly allowCustom: boolean;
}

/** A job of another file, whose sheets are planned together with this one's. */
export interface SheetJob {
  readonly path: string;
  readonly title: string;
  readonly copies: number;
  /** Undefined while its file can't be read. */
  readonly laid?: { readonly job: Job; readonly layout: Layout };
  /** Why not, in words. */
  readonly wrong?: string;
}

const THEME_KEY = 'matwright.theme';

export class Look {
  view = $state<ViewId>('pictures');
  fromBack = $state(false);
  /** Which side the list of cuts is written for. */
  cutsFrom = $state<'back' | 'front'>('back');
  /** The layer shown from the back and listed for cutting; 1 is the top layer. */
  layer = $state(1);
  numbers = $state(true);
  /** The choices of the last export. */
  exported = $state.raw<ExportOptions>();
  /** The folder it went into. */
  exportedTo = $state<string>();
  /** What was last asked of how many windows fit, as it was typed. */
  howMany = $state.raw<AskedHowMany>();
  /** What was last typed of a trial square. */
  trial = $state.raw<MeasuredTrial>();
  /** The show that was last planned; it stays when another job gives its mat. */
  show = $state.raw<AskedShow>();
  /** Jobs planned together with whichever is on the screen. */
  sheetJobs = $state.raw<readonly SheetJob[]>([]);
  /** The choices of the last papers of sheets, and the folder they went into. */
  sheetPapers = $state.raw<Omit<SheetPapersOptions, 'showing'> & { readonly folder: string }>();
  /** The same of papers of costs. */
  costPapers = $state.raw<Pick<CostPapersOptions, 'only' | 'paper'> & { readonly folder: string }>();
  /** Whom the job on the screen is for, as proposals say it. */
  customer = $state('');
  /** Of the job on the screen. */
  copies = $state(1);
  /** The folder last chosen from. */
  folder = $state<string>();
  problemsOpen = $state(false);
  /** The picture whose fields are open, by its place in the list. */
  openPicture = $state<number | undefined>(0);
  /** Undefined: as the system has it. */
  theme = $state<Theme | undefined>(rememberedTheme());

  /** Another job is on the screen: nothing of the last one stays chosen. */
  startJob(view: ViewId = 'pictures'): void {
    this.fromBack = false;
    this.layer = 1;
    this.openPicture = 0;
    this.problemsOpen = false;
    this.view = view;
    // Unit and paper are the job's; those of another would round it.
    this.exported = undefined;
    this.exportedTo = undefined;
    this.howMany = undefined;
    this.trial = undefined;
    this.copies = 1;
    this.customer = '';
  }

  /** The theme that is seen now. */
  get shownTheme(): Theme {
    return this.theme ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
  }

  turnTheme(): void {
    this.theme = this.shownTheme === 'dark' ? 'light' : 'dark';
    try {
      localStorage.setItem(THEME_KEY, this.theme);
    } catch {
      // A browser that keeps nothing still shows it now.
    }
  }
}

function rememberedTheme(): Theme | undefined {
  try {
    const kept = localStorage.getItem(THEME_KEY);
    return kept === 'light' || kept === 'dark' ? kept : undefined;
  } catch {
    return undefined;
  }
}
