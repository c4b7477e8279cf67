/** Goes to the field of a path: opens its view and puts the caret into the nearest field there is. */
import { tick } from 'svelte';
import { viewOfPath } from '../session/view-of-path';
import type { Workbench } from '../workbench';

export async function goToPath({ look, session }: Workbench, path: string): Promise<void> {
  look.view = viewOfPath(path);
  const picture = /^pictures\[(\d+)\]/.exec(path)?.[1];
  if (picture !== undefined) look.openPicture = Number(picture);
  const item = /^(windows(?:\.items\[\d+\])*|free\[\d+\])/.exec(path)?.[1];
  if (item !== undefined) session.selected = item;
  await tick();
  const fields = [...document.querySelectorAll<HTMLElement>('[data-region="panel"] [data-at]')];
  const near = fields.filter((field) => isNear(field.dataset['at'] ?? '', path));
  const target =
    near.find((field) => field.dataset['at'] === path) ??
    near[0] ??
    document.querySelector<HTMLElement>('[data-region="panel"]');
  target?.focus();
  target?.scrollIntoView({ block: 'nearest' });
}

/** True when one path lies within the other. */
function isNear(field: string, path: string): boolean {
  return (
    field === path ||
    field.startsWith(`${path}.`) ||
    field.startsWith(`${path}[`) ||
    path.startsWith(`${field}.`) ||
    path.startsWith(`${field}[`)
  );
}
