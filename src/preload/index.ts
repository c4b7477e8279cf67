/** Puts the bridge into the page: the screen may call the host by name and hear its events, and nothing else. */
import { contextBridge, ipcRenderer } from 'electron';
import type { HostClient, HostEvents, Progress } from '../bridge';
import { callChannel, eventChannel, progressChannel } from '../main/channels';

const listeners = new Map<string, (progress: Progress) => void>();
let calls = 0;

ipcRenderer.on(progressChannel, (_event, call: string, progress: Progress) => listeners.get(call)?.(progress));

const client: HostClient = {
  call: async (name, request, onProgress) => {
    const call = String((calls += 1));
    if (onProgress) listeners.set(call, onProgress);
    try {
      return await ipcRenderer.invoke(callChannel, call, name, request);
    } finally {
      listeners.delete(call);
    }
  },
  on: <E extends keyof HostEvents>(event: E, handler: (payload: HostEvents[E]) => void) => {
    const hear = (_event: unknown, name: string, payload: HostEvents[E]): void => {
      if (name === event) handler(payload);
    };
    ipcRenderer.on(eventChannel, hear);
    return () => ipcRenderer.removeListener(eventChannel, hear);
  },
};

contextBridge.exposeInMainWorld('matwrightHost', client);
