/** The local web host: answers its own page and nobody else. */
import { request as ask, type IncomingMessage, type OutgoingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Host } from '../../src/host/create-host';
import { serve } from '../../src/web/serve';
import { makeTempFolder } from '../helpers/temp-folder';

const root = await makeTempFolder();
const screen = join(root, 'screen');
await mkdir(join(screen, 'assets'), { recursive: true });
await writeFile(join(screen, 'index.html'), '<!doctype html><title>Matwright</title>');
await writeFile(join(screen, 'assets', 'index.js'), 'export {};');
await writeFile(join(root, 'secret.txt'), 'secret');

/** Notes every call, and answers with it after two steps of progress. */
const calls: { name: unknown; request: unknown; gone: AbortSignal | undefined }[] = [];
let answer: Promise<void> = Promise.resolve();
const host: Host = {
  call: async (name, request, { onProgress, gone } = {}) => {
    calls.push({ name, request, gone });
    onProgress?.({ done: 0.5, step: 'Halfway' });
    onProgress?.({ done: 1, step: 'Done' });
    await answer;
    return { ok: true, value: { name, request } };
  },
};

const web = await serve(host, screen);
afterAll(() => web.close());
const { port, origin, hash, host: authority } = new URL(web.address);
const token = hash.replace('#token=', '');
const rightful = { origin, 'x-matwright-token': token, 'content-type': 'application/json' };

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

function send(method: string, path: string, headers: OutgoingHttpHeaders = {}, body?: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = ask({ host: '127.0.0.1', port, method, path, headers, agent: false }, async (response) => {
      let text = '';
      for await (const part of response.setEncoding('utf8')) text += part;
      resolve({ status: response.statusCode, headers: response.headers, body: text });
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

const call = (headers: OutgoingHttpHeaders, body = '{}', path = '/call/info') => send('POST', path, headers, body);

describe('its address', () => {
  it('is on this machine’s own loopback, with a key of 256 bits', () => {
    expect(new URL(web.address).hostname).toBe('127.0.0.1');
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  });

  it('differs at every start', async () => {
    const other = await serve(host, screen);
    await other.close();
    expect(new URL(other.address).hash).not.toBe(hash);
  });

  it('can’t be reached from another interface', async () => {
    const reached = await new Promise((resolve) => {
      // All of 127.0.0.0/8 is this machine (RFC 6890), so a host bound to every interface would answer here too.
      const socket = connect({ host: '127.0.0.2', port: Number(port) });
      socket.on('connect', () => resolve(true)).on('error', () => resolve(false));
      socket.on('connect', () => socket.destroy());
    });
    expect(reached).toBe(false);
  });
});

describe('the screen’s files', () => {
  it('are served with a policy that lets nothing in from elsewhere', async () => {
    const page = await send('GET', '/');
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['content-security-policy']).toContain("default-src 'none'");
    expect(page.headers['content-security-policy']).toContain("frame-ancestors 'none'");
    expect(page.headers['x-content-type-options']).toBe('nosniff');
    expect((await send('GET', '/assets/index.js?v=1')).body).toBe('export {};');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/../../secret.txt',
    '/assets',
    '//secret.txt',
  ])('do not include %s', async (path) => {
    const found = await send('GET', path);
    expect(found.status).toBe(404);
    expect(found.body).not.toContain('secret');
  });

  it('answer to no other method', async () => {
    expect((await send('DELETE', '/', rightful)).status).toBe(405);
    expect((await send('GET', '/call/info')).status).toBe(405);
  });
});

describe('a call', () => {
  it('is answered line by line: progress, then the reply', async () => {
    const { status, headers, body } = await call(rightful, '{"path":"/a½"}', '/call/readJob');
    expect(status).toBe(200);
    expect(headers['content-type']).toContain('ndjson');
    expect(
      body
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line) as unknown),
    ).toEqual([
      { progress: { done: 0.5, step: 'Halfway' } },
      { progress: { done: 1, step: 'Done' } },
      { reply: { ok: true, value: { name: 'readJob', request: { path: '/a½' } } } },
    ]);
  });

  it.each<[string, OutgoingHttpHeaders]>([
    ['no key', { ...rightful, 'x-matwright-token': undefined }],
    ['an empty key', { ...rightful, 'x-matwright-token': '' }],
    ['a wrong key', { ...rightful, 'x-matwright-token': token.replace(/^./, (first) => (first === 'A' ? 'B' : 'A')) }],
    ['no origin', { ...rightful, origin: undefined }],
    ['another site’s origin', { ...rightful, origin: 'http://example.org' }],
    ['another port’s origin', { ...rightful, origin: 'http://127.0.0.1:1' }],
    ['the origin of a file', { ...rightful, origin: 'null' }],
    ['a stranger’s name for this machine', { ...rightful, host: `example.org:${port}` }],
    ['a name that only sounds local', { ...rightful, host: `${authority}.example.org` }],
  ])('is turned away with %s', async (_case, headers) => {
    const before = calls.length;
    const given = Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== undefined));
    expect((await call(given)).status).toBe(403);
    expect(calls).toHaveLength(before);
  });

  it('is turned away when it is no JSON, or not sent as such', async () => {
    expect((await call(rightful, '{')).status).toBe(400);
    expect((await call({ ...rightful, 'content-type': 'text/plain' })).status).toBe(415);
  });

  it('is turned away when too large, said or unsaid', async () => {
    const before = calls.length;
    const said = await call({ ...rightful, 'content-length': 25_000_001 }, '').catch((error: Error) => error.message);
    expect(said).toMatchObject({ status: 413 });
    const unsaid = await call({ ...rightful, 'transfer-encoding': 'chunked' }, `"${'x'.repeat(25_000_000)}"`).catch(
      () => ({ status: 413 }),
    );
    expect(unsaid).toMatchObject({ status: 413 });
    expect(calls).toHaveLength(before);
  });

  it('is given up when its page goes away', async () => {
    let finish = (): void => undefined;
    answer = new Promise((resolve) => (finish = resolve));
    const asked = ask({ host: '127.0.0.1', port, method: 'POST', path: '/call/exportJob', headers: rightful });
    asked.on('error', () => undefined).end('{}');
    await new Promise((resolve) => asked.on('response', resolve));
    asked.destroy();
    const { gone } = calls.at(-1)!;
    await new Promise((resolve) => (gone!.aborted ? resolve(null) : gone!.addEventListener('abort', resolve)));
    expect(gone!.aborted).toBe(true);
    finish();
    answer = Promise.resolve();
  });
});

it('ends after the running call', async () => {
  const other = await serve(host, screen);
  const at = new URL(other.address);
  let finish = (): void => undefined;
  answer = new Promise((resolve) => (finish = resolve));
  const response = await fetch(`${at.origin}/call/info`, {
    method: 'POST',
    headers: {
      origin: at.origin,
      'x-matwright-token': at.hash.replace('#token=', ''),
      'content-type': 'application/json',
    },
    body: '{}',
  });
  const closed = other.close();
  finish();
  expect(await response.text()).toContain('"reply"');
  await closed;
  await expect(fetch(at.origin)).rejects.toThrow();
});

it('says at the start when the screen was never built', async () => {
  await expect(serve(host, join(root, 'none'))).rejects.toThrow('ENOENT');
});
