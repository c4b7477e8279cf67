/** A folder of a test's own, gone when its file's tests are done. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

export async function makeTempFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'matwright-test-'));
  afterAll(() => rm(folder, { recursive: true, force: true }));
  return folder;
}
