/** Reading and saving job files: whole or not at all, and never over what someone else changed. */
import { execFileSync } from 'node:child_process';
import { chmod, mkdir, readdir, readFile, stat, symlink, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Reply } from '../../src/bridge';
import { jobSizeLimit, readJob, saveJob } from '../../src/host/job-files';
import { asOrdinaryUser } from '../helpers/ordinary-user';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();
const text = '{ "title": "Fern cyanotypes ½″" }\n';

function valueOf<T>(reply: Reply<T>): T {
  if (!reply.ok) throw new Error(reply.failure.message);
  return reply.value;
}

const codeOf = (reply: Reply<unknown>) => (reply.ok ? 'done' : reply.failure.code);
const messageOf = (reply: Reply<unknown>) => (reply.ok ? '' : reply.failure.message);

describe('reading', () => {
  it('gives the text and a stamp of the bytes', async () => {
    const path = join(folder, 'read.json');
    await writeFile(path, text);
    const read = valueOf(await readJob(path));
    expect(read).toMatchObject({ path, text });
    // The stamp is SHA-256, as coreutils' own program has it.
    expect(read.stamp).toBe(execFileSync('sha256sum', [path], { encoding: 'utf8' }).split(' ')[0]);
  });

  it('says what is wrong with a path that is no job file', async () => {
    const pipe = join(folder, 'pipe.json');
    execFileSync('mkfifo', [pipe]);
    expect(codeOf(await readJob(join(folder, 'none.json')))).toBe('not-found');
    expect(codeOf(await readJob(folder))).toBe('not-a-file');
    expect(codeOf(await readJob(pipe))).toBe('not-a-file');
    expect(codeOf(await readJob('/dev/null'))).toBe('not-a-file');
    expect(codeOf(await readJob(join(folder, 'read.json', 'within.json')))).toBe('not-a-folder');
    expect(codeOf(await readJob('relative.json'))).toBe('not-found');
    expect(codeOf(await readJob('/a\0b'))).toBe('not-found');
    expect(messageOf(await readJob(join(folder, 'none.json')))).toContain('none.json');
  });

  it('refuses what is too large without reading it', async () => {
    const path = join(folder, 'large.json');
    await writeFile(path, '');
    await truncate(path, jobSizeLimit + 1);
    expect(codeOf(await readJob(path))).toBe('too-large');
    await truncate(path, jobSizeLimit);
    expect(codeOf(await readJob(path))).toBe('done');
  });

  it('refuses text that is not UTF-8 and takes a byte order mark', async () => {
    const path = join(folder, 'coded.json');
    await writeFile(path, Buffer.from('{ "title": "Füße" }', 'latin1'));
    expect(codeOf(await readJob(path))).toBe('not-readable');
    await writeFile(path, `\ufeff${text}`);
    expect(valueOf(await readJob(path)).text).toBe(text);
  });

  it('says when permissions forbid it', async () => {
    const path = join(folder, 'secret.json');
    await writeFile(path, text);
    await chmod(path, 0o000);
    await chmod(folder, 0o755);
    expect(codeOf(await asOrdinaryUser(() => readJob(path)))).toBe('not-allowed');
  });
});

describe('saving', () => {
  it('writes the text and gives the stamp that reading gives', async () => {
    const path = join(folder, 'new.json');
    const saved = valueOf(await saveJob({ path, text }));
    expect(await readFile(path, 'utf8')).toBe(text);
    expect(saved).toEqual(valueOf(await readJob(path)));
  });

  it('refuses to replace unasked, and replaces when asked', async () => {
    const path = join(folder, 'there.json');
    await writeFile(path, 'old');
    expect(codeOf(await saveJob({ path, text }))).toBe('exists');
    expect(await readFile(path, 'utf8')).toBe('old');
    expect(codeOf(await saveJob({ path, text, replace: true }))).toBe('done');
    expect(await readFile(path, 'utf8')).toBe(text);
  });

  it('never covers a change made by another since it was read', async () => {
    const path = join(folder, 'shared.json');
    const { stamp } = valueOf(await saveJob({ path, text }));
    await writeFile(path, 'changed by another');
    expect(codeOf(await saveJob({ path, text: 'mine', stamp }))).toBe('changed-on-disk');
    expect(codeOf(await saveJob({ path, text: 'mine', stamp, replace: true }))).toBe('changed-on-disk');
    expect(await readFile(path, 'utf8')).toBe('changed by another');
  });

  it('lets only one of two saves at once through', async () => {
    const path = join(folder, 'twice.json');
    const { stamp } = valueOf(await saveJob({ path, text }));
    const both = await Promise.all(['one', 'two'].map((mine) => saveJob({ path, text: mine, stamp })));
    expect(both.map(codeOf)).toEqual(['done', 'changed-on-disk']);
    expect(await readFile(path, 'utf8')).toBe('one');
  });

  it('saves anew when the file has gone since', async () => {
    const path = join(folder, 'gone.json');
    expect(codeOf(await saveJob({ path, text, stamp: '0'.repeat(64) }))).toBe('done');
  });

  it('keeps the file’s permissions and writes through a link', async () => {
    const [path, link] = [join(folder, 'mode.json'), join(folder, 'link.json')];
    await writeFile(path, 'old');
    await chmod(path, 0o640);
    await symlink(path, link);
    expect(codeOf(await saveJob({ path: link, text, replace: true }))).toBe('done');
    expect(await readFile(path, 'utf8')).toBe(text);
    expect((await stat(path)).mode & 0o777).toBe(0o640);
  });

  it('says what is wrong with the place', async () => {
    expect(codeOf(await saveJob({ path: folder, text }))).toBe('not-a-file');
    expect(codeOf(await saveJob({ path: join(folder, 'none', 'a.json'), text }))).toBe('not-found');
    expect(messageOf(await saveJob({ path: join(folder, 'none', 'a.json'), text }))).toContain(join(folder, 'none'));
    expect(codeOf(await saveJob({ path: join(folder, 'new.json', 'a.json'), text }))).toBe('not-a-folder');
    expect(codeOf(await saveJob({ path: 'a.json', text }))).toBe('not-found');
    expect(codeOf(await saveJob({ path: join(folder, 'x'.repeat(300)), text }))).toBe('failed');
    expect(codeOf(await saveJob({ path: join(folder, 'big.json'), text: 'x'.repeat(jobSizeLimit + 1) }))).toBe(
      'too-large',
    );
  });

  it('leaves nothing behind in a folder that may not be written', async () => {
    const closed = join(folder, 'closed');
    await mkdir(closed);
    await writeFile(join(closed, 'kept.json'), 'kept');
    await chmod(closed, 0o555);
    const path = join(closed, 'kept.json');
    expect(codeOf(await asOrdinaryUser(() => saveJob({ path, text, replace: true })))).toBe('not-allowed');
    expect(await readdir(closed)).toEqual(['kept.json']);
    expect(await readFile(path, 'utf8')).toBe('kept');
  });
});
