/** `standlines score` */

import { resolve } from 'node:path';
import type { Music } from '#model/score/music.ts';
import { barNamed } from '#model/score/music/bar-names.ts';
import { withOrder, withTempos } from '#model/score/music/typed-over.ts';
import { outcomeOf, type Outcome } from '#model/score/problem.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { faultOf } from '../services/faults.ts';
import { openScore } from '../services/score-file.ts';
import { scoreAsData } from './score-json.ts';
import { scoreAsText } from './score-text.ts';
import type { Surroundings } from './surroundings.ts';
import { UsageError, type ScoreOrder } from './usage.ts';

/** Throws `UsageError`. */
export async function score(order: ScoreOrder, { fs, print }: Surroundings): Promise<number> {
  const path = resolve(order.file);
  const opened = await openScore(fs, path, order).catch((error: unknown) => {
    throw new UsageError(faultOf(error, path).message);
  });
  const told = { ...opened, file: order.file, music: typedOver(opened.music, order) };
  print(order.json ? `${JSON.stringify(scoreAsData(told))}\n` : scoreAsText(told));
  return 0;
}

function typedOver(music: Music, { tempo, order }: ScoreOrder): Music {
  const ordered = order === null ? music : valueOf(withOrder(music, order));
  if (tempo === null) return ordered;
  const bar = tempo.from === null ? 0 : valueOf(outcomeOf(() => barNamed(ordered, tempo.from ?? '', 'bar')));
  return valueOf(withTempos(ordered, [{ bar, quartersPerMinute: tempo.quartersPerMinute }]));
}

function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new UsageError(problemSentence(outcome.problem));
}
