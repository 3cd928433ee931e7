/** What the page's process holds, as the system tells it (Linux only). */

import { readFileSync } from 'node:fs';
import type { Browser } from '@playwright/test';

export interface MostMemory {
  /** What the process has for itself, MB; looked at every `LOOK_EVERY_MS`. */
  readonly own: number;
  /** With the pages of the browser's own program and what it shares with other processes, MB. */
  readonly resident: number;
}

const LOOK_EVERY_MS = 25;

export interface MemoryWatch {
  /** Null: not to be had here. */
  readonly most: () => MostMemory | null;
  readonly end: () => void;
}

export async function watchMemory(browser: Browser): Promise<MemoryWatch> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const pages = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
  let own = 0;
  const look = setInterval(() => {
    for (const id of pages) own = Math.max(own, statusOf(id, 'RssAnon') ?? 0);
  }, LOOK_EVERY_MS);
  return {
    most: () => {
      const resident = pages.map((id) => statusOf(id, 'VmHWM')).filter((size) => size !== null);
      return own === 0 || resident.length === 0 ? null : { own, resident: Math.max(...resident) };
    },
    end: () => clearInterval(look),
  };
}

/** MB. */
function statusOf(id: number, field: 'RssAnon' | 'VmHWM'): number | null {
  try {
    const status = readFileSync(`/proc/${id}/status`, 'utf8');
    const kilobytes = new RegExp(`${field}:\\s*(\\d+)`).exec(status)?.[1];
    return kilobytes === undefined ? null : Number(kilobytes) / 1000;
  } catch {
    return null;
  }
}
