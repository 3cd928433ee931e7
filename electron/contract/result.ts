/** The two ways a call can end. */

import type { Fault, Result } from './contract.ts';

export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function fault(code: string, message: string): { readonly ok: false; readonly error: Fault } {
  return { ok: false, error: { code, message } };
}
