/** The application menu: each item of our own sends its command's name to the screen, which does the work. */
import type { MenuItemConstructorOptions } from 'electron';

type Send = (command: string) => void;

/** The menu as data, for `Menu.buildFromTemplate`. */
export function describeMenu(send: Send, isMac: boolean): MenuItemConstructorOptions[] {
  const item = (label: string, command: string, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    click: () => send(command),
    // Shown, not taken: the screen hears its own keys, the same in both hosts, and would otherwise act twice.
    ...(accelerator ? { accelerator, registerAccelerator: false } : {}),
  });
  const line: MenuItemConstructorOptions = { type: 'separator' };
  return [
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    {
      label: '&File',
      submenu: [
        item('New job', 'new-job', 'CmdOrCtrl+N'),
        item('Open…', 'open-job', 'CmdOrCtrl+O'),
        line,
        item('Save', 'save-job', 'CmdOrCtrl+S'),
        item('Save as…', 'save-job-as', 'CmdOrCtrl+Shift+S'),
        line,
        item('Export…', 'export-job', 'CmdOrCtrl+E'),
        line,
        isMac ? { role: 'close' } : { role: 'quit', label: 'Quit' },
      ],
    },
    {
      label: '&Edit',
      submenu: [
        item('Undo', 'undo', 'CmdOrCtrl+Z'),
        item('Redo', 'redo', isMac ? 'Shift+Cmd+Z' : 'Ctrl+Y'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: '&View',
      submenu: [
        item('Zoom to fit', 'zoom-fit', 'CmdOrCtrl+0'),
        item('Zoom in', 'zoom-in', 'CmdOrCtrl+='),
        item('Zoom out', 'zoom-out', 'CmdOrCtrl+-'),
        line,
        item('Light or dark', 'toggle-theme'),
        line,
        { role: 'zoomIn', label: 'Larger text', accelerator: 'CmdOrCtrl+Alt+=' },
        { role: 'zoomOut', label: 'Smaller text', accelerator: 'CmdOrCtrl+Alt+-' },
        { role: 'resetZoom', label: 'Usual text size', accelerator: 'CmdOrCtrl+Alt+0' },
        line,
        { role: 'togglefullscreen' },
      ],
    },
    { label: '&Help', role: 'help', submenu: [item('Keys and help', 'help', 'F1')] },
  ];
}
