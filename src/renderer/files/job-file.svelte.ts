/** The file the job belongs to, and whether what is on the screen has been saved in it. */
import type { JobFile as FileOnDisk } from '../../bridge';
import type { WrittenJob } from '../../core/job/written';
import type { Session } from '../session/session.svelte';

export class JobFile {
  readonly #session: Session;
  path = $state.raw<string>();
  /** Names the content last read or written, so that a save notices another's change. */
  stamp = $state.raw<string>();
  #saved = $state.raw<string>();

  readonly isDirty = $derived.by(() => this.#saved !== JSON.stringify(this.#session.committed));
  readonly name = $derived(this.path?.split(/[\\/]/).at(-1));

  constructor(session: Session) {
    this.#session = session;
    this.startNew();
  }

  /** The job on the screen is a new one, with nothing in it worth saving yet. */
  startNew(): void {
    this.path = undefined;
    this.stamp = undefined;
    this.#saved = JSON.stringify(this.#session.committed);
  }

  /** The job on the screen is what this file says. */
  isIn(file: Pick<FileOnDisk, 'path' | 'stamp'>, written: WrittenJob): void {
    this.path = file.path;
    this.stamp = file.stamp;
    this.#saved = JSON.stringify(written);
  }

  /** The job on the screen was kept from before and is in no file as it is. */
  recovered(path: string | undefined): void {
    this.path = path;
    this.stamp = undefined;
    this.#saved = undefined;
  }
}
