/** `standlines changeover` */

import { concertOf, type Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';
import { changeoverJson, stockJson } from '#model/programme/changeover-json.ts';
import {
  carryingCaution,
  changeoverNotes,
  changeoverSummary,
  timeVerdict,
} from '#model/programme/changeover-words.ts';
import type { Changeover } from '#model/programme/changeover.ts';
import { timeSources } from '#model/programme/handling.ts';
import { changeoversOf } from '#model/programme/programme.ts';
import { shortageWords } from '#model/programme/stock-words.ts';
import { stockCheck, type StockCheck } from '#model/programme/stock-check.ts';
import {
  clock,
  stepFrom,
  stepNotes,
  stepThing,
  stepTo,
  workWord,
  type Telling,
} from '#model/programme/step-words.ts';
import { readInput } from './input.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import type { ChangeoverOrder } from './usage.ts';

/** Throws `UsageError`. */
export async function changeover(order: ChangeoverOrder, surroundings: Surroundings): Promise<number> {
  const { document, notes } = await readInput(surroundings.fs, order.file);
  const changes = changeoversOf(document);
  const stock = stockCheck(document);
  tellNotes(notes, surroundings);
  const json = () => ({
    ...{ file: order.file, notes },
    changeovers: changes.map((change) => changeoverJson(document, change)),
    stock: stockJson(stock),
    caution: carryingCaution(),
    times: timeSources(),
  });
  const lines = () => asText(document, changes, stock);
  surroundings.print(`${order.json ? JSON.stringify(json()) : lines().map(onOneLine).join('\n')}\n`);
  return 0;
}

function asText(document: Document, changes: readonly Changeover[], stock: StockCheck): string[] {
  return [
    `${concertOf(document).name || 'Concert'}: changeovers for two`,
    ...changes.flatMap((change) => ['', ...changeLines(document, change)]),
    '',
    ...shortageWords(stock),
    '',
    carryingCaution(),
    timeSources(),
  ];
}

function changeLines(document: Document, change: Changeover): string[] {
  const { from, to, steps } = change;
  const name = (id: Setup['id'] | null): string =>
    id ? document.records.get(id)?.name || labelOf(document, id, id) : '';
  const title = !from
    ? `First set-up: ${name(to)}`
    : !to
      ? `Last strike: ${name(from)}`
      : `From ${name(from)} to ${name(to)}`;
  const telling: Telling = { document, from, to, units: concertOf(document).units };
  return [
    title,
    `  ${changeoverSummary(change)}. ${timeVerdict(change)}`,
    ...steps.map((step) => {
      const notes = stepNotes(telling, step);
      const what = `${workWord(step.work)} ${stepThing(telling, step)}`;
      const way = `${stepFrom(telling, step)} > ${stepTo(telling, step)}`;
      const who = step.hands === 'both' ? 'A and B' : step.hands;
      return `  ${String(step.number).padStart(3)}  ${clock(step.begins)}  ${who.padEnd(7)}  ${what}: ${way}${notes.length > 0 ? ` (${notes.join(', ')})` : ''}`;
    }),
    ...changeoverNotes(change).map((note) => `  ${note}`),
  ];
}
