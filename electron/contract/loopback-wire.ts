/**
 * How the contract travels between a page and the loopback shell, as literal types: each side declares its own
 * constant of this type and the compiler keeps the two equal.
 *
 * - The page is opened at `http://127.0.0.1:PORT/#token=TOKEN`; the page keeps the token in memory.
 * - A call is `POST {callPath}{channel}` with the token header, `content-type: application/json` and the body
 *   `{"args": [...]}`. The answer is status 200 and a contract `Result` as JSON. Other statuses (400, 401, 403,
 *   404, 405, 408, 413, 415, 421) carry the same shape with `ok: false`.
 * - Presence: `POST {presencePath}` with the same headers and the body `{}`. The answer never ends; the shell
 *   writes a line feed now and then. The page holds it open while it lives: when it ends the connection is lost
 *   (show it, try again), and when the last one is gone the shell that opened the browser itself ends.
 */
export interface LoopbackWire {
  readonly tokenInFragment: 'token';
  readonly tokenHeader: 'x-standlines-token';
  readonly callPath: '/call/';
  readonly presencePath: '/presence';
}
