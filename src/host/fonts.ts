/** The font of screen and paper, read from the program's resources for those who draw on paper. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** TrueType files of the two weights in use. */
export interface PaperFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export async function readFonts(resources: string): Promise<PaperFonts> {
  const [regular, bold] = await Promise.all(
    ['Inter-Regular.ttf', 'Inter-SemiBold.ttf'].map((name) => readFile(join(resources, 'fonts', name))),
  );
  return { regular: regular!, bold: bold! };
}
