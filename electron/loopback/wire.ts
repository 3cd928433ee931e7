/** The server's side of the loopback wire. */

import type { LoopbackWire } from '#contract/loopback-wire.ts';

const WIRE: LoopbackWire = {
  tokenInFragment: 'token',
  tokenHeader: 'x-standlines-token',
  callPath: '/call/',
  presencePath: '/presence',
};

export const TOKEN_HEADER = WIRE.tokenHeader;
export const CALL_PATH = WIRE.callPath;
export const PRESENCE_PATH = WIRE.presencePath;

/** The page and, in the fragment, which browsers never send anywhere, the token. */
export function pathWithToken(token: string): string {
  return `/#${WIRE.tokenInFragment}=${token}`;
}
