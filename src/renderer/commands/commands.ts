/** The table of commands: each with its name, words, keys and deed. Buttons, keys, the help and the desktop's menu all read it. */
import type { HostInfo } from '../../bridge';
import type { MotionName } from '../../core/job/motion';
import { duplicateItem, removeItemAt } from '../edits/arrange';
import { removeFree } from '../edits/free-windows';
import { chooseSample, newJob } from '../files/new-job';
import { openJob } from '../files/open-job';
import { saveJob, saveJobAs } from '../files/save-job';
import type { ViewId } from '../session/look.svelte';
import type { Workbench } from '../workbench';
import { focusNextRegion, focusRegion } from './regions';
import { turnAt } from './turn';

export interface Command {
  readonly name: string;
  readonly label: string;
  readonly group: 'Job' | 'Change' | 'View';
  readonly keys: readonly string[];
  readonly run: (bench: Workbench) => void | Promise<void>;
  /** Always, when left out. */
  readonly enabled?: (bench: Workbench) => boolean;
  /** Keys that a browser keeps for itself, so only the desktop has them. */
  readonly desktopKeys?: readonly string[];
}

const UNITS = ['in', 'mm', 'cm'] as const;

export const COMMANDS: readonly Command[] = [
  { name: 'new-job', label: 'New', group: 'Job', keys: ['Mod+Alt+N'], desktopKeys: ['Mod+N'], run: newJob },
  { name: 'open-job', label: 'Open', group: 'Job', keys: ['Mod+O'], run: (bench) => openJob(bench) },
  { name: 'samples', label: 'Samples', group: 'Job', keys: ['Mod+Alt+O'], run: chooseSample },
  { name: 'save-job', label: 'Save', group: 'Job', keys: ['Mod+S'], run: async (bench) => void (await saveJob(bench)) },
  {
    name: 'save-job-as',
    label: 'Save as',
    group: 'Job',
    keys: ['Mod+Shift+S'],
    run: async (bench) => void (await saveJobAs(bench)),
  },
  { name: 'export-job', label: 'Export', group: 'Job', keys: ['Mod+E'], run: ({ dialogs }) => dialogs.openExport() },
  {
    name: 'undo',
    label: 'Undo',
    group: 'Change',
    keys: ['Mod+Z'],
    enabled: (bench) => historyOf(bench).canUndo,
    run: undo,
  },
  {
    name: 'redo',
    label: 'Redo',
    group: 'Change',
    keys: ['Mod+Shift+Z', 'Mod+Y'],
    enabled: (bench) => historyOf(bench, 'redo').canRedo,
    run: redo,
  },
  {
    name: 'duplicate',
    label: 'Duplicate the chosen window',
    group: 'Change',
    keys: ['Mod+D'],
    enabled: hasChosen,
    run: duplicate,
  },
  {
    name: 'remove',
    label: 'Remove the chosen window',
    group: 'Change',
    keys: ['Delete'],
    enabled: hasChosen,
    run: remove,
  },
  turn('right', 'Turn the chosen item right', 'Alt+R'),
  turn('left', 'Turn the chosen item left', 'Alt+Shift+R'),
  turn('left-right', 'Mirror the chosen item left for right', 'Alt+M'),
  turn('top-bottom', 'Mirror the chosen item top for bottom', 'Alt+Shift+M'),
  view('pictures', 'Pictures', '1'),
  view('frame', 'Frame', '2'),
  view('mat', 'Mat', '3'),
  view('windows', 'Windows', '4'),
  view('cutting', 'Cutting', '5'),
  view('package', 'Package', '6'),
  view('hanging', 'Hanging', '7'),
  view('shelf', 'Shelf', '8'),
  view('sheets', 'Sheets', '9'),
  view('costs', 'Costs', 'C'),
  {
    name: 'from-back',
    label: 'View from back',
    group: 'View',
    keys: ['Alt+B'],
    run: ({ look }) => void (look.fromBack = !look.fromBack),
  },
  {
    name: 'show-numbers',
    label: 'Numbers on the picture',
    group: 'View',
    keys: ['Alt+N'],
    run: ({ look }) => void (look.numbers = !look.numbers),
  },
  {
    name: 'zoom-in',
    label: 'Zoom in',
    group: 'View',
    keys: ['Alt+='],
    desktopKeys: ['Mod+='],
    enabled: hasDrawing,
    run: (bench) => drawingOf(bench).zoom(1.25),
  },
  {
    name: 'zoom-out',
    label: 'Zoom out',
    group: 'View',
    keys: ['Alt+-'],
    desktopKeys: ['Mod+-'],
    enabled: hasDrawing,
    run: (bench) => drawingOf(bench).zoom(0.8),
  },
  {
    name: 'zoom-fit',
    label: 'Zoom to fit',
    group: 'View',
    keys: ['Alt+0'],
    desktopKeys: ['Mod+0'],
    enabled: hasDrawing,
    run: (bench) => drawingOf(bench).fit(),
  },
  { name: 'next-unit', label: 'Next unit: in, mm, cm', group: 'View', keys: ['Alt+U'], run: nextUnit },
  { name: 'toggle-theme', label: 'Light or dark', group: 'View', keys: ['Alt+L'], run: ({ look }) => look.turnTheme() },
  {
    name: 'problems',
    label: 'List of problems',
    group: 'View',
    keys: ['F8'],
    run: ({ look }) => void (look.problemsOpen = !look.problemsOpen),
  },
  { name: 'next-region', label: 'Next part of the window', group: 'View', keys: ['F6'], run: () => focusNextRegion() },
  { name: 'help', label: 'Keys and help', group: 'View', keys: ['F1'], run: ({ dialogs }) => dialogs.openKeys() },
];

