/** Answers one call: the request as JSON in, progress and then the reply out, a line of JSON each. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Host } from '../host/create-host';

/** A job of the largest size, with every letter escaped once, still passes. */
const bodySizeLimit = 25_000_000;

export async function answerCall(
  host: Host,
  name: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (!/^application\/json\b/.test(request.headers['content-type'] ?? '')) {
    return refuse(response, 415, 'A call is sent as application/json.');
  }
  const body = await readBody(request);
  if (body === undefined) return refuse(response, 413, 'The call is too large.');
  const asked = parseJson(body);
  if (!asked) return refuse(response, 400, 'The call is not JSON.');
  const gone = new AbortController();
  response.on('close', () => gone.abort());
  response.writeHead(200, { 'content-type': 'application/x-ndjson; charset=utf-8' });
  const say = (line: object): void => {
    if (!response.destroyed) response.write(`${JSON.stringify(line)}\n`);
  };
  const reply = await host.call(name, asked.request, {
    gone: gone.signal,
    onProgress: (progress) => say({ progress }),
  });
  say({ reply });
  response.end();
}

/** Ends a request with a status and one plain sentence; nothing more is read from a refused one. */
export function refuse(response: ServerResponse, status: number, message: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', connection: 'close' }).end(`${message}\n`);
}

/** The body's text; undefined when it is over the limit. */
async function readBody(request: IncomingMessage): Promise<string | undefined> {
  if (Number(request.headers['content-length'] ?? 0) > bodySizeLimit) return undefined;
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > bodySizeLimit) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

function parseJson(body: string): { readonly request: unknown } | undefined {
  try {
    return { request: JSON.parse(body) };
  } catch {
    return undefined;
  }
}
