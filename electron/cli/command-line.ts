/** From words to an exit code: 0 done, 1 failing findings under `--strict`, 2 bad usage or bad input. */

import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import type { Language } from '#model/words/languages.ts';
import type { Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import { HELP, readOrder, UsageError, type Order } from './usage.ts';

/** Nothing is printed before all of it is known, so bad input leaves stdout empty. */
export async function commandLine(words: readonly string[], surroundings: Surroundings): Promise<number> {
  try {
    const order = readOrder(words);
    if ('language' in order) await speak(order.language);
    return await carryOut(order, surroundings);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    surroundings.complain(`standlines: ${onOneLine(error.message)}`);
    return 2;
  }
}

/** Each verb is loaded when it is wanted, so that the quick ones stay quick. */
async function carryOut(order: Order, surroundings: Surroundings): Promise<number> {
  if (order.verb === 'check') return (await import('./check.ts')).check(order, surroundings);
  if (order.verb === 'plot') return (await import('./plot.ts')).plot(order, surroundings);
  if (order.verb === 'pack') return (await import('./pack.ts')).pack(order, surroundings);
  if (order.verb === 'changeover') return (await import('./changeover.ts')).changeover(order, surroundings);
  if (order.verb === 'score') return (await import('./score.ts')).score(order, surroundings);
  if (order.verb === 'turns') return (await import('./turns.ts')).turns(order, surroundings);
  if (order.verb === 'booklet') return (await import('./booklet.ts')).booklet(order, surroundings);
  surroundings.print(order.verb === 'help' ? HELP : await schema());
  return 0;
}

/** The catalogue is loaded only when it is wanted, too. */
async function speak(language: Language): Promise<void> {
  if (language === 'en') return speakEnglish();
  const { german } = await import('#model/words/german/index.ts');
  speakFrom(language, german);
}

async function schema(): Promise<string> {
  const { fileJsonSchema } = await import('#model/file-format/json-schema.ts');
  return `${JSON.stringify(fileJsonSchema(), null, 2)}\n`;
}