export function commandNamed(name: string): Command | undefined {
  return COMMANDS.find((command) => command.name === name);
}

export function isEnabled(command: Command, bench: Workbench): boolean {
  return command.enabled?.(bench) ?? true;
}

/** A command's keys on this host. */
export function keysOf(command: Command, kind: HostInfo['kind']): readonly string[] {
  return kind === 'desktop' ? [...(command.desktopKeys ?? []), ...command.keys] : command.keys;
}

function view(id: ViewId, label: string, key: string): Command {
  return {
    name: `view-${id}`,
    label,
    group: 'View',
    keys: [`Alt+${key}`],
    run: ({ look }) => {
      look.view = id;
      // A button that was pressed keeps the focus; from anywhere else one wants to go on in the panel.
      if (!document.activeElement?.closest('[data-region="views"]')) focusRegion('panel');
    },
  };
}

function turn(motion: MotionName, label: string, keys: string): Command {
  return {
    name: `turn-${motion}`,
    label,
    group: 'Change',
    keys: [keys],
    enabled: hasChosen,
    run: (bench) => turnAt(bench, bench.session.selected ?? '', motion),
  };
}

/** The drawing that is seen: the mat, or its sheets; of costs there is none. */
function drawingOf({ look, stage, desk }: Workbench): { zoom: (factor: number) => void; fit: () => void } {
  return look.view === 'sheets' ? desk.view : stage;
}

function hasDrawing({ look }: Workbench): boolean {
  return look.view !== 'costs';
}

/** What is taken back: beside the sheets pins, as long as there are any to take back, else the job. */
export function historyOf({ look, session, desk }: Workbench, which: 'undo' | 'redo' = 'undo') {
  const { pins } = desk;
  const isPins = look.view === 'sheets' && (which === 'undo' ? pins.canUndo : pins.canRedo);
  return isPins ? pins : session;
}

function undo(bench: Workbench): void {
  const history = historyOf(bench, 'undo');
  const { undoLabel } = history;
  history.undo();
  bench.notice.say(`Undone: ${undoLabel}.`);
}

function redo(bench: Workbench): void {
  const history = historyOf(bench, 'redo');
  const { redoLabel } = history;
  history.redo();
  bench.notice.say(`Done again: ${redoLabel ?? ''}.`);
}

/** Beside sheets and costs no window can be seen to be chosen. */
function hasChosen({ look, session }: Workbench): boolean {
  return look.view !== 'sheets' && look.view !== 'costs' && session.selected !== undefined;
}

function duplicate({ session }: Workbench): void {
  const done = session.selected === undefined ? undefined : duplicateItem(session.committed, session.selected);
  if (done === undefined) return;
  session.replace(done.written, 'Duplicate the window');
  session.selected = done.path;
}

function remove({ session, notice }: Workbench): void {
  const path = session.selected ?? '';
  const free = /^free\[(\d+)\]$/.exec(path);
  const rest = free ? removeFree(session.committed, Number(free[1])) : removeItemAt(session.committed, path)?.written;
  if (rest === undefined)
    return notice.fail(
      session.isBare ? 'The picture stays: the frame needs one.' : 'The last window stays: a mat needs one.',
    );
  session.replace(rest, 'Remove the window');
  session.selected = undefined;
}

function nextUnit({ session, notice }: Workbench): void {
  const next = UNITS[(UNITS.indexOf(session.showing.unit) + 1) % UNITS.length] ?? 'in';
  session.shownUnit = next;
  notice.say(`Lengths are shown in ${next}.`);
}
