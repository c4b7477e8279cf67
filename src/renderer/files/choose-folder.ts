/** Choosing a folder: by the system's own dialog, or by the screen's chooser where that can't be had. */
import type { Workbench } from '../workbench';

interface Wanted {
  /** Of the screen's chooser, with the words on the button that ends it. */
  readonly title: string;
  readonly action: string;
  /** Where the chooser begins. */
  readonly folder: string;
  /** What the system's dialog offers. */
  readonly suggested?: string;
}

/** Undefined when none was chosen. */
export async function chooseFolder(
  { host, info, dialogs }: Workbench,
  { title, action, folder, suggested = folder }: Wanted,
): Promise<string | undefined> {
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action, endings: [], folderOnly: true, folder });
  const reply = await host.call('pickFolder', { suggested });
  return reply.ok ? reply.value.folder : undefined;
}
