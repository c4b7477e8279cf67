/** The demo jobs that ship with the program, read from its resources. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Reply, SampleJob } from '../bridge';
import { done, failureFrom } from './failure';

/** Every demo job, by file name. */
export async function readSamples(resources: string): Promise<Reply<readonly SampleJob[]>> {
  const folder = join(resources, 'samples');
  try {
    const names = (await readdir(folder)).filter((name) => name.endsWith('.json')).sort();
    return done(await Promise.all(names.map((name) => readSample(folder, name))));
  } catch (error) {
    return failureFrom(error, folder);
  }
}

async function readSample(folder: string, file: string): Promise<SampleJob> {
  const text = await readFile(join(folder, file), 'utf8');
  const name = file.slice(0, -'.json'.length);
  return { name, title: titleIn(text) ?? name, text };
}

function titleIn(text: string): string | undefined {
  const job: unknown = JSON.parse(text);
  if (typeof job !== 'object' || job === null || !('title' in job)) return undefined;
  return typeof job.title === 'string' ? job.title : undefined;
}
