/** Pictures as data URLs: told apart by what they hold, bounded in size, found beside the job. */
import { mkdir, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readPicture } from '../../src/host/pictures';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();

// Signatures: PNG (ISO/IEC 15948, 5.2), JPEG (ISO/IEC 10918-1, markers SOI and the next), GIF89a specification (17),
// WebP (RFC 9649, 2.4), SVG 2 (W3C, the root element).
const contents: Record<string, Buffer> = {
  'image/png': Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
  'image/jpeg': Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1]),
  'image/gif': Buffer.from('GIF89a\x01\x00\x01\x00\x80\x00', 'latin1'),
  'image/webp': Buffer.from('RIFF\x1a\x00\x00\x00WEBPVP8L', 'latin1'),
  'image/svg+xml': Buffer.from(
    '\ufeff<?xml version="1.0"?>\n<!-- fern -->\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "x.dtd">\n<svg xmlns="http://www.w3.org/2000/svg"/>',
  ),
};

const read = async (file: string, jobPath?: string) => {
  const reply = await readPicture({ file, ...(jobPath ? { jobPath } : {}) });
  return reply.ok ? reply.value.dataUrl : reply.failure.code;
};

it.each(Object.entries(contents))('knows %s by its content, whatever it is called', async (type, bytes) => {
  const path = join(folder, `${type.replace(/\W/g, '-')}.picture`);
  await writeFile(path, bytes);
  const url = await read(path);
  expect(url.startsWith(`data:${type};base64,`)).toBe(true);
  expect(Buffer.from(url.split(',')[1] ?? '', 'base64').equals(bytes)).toBe(true);
});

it('refuses what is no picture, whatever it is called', async () => {
  for (const [name, bytes] of [
    ['words.png', 'not a picture'],
    ['page.svg', '<html><body><svg></svg></body></html>'],
    ['empty.jpg', ''],
  ] as const) {
    await writeFile(join(folder, name), bytes);
    expect(await read(join(folder, name))).toBe('not-readable');
  }
});

it('finds a relative name beside the job, and says when there is no job yet', async () => {
  await mkdir(join(folder, 'scans'), { recursive: true });
  await writeFile(join(folder, 'scans', 'fern.gif'), contents['image/gif']!);
  expect(await read('scans/fern.gif', join(folder, 'job.json'))).toMatch(/^data:image\/gif/);
  expect(await read('scans/fern.gif')).toBe('not-found');
  expect(await read('scans/oak.gif', join(folder, 'job.json'))).toBe('not-found');
  expect(await read('scans', join(folder, 'job.json'))).toBe('not-a-file');
});

it('refuses a picture over 40 MB', async () => {
  const path = join(folder, 'poster.png');
  await writeFile(path, contents['image/png']!);
  await truncate(path, 40_000_001);
  expect(await read(path)).toBe('too-large');
});
