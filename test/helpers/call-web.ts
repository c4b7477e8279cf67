/** Calls a running web host as its page does. */
import type { CallName, HostCalls, Reply } from '../../src/bridge';

export async function callWeb<K extends CallName>(
  address: string,
  name: K,
  request: HostCalls[K]['request'],
): Promise<Reply<HostCalls[K]['reply']>> {
  const { origin, hash } = new URL(address);
  const response = await fetch(`${origin}/call/${name}`, {
    method: 'POST',
    headers: { origin, 'x-matwright-token': hash.replace('#token=', ''), 'content-type': 'application/json' },
    body: JSON.stringify(request),
  });
  if (!response.ok) throw new Error(`${response.status}: ${await response.text()}`);
  const last = (await response.text()).trimEnd().split('\n').at(-1)!;
  return (JSON.parse(last) as { reply: Reply<HostCalls[K]['reply']> }).reply;
}
