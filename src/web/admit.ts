/** Decides who may speak to the local web host: only the page it served itself, opened with the address it printed. */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

export interface Gate {
  /** Part of the printed address; the page sends it with every call. */
  readonly token: string;
  /** Why a request is turned away, or undefined when it may pass. */
  refuse(request: IncomingMessage): string | undefined;
}

/** @param authority host and port as the browser must name them, such as `127.0.0.1:40123`. */
export function createGate(authority: string): Gate {
  const token = randomBytes(32).toString('base64url');
  const origin = `http://${authority}`;
  return {
    token,
    refuse: ({ method, headers }) => {
      // A stranger's name that was made to lead to this machine still stands in the Host header.
      if (headers.host !== authority) return 'This host answers only at the address it printed.';
      if (headers.origin !== undefined && headers.origin !== origin) return 'Calls from another site are not answered.';
      if (method === 'GET' || method === 'HEAD') return undefined;
      if (headers.origin === undefined) return 'A call must say which page it comes from.';
      if (!isSame(headers['x-matwright-token'], token))
        return 'Open the address printed in the terminal; it holds the key.';
      return undefined;
    },
  };
}

/** Takes the same time whichever letter differs. */
function isSame(given: string | string[] | undefined, token: string): boolean {
  if (typeof given !== 'string') return false;
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}
