/** The local web host: serves the built screen and the host calls to a browser on this machine, and to no one else. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Host } from '../host/create-host';
import { contentPolicy } from '../launch/content-policy.mjs';
import { createGate, type Gate } from './admit';
import { answerCall, refuse } from './answer-call';
import { listAssets, type Assets } from './assets';

export interface WebHost {
  /** What the user opens; the key after `#` never leaves the browser but in calls. */
  readonly address: string;
  /** Ends after the running calls, or after a grace of two seconds. */
  close(): Promise<void>;
}

/** Starts on a free port of 127.0.0.1. @param screen folder of the built screen. */
export async function serve(host: Host, screen: string): Promise<WebHost> {
  const assets = await listAssets(screen);
  const server = createServer();
  const authority = await listen(server);
  const gate = createGate(authority);
  server.on('request', (request, response) => void answer({ host, assets, gate }, request, response));
  return { address: `http://${authority}/#token=${gate.token}`, close: () => close(server) };
}

interface Parts {
  readonly host: Host;
  readonly assets: Assets;
  readonly gate: Gate;
}

async function answer(parts: Parts, request: IncomingMessage, response: ServerResponse): Promise<void> {
  try {
    setSafeHeaders(response);
    const refusal = parts.gate.refuse(request);
    if (refusal !== undefined) return refuse(response, 403, refusal);
    await route(parts, request, response);
  } catch (error) {
    // A browser that went away in the middle of its call is nothing to report.
    if (response.destroyed || request.destroyed) return;
    console.error(error);
    if (response.headersSent) response.destroy();
    else refuse(response, 500, 'A fault in Matwright itself stopped this.');
  }
}

async function route({ host, assets }: Parts, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const [pathname = '/'] = (request.url ?? '/').split('?', 1);
  const call = /^\/call\/([A-Za-z]+)$/.exec(pathname)?.[1];
  if (call !== undefined) {
    if (request.method !== 'POST') return refuse(response, 405, 'A call is sent with POST.');
    return await answerCall(host, call, request, response);
  }
  if (request.method !== 'GET') return refuse(response, 405, 'Only the screen’s own files can be had here.');
  if (!(await assets.send(pathname, response))) refuse(response, 404, 'There is nothing at this address.');
}

function setSafeHeaders(response: ServerResponse): void {
  response.setHeader('content-security-policy', `${contentPolicy}; frame-ancestors 'none'`);
  response.setHeader('x-content-type-options', 'nosniff');
  response.setHeader('referrer-policy', 'no-referrer');
  response.setHeader('cross-origin-resource-policy', 'same-origin');
  response.setHeader('cross-origin-opener-policy', 'same-origin');
  response.setHeader('cache-control', 'no-store');
}

/** Gives host and port as a browser names them. */
function listen(server: Server): Promise<string> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => resolve(`127.0.0.1:${(server.address() as AddressInfo).port}`));
  });
}

function close(server: Server): Promise<void> {
  // Browsers hold their connections open for a next call; each is let go once its running one has ended.
  const sweep = setInterval(() => server.closeIdleConnections(), 50);
  const patience = setTimeout(() => server.closeAllConnections(), 2000);
  return new Promise((resolve) => {
    server.close(() => {
      clearInterval(sweep);
      clearTimeout(patience);
      resolve();
    });
  });
}
