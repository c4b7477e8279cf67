/** Opened jobs with the fonts of the program, under Node. */
import { readFileSync } from 'node:fs';
import type { ExportOptions } from '../../src/bridge';
import type { OutputContext } from '../../src/outputs/context';
import { planContext } from './jobs';

const font = (name: string) => new Uint8Array(readFileSync(new URL(`../../resources/fonts/${name}`, import.meta.url)));

export const fonts = { regular: font('Inter-Regular.ttf'), bold: font('Inter-SemiBold.ttf') };

/** What the makers take; undefined when the job has errors. */
export function tryContext(job: object, options: Partial<ExportOptions> = {}): OutputContext | undefined {
  return planContext(job, options, fonts);
}

export function contextOf(job: object, options: Partial<ExportOptions> = {}): OutputContext {
  const context = tryContext(job, options);
  if (!context) throw new Error('the job of this test has errors');
  return context;
}
