/**
 * A queue with one place: while a question is being answered only the newest of those that came meanwhile is kept.
 * The ones it pushed out are answered with null, so that nobody waits for them.
 */

export function latestWins<Q, A>(answer: (question: Q) => Promise<A>): (question: Q) => Promise<A | null> {
  interface Waiting {
    readonly question: Q;
    readonly done: (answer: A | null) => void;
    readonly failed: (error: unknown) => void;
  }
  let busy = false;
  let next: Waiting | null = null;

  const start = async ({ question, done, failed }: Waiting): Promise<void> => {
    busy = true;
    await answer(question).then(done, failed);
    busy = false;
    const waiting = next;
    next = null;
    if (waiting) void start(waiting);
  };

  return (question) =>
    new Promise((done, failed) => {
      const waiting = { question, done, failed };
      if (!busy) return void start(waiting);
      next?.done(null);
      next = waiting;
    });
}
