/** `standlines check` */

import { checkSetup } from '#model/checks/check-setup.ts';
import type { Finding } from '#model/checks/finding.ts';
import { suggestRemedies } from '#model/checks/remedy.ts';
import { triedList } from '#model/checks/tried-list.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { checkAsData } from './check-json.ts';
import { checkAsText } from './check-text.ts';
import { chooseSetup, readInput } from './input.ts';
import type { CheckOrder } from './usage.ts';

/** Exit code: 1 when something fails and that was to be told, else 0. Throws `UsageError`. */
export async function check(order: CheckOrder, surroundings: Surroundings): Promise<number> {
  const { file, document, notes } = await readInput(surroundings.fs, order.file);
  const setup = chooseSetup(document, order.setup);
  const report = checkSetup(document, setup.id);
  const tried = order.whatIf
    ? (finding: Finding) => suggestRemedies(document, setup.id, finding)
    : triedList(document, setup.id, report);
  const checked = { file, document, setup, report, tried, notes };
  tellNotes(notes, surroundings);
  surroundings.print(order.json ? `${JSON.stringify(checkAsData(checked, order))}\n` : checkAsText(checked));
  return order.strict && report.findings.some((finding) => finding.severity === 'fail') ? 1 : 0;
}
