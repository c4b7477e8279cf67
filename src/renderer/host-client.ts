/** The screen's line to its host: Electron's bridge where there is one, else calls to the local web host. */
import type { CallName, HostCalls, HostClient, Progress, Reply } from '../bridge';

/** The host of this screen, whichever it is. */
export function connectHost(): HostClient {
  return window.matwrightHost ?? connectWebHost(takeToken());
}

/** A line of the web host's answer: progress on the way, the reply at the end. */
type Line<T> = { readonly progress: Progress } | { readonly reply: Reply<T> };

function connectWebHost(token: string): HostClient {
  return {
    call: async <K extends CallName>(
      name: K,
      request: HostCalls[K]['request'],
      onProgress?: (progress: Progress) => void,
    ) => {
      const response = await reach(`/call/${name}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-matwright-token': token },
        body: JSON.stringify(request),
      });
      if (!response.ok || !response.body) throw new Error((await response.text()).trim());
      return await readReply<HostCalls[K]['reply']>(response.body, onProgress);
    },
    // A browser has no menu of ours and no window to ask about, so these events never come.
    on: () => () => undefined,
  };
}

/** The browser's own words for a host that is gone would tell nobody anything. */
async function reach(address: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(address, request);
  } catch {
    throw new NoAnswer();
  }
}

/** Thrown when the program behind the screen has ended or cannot be reached. */
export class NoAnswer extends Error {
  constructor() {
    super('the program behind this screen does not answer; it may have been ended');
  }
}

async function readReply<T>(
  body: ReadableStream<Uint8Array<ArrayBuffer>>,
  onProgress?: (progress: Progress) => void,
): Promise<Reply<T>> {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  for (;;) {
    const { done, value } = await reader.read();
    if (done) throw new NoAnswer();
    const lines = (rest + value).split('\n');
    rest = lines.pop() ?? '';
    for (const text of lines) {
      const line = JSON.parse(text) as Line<T>;
      if ('reply' in line) return line.reply;
      onProgress?.(line.progress);
    }
  }
}

const tokenKey = 'matwright-token';

/** Takes the key out of the address, where others could read it, and keeps it for reloads of this tab. */
function takeToken(): string {
  const given = new URLSearchParams(location.hash.slice(1)).get('token');
  if (given === null) return sessionStorage.getItem(tokenKey) ?? '';
  sessionStorage.setItem(tokenKey, given);
  history.replaceState(null, '', location.pathname + location.search);
  return given;
}
