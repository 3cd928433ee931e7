/** Draws and paints beside the window what would hold up its frames. */

import type { Document } from '#model/document/document.ts';
import { withChanges } from './mirror.ts';
import { spoken } from './own-language.ts';
import { PlanPainter } from './painted-plan.ts';
import { ViewPainter } from './painted-views.ts';
import type { Asked, DrawingAnswers, DrawingKind, DrawingQuestions, Told } from './protocol.ts';

const plans = new PlanPainter();
const views = new ViewPainter();
let document: Document = { records: new Map() };

const answers: {
  readonly [K in DrawingKind]: (
    question: DrawingQuestions[K],
  ) => Promise<DrawingAnswers[K]> | DrawingAnswers[K];
} = {
  plan: (question) => plans.paint(document, question),
  picture: (question) => views.paint(document, question),
  pointed: ({ picture, at }) => views.pointed(picture, at),
};

type ToldDrawing = Told<DrawingKind>;

addEventListener('message', ({ data }: MessageEvent<Asked<DrawingKind>>) => {
  document = { records: withChanges(document.records, data.changes) };
  const answered = spoken.then(() => told(data));
  void answered.then((message) => postMessage(message, { transfer: bitmapsIn(message) }));
});

async function told<K extends DrawingKind>({ ticket, kind, question }: Asked<K>): Promise<ToldDrawing> {
  try {
    return { ticket, answer: await answers[kind](question), failure: null };
  } catch (error) {
    return { ticket, answer: null, failure: error instanceof Error ? error.message : String(error) };
  }
}

/** Handed over, not copied. */
function bitmapsIn({ answer }: ToldDrawing): Transferable[] {
  return typeof answer === 'object' && answer !== null ? [answer.bitmap] : [];
}
