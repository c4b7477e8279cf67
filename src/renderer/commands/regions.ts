/** Goes from one part of the window to the next with the keyboard. */

/** Puts the focus on a part of the window itself, so that Tab goes on from its beginning. */
export function focusRegion(name: 'panel'): void {
  document.querySelector<HTMLElement>(`[data-region="${name}"]`)?.focus();
}

/** Moves the focus to the first thing that takes it in the next part of the window. */
export function focusNextRegion(): void {
  const regions = [...document.querySelectorAll<HTMLElement>('[data-region]')];
  const current = regions.findIndex((region) => region.contains(document.activeElement));
  for (let step = 1; step <= regions.length; step += 1) {
    const region = regions[(current + step) % regions.length];
    const target =
      region?.tabIndex === 0
        ? region
        : region?.querySelector<HTMLElement>('button:not(:disabled), input, select, [tabindex="0"]');
    if (target) return target.focus();
  }
}
