/**
 * Runs sandboxed in the window before its page and gives it one function and nothing of Electron's: neither
 * `ipcRenderer` nor its events.
 */

import { contextBridge, ipcRenderer } from 'electron';
import { BRIDGE, EXPOSED_AS } from '#contract/bridge.ts';
import { isChannel } from '#contract/argument-schemas.ts';

contextBridge.exposeInMainWorld(EXPOSED_AS, {
  call(channel: string, ...args: unknown[]): Promise<unknown> {
    if (!isChannel(channel)) return Promise.reject(new Error(`no call named "${channel}"`));
    return ipcRenderer.invoke(BRIDGE, channel, args);
  },
});
