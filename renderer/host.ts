/**
 * The only file that talks to the shell. In the desktop window the preload script offers `window.standlines`; in a
 * browser the same calls go over 127.0.0.1 with the token that came in the address's fragment. Callers see one
 * `Host`, and a shell that cannot be reached is an ordinary `Result` with the code `shell.unreachable`.
 */

import type { Answer, Arguments, Channel, Fault, Host } from '#contract/contract.ts';
import type { LoopbackWire } from '#contract/loopback-wire.ts';

/** The code of every answer that the shell itself never gave. */
export const UNREACHABLE = 'shell.unreachable';

export interface Connection extends Host {
  /** Calls back with true while the shell is there and with false when it is lost; returns how to stop. */
  watch(told: (connected: boolean) => void): () => void;
}

interface Bridge {
  call<C extends Channel>(channel: C, ...args: Arguments<C>): Promise<Answer<C>>;
}

declare global {
  interface Window {
    readonly standlines?: Bridge;
  }
}

const WIRE: LoopbackWire = {
  tokenInFragment: 'token',
  tokenHeader: 'x-standlines-token',
  callPath: '/call/',
  presencePath: '/presence',
};

const RETRY_AFTER = 1500;

/** Says that the shell does not answer, and what the browser says of it. */
type Saying = (cause: string) => string;

/** Picks the way to the shell that this page was opened with. */
export function connect(page: Window, saying: Saying): Connection {
  if (page.standlines) return overBridge(page.standlines, saying);
  return overLoopback({ token: tokenOf(page.location.hash), send: page.fetch.bind(page), saying });
}

export function overBridge(bridge: Bridge, saying: Saying): Connection {
  return {
    call: async <C extends Channel>(channel: C, ...args: Arguments<C>) => {
      try {
        return await bridge.call(channel, ...args);
      } catch (error) {
        return failed<C>(unreachable(error, saying));
      }
    },
    watch: (told) => {
      told(true);
      return () => undefined;
    },
  };
}

interface Wire {
  /** Goes with every call; an empty one lets the shell refuse, which the user then sees. */
  readonly token: string;
  readonly send: typeof fetch;
  readonly saying: Saying;
}

export function overLoopback({ token, send, saying }: Wire): Connection {
  const post = (path: string, body: unknown, signal?: AbortSignal): Promise<Response> =>
    send(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json', [WIRE.tokenHeader]: token },
      body: JSON.stringify(body),
      ...(signal ? { signal } : {}),
    });
  return {
    call: async <C extends Channel>(channel: C, ...args: Arguments<C>) => {
      try {
        const response = await post(WIRE.callPath + channel, { args });
        return (await response.json()) as Answer<C>;
      } catch (error) {
        return failed<C>(unreachable(error, saying));
      }
    },
    watch: (told) => watchPresence((signal) => post(WIRE.presencePath, {}, signal), told),
  };
}

/** The token of `#token=...`, or an empty string. */
export function tokenOf(fragment: string): string {
  return new URLSearchParams(fragment.replace(/^#/, '')).get(WIRE.tokenInFragment) ?? '';
}

/** Holds the presence call open for as long as the page lives and reports whenever it breaks or comes back. */
function watchPresence(
  open: (signal: AbortSignal) => Promise<Response>,
  told: (connected: boolean) => void,
): () => void {
  const stop = new AbortController();
  const hold = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      await heldOpen(open, stop.signal, () => told(true)).catch(() => undefined);
      if (stop.signal.aborted) return;
      told(false);
      await new Promise((resolve) => setTimeout(resolve, RETRY_AFTER));
    }
  };
  void hold();
  return () => stop.abort();
}

/** Resolves or rejects when the shell's endless answer ends. */
async function heldOpen(
  open: (signal: AbortSignal) => Promise<Response>,
  signal: AbortSignal,
  begun: () => void,
): Promise<void> {
  const response = await open(signal);
  if (!response.ok || !response.body) throw new Error(`presence refused: ${response.status}`);
  begun();
  const reader = response.body.getReader();
  while (!(await reader.read()).done);
}

/** Every answer may be a failure, whatever its channel; the compiler cannot see that through the map. */
function failed<C extends Channel>(error: Fault): Answer<C> {
  return { ok: false, error } as Answer<C>;
}

function unreachable(error: unknown, saying: Saying): Fault {
  const cause = error instanceof Error ? error.message : String(error);
  return { code: UNREACHABLE, message: saying(cause) };
}
