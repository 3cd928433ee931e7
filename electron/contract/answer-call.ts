/** One call from a window, from untrusted name and arguments to an answer. Both shells let calls in only here. */

import * as v from 'valibot';
import { t } from '#model/words/say.ts';
import { ARGUMENT_SCHEMAS, isChannel } from './argument-schemas.ts';
import type { Handlers, Result } from './contract.ts';
import { fault } from './result.ts';

export interface CallAnswer {
  readonly outcome: 'answered' | 'unknownChannel' | 'badArguments' | 'crashed';
  readonly result: Result<unknown>;
}

/**
 * Never throws: a handler that does has a bug, which `report` gets whole while the window gets a plain sentence.
 */
export async function answerCall(
  handlers: Handlers,
  channel: string,
  args: unknown,
  report: (bug: unknown) => void,
): Promise<CallAnswer> {
  if (!isChannel(channel))
    return refused('unknownChannel', t`There is no call named "${channel.slice(0, 60)}".`);
  const checked = v.safeParse(ARGUMENT_SCHEMAS[channel] as v.GenericSchema<unknown, unknown[]>, args);
  if (!checked.success) return refused('badArguments', describe(channel, checked.issues));
  try {
    const handler = handlers[channel] as (...args: unknown[]) => Promise<Result<unknown>>;
    return { outcome: 'answered', result: await handler(...checked.output) };
  } catch (bug) {
    report(bug);
    return refused('crashed', t`A fault inside the program stopped "${channel}". Your work is not changed.`);
  }
}

function refused(outcome: Exclude<CallAnswer['outcome'], 'answered'>, message: string): CallAnswer {
  return { outcome, result: fault(`call.${outcome}`, message) };
}

function describe(channel: string, issues: readonly v.BaseIssue<unknown>[]): string {
  const issue = issues[0];
  const path = issue ? v.getDotPath(issue) : null;
  return path
    ? t`The arguments of "${channel}" are not of its form (at ${path}).`
    : t`The arguments of "${channel}" are not of its form.`;
}
