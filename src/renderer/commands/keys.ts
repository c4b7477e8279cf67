/** Keys of commands: written like `Mod+Shift+Z`, compared with what was pressed, and shown as this system writes them. */

/** What of a key press matters. */
export interface Pressed {
  readonly key: string;
  /** Place of the key on the keyboard, such as `KeyZ` or `Digit1`. */
  readonly code: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** True when the press is the one written; `Mod` is Ctrl, on a Mac the command key. */
export function isPressed(keys: string, pressed: Pressed, isMac: boolean): boolean {
  const parts = keys.split('+').map((part) => (part === '' ? '+' : part));
  const name = parts.at(-1) ?? '';
  const mod = isMac ? pressed.metaKey : pressed.ctrlKey;
  const other = isMac ? pressed.ctrlKey : pressed.metaKey;
  return (
    mod === parts.includes('Mod') &&
    !other &&
    pressed.altKey === parts.includes('Alt') &&
    pressed.shiftKey === parts.includes('Shift') &&
    sameKey(name, pressed)
  );
}

/** With Alt, systems put other characters on letters and digits, so these are known by their place too. */
function sameKey(name: string, pressed: Pressed): boolean {
  if (pressed.key.toLowerCase() === name.toLowerCase()) return true;
  if (/^[A-Z]$/.test(name)) return pressed.altKey && pressed.code === `Key${name}`;
  return /^\d$/.test(name) && pressed.code === `Digit${name}`;
}

export function keysText(keys: string, isMac: boolean): string {
  if (!isMac) return keys.replace('Mod', 'Ctrl');
  const signs: Readonly<Record<string, string>> = { Mod: '⌘', Shift: '⇧', Alt: '⌥' };
  return keys
    .split('+')
    .map((part) => signs[part] ?? part)
    .join('');
}
