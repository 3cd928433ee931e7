/** Runs the checks beside the window, so that a long one never holds up a frame. */

import { Answerer } from './answers.ts';
import type { Asked, CheckKind, Told } from './protocol.ts';

const answerer = new Answerer();

addEventListener('message', ({ data }: MessageEvent<Asked<CheckKind>>) => {
  const message = told(data);
  postMessage(message, { transfer: sharesIn(message) });
});

/** Handed over: cloning the shares of a large hall takes its memory twice more for a while. */
function sharesIn({ answer }: Told): Transferable[] {
  return typeof answer === 'object' && answer !== null && 'visible' in answer ? [answer.visible.buffer] : [];
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
