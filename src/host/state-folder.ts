/** Where this machine keeps what a program remembers between runs, by each system's own custom. */
import { homedir } from 'node:os';
import { join } from 'node:path';

type Surroundings = { readonly [name: string]: string | undefined };

/**
 * The program's folder for unsaved work, window sizes and the user's lists; it need not exist yet.
 *
 * Linux: the XDG Base Directory Specification 0.8, `$XDG_STATE_HOME`, by default `~/.local/state`.
 * Windows: the local application data; macOS: `Library/Application Support`.
 */
export function stateFolder(
  platform: NodeJS.Platform = process.platform,
  surroundings: Surroundings = process.env,
  home: string = homedir(),
): string {
  if (platform === 'win32') return join(surroundings['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'Matwright');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Matwright');
  const given = surroundings['XDG_STATE_HOME'];
  // The specification says to ignore a relative path.
  return join(given?.startsWith('/') ? given : join(home, '.local', 'state'), 'matwright');
}
