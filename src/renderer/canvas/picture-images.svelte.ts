/** The images of the job's picture files, asked of the host once and kept. */
import type { HostClient } from '../../bridge';
import type { Job } from '../../core/job/job';
import type { PictureImages } from './draw-front';

type Loaded = HTMLImageElement | 'asked' | { readonly failure: string };

export class PictureImageStore {
  #loaded = $state.raw<ReadonlyMap<string, Loaded>>(new Map());

  readonly #host: HostClient;
  readonly #jobPath: () => string | undefined;

  constructor(host: HostClient, jobPath: () => string | undefined) {
    this.#host = host;
    this.#jobPath = jobPath;
  }

  /** The images there are, by picture. */
  of(job: Job): PictureImages {
    const images = new Map<number, HTMLImageElement>();
    for (const [index, picture] of job.pictures.entries()) {
      const image = picture.file === undefined ? undefined : this.#loaded.get(this.#key(picture.file));
      if (image instanceof HTMLImageElement) images.set(index, image);
    }
    return images;
  }

  /** Why a file could not be shown; undefined while all is well. */
  failureOf(file: string): string | undefined {
    const loaded = this.#loaded.get(this.#key(file));
    return loaded !== undefined && loaded !== 'asked' && 'failure' in loaded ? loaded.failure : undefined;
  }

  /** Asks for files not asked for before. */
  async load(job: Job): Promise<void> {
    const files = new Set(job.pictures.flatMap((picture) => picture.file ?? []));
    const missing = [...files].filter((file) => !this.#loaded.has(this.#key(file)));
    for (const file of missing) this.#keep(file, 'asked');
    await Promise.all(missing.map(async (file) => this.#keep(file, await this.#read(file))));
  }

  async #read(file: string): Promise<Loaded> {
    try {
      const jobPath = this.#jobPath();
      const reply = await this.#host.call('readPicture', jobPath === undefined ? { file } : { file, jobPath });
      if (!reply.ok) return { failure: reply.failure.message };
      const image = new Image();
      image.src = reply.value.dataUrl;
      await image.decode();
      return image;
    } catch {
      return { failure: `${file} could not be shown as a picture.` };
    }
  }

  #keep(file: string, loaded: Loaded): void {
    this.#loaded = new Map([...this.#loaded, [this.#key(file), loaded]]);
  }

  #key(file: string): string {
    return `${this.#jobPath() ?? ''}\n${file}`;
  }
}
