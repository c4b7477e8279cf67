/** Reads a picture's file as a data URL for the canvas; what it holds decides the type, not its name. */
import { dirname, isAbsolute, resolve } from 'node:path';
import type { HostCalls, Reply } from '../bridge';
import { bad, good, type Result } from '../core/problem';
import { done, failed } from './failure';
import { readWhole } from './read-file';

/** Above this a data URL would weigh on the screen more than a picture on a mat is worth. */
const pictureSizeLimit = 40_000_000;

/** The picture named by a job; a relative name is taken from the job's folder. */
export async function readPicture(
  request: HostCalls['readPicture']['request'],
): Promise<Reply<{ readonly dataUrl: string }>> {
  const path = locate(request.file, request.jobPath);
  if (path === undefined) {
    return failed(
      'not-found',
      `“${request.file}” is a name within the job's folder, and this job has none yet. Save the job first, or give the full path.`,
    );
  }
  const read = await readWhole(path, pictureSizeLimit);
  if (!read.ok) return read;
  const type = pictureType(read.value);
  if (!type)
    return failed('not-readable', `“${path}” is not a PNG, JPEG, WebP, GIF or SVG picture. Choose one of these.`);
  return done({ dataUrl: `data:${type};base64,${read.value.toString('base64')}` });
}

/** The same as data URL or problem, for those who work on a job. */
export async function pictureAsResult(file: string, jobPath: string | undefined): Promise<Result<string>> {
  const read = await readPicture(jobPath === undefined ? { file } : { file, jobPath });
  if (read.ok) return good(read.value.dataUrl);
  return bad([{ code: 'picture-file-unreadable', severity: 'error', at: '', message: read.failure.message }]);
}

function locate(file: string, jobPath: string | undefined): string | undefined {
  if (isAbsolute(file)) return file;
  return jobPath === undefined ? undefined : resolve(dirname(jobPath), file);
}

/** The media type from the first bytes, by each format's signature; undefined when none fits. */
function pictureType(bytes: Buffer): string | undefined {
  const head = bytes.toString('latin1', 0, 12);
  if (head.startsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  if (head.startsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (head.startsWith('GIF87a') || head.startsWith('GIF89a')) return 'image/gif';
  if (head.startsWith('RIFF') && head.endsWith('WEBP')) return 'image/webp';
  return isSvg(bytes) ? 'image/svg+xml' : undefined;
}

/** An SVG opens with its root element, perhaps after a byte order mark, an XML declaration, comments and a doctype. */
function isSvg(bytes: Buffer): boolean {
  const opening = bytes.toString('utf8', 0, 4096).replace(/^\ufeff/, '');
  return /^\s*(?:<\?xml[^>]*\?>\s*|<!--[\s\S]*?-->\s*|<!DOCTYPE[^>[]*(?:\[[^\]]*\])?[^>]*>\s*)*<(?:svg:)?svg[\s>]/.test(
    opening,
  );
}
