/** Runs the checks beside the window, so that a long one never holds up a frame. */

import { Answerer } from './answers.ts';
import { spoken } from './own-language.ts';
import type { Asked, CheckKind, SightAnswer, Told } from './protocol.ts';

const answerer = new Answerer();

addEventListener('message', ({ data }: MessageEvent<Asked<CheckKind>>) => {
  void spoken.then(() => tell(told(data)));
});

function tell(message: Told): void {
  const { answer } = message;
  if (!isSight(answer)) return postMessage(message);
  // A copy that is handed over: to clone the shares of a large hall takes their memory twice more for a while.
  const visible = answer.visible.slice();
  postMessage({ ...message, answer: { ...answer, visible } }, { transfer: [visible.buffer] });
}

function isSight(answer: Told['answer']): answer is SightAnswer {
  return typeof answer === 'object' && answer !== null && 'visible' in answer;
}

function told(asked: Asked<CheckKind>): Told {
  try {
    return { ticket: asked.ticket, answer: answerer.answer(asked), failure: null };
  } catch (error) {
    return {
      ticket: asked.ticket,
      answer: null,
      failure: error instanceof Error ? error.message : String(error),
    };
  }
}
