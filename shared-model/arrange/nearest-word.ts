/** Which of the words known somebody may have meant. */

/** Short words are all near to one another. */
const SHORTEST = 4;

/**
 * The word with the fewest slips between (a letter too many, missing, wrong, or two that changed places), at most one in
 * three letters. Null: none is so near.
 */
export function mistyped(said: string, words: readonly string[]): string | null {
  if (said.length < SHORTEST) return null;
  const most = Math.floor(said.length / 3);
  const near = least(words, (word) => slips(said, word, most));
  return near !== null && slips(said, near, most) <= most ? near : null;
}

/** The word that begins like it for longest, of those the one as long as it; null: not even two letters. */
export function begunAlike(said: string, words: readonly string[]): string | null {
  const like = least(words, (word) => -1000 * commonStart(said, word) + Math.abs(word.length - said.length));
  return like !== null && commonStart(said, like) >= 2 ? like : null;
}

function least(words: readonly string[], cost: (word: string) => number): string | null {
  let [best, lowest]: [string | null, number] = [null, Infinity];
  for (const word of words) {
    const own = cost(word);
    if (own < lowest) [best, lowest] = [word, own];
  }
  return best;
}

/** Optimal string alignment distance; more than `most`: something greater than `most`. */
function slips(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let [older, old]: [number[], number[]] = [[], Array.from({ length: b.length + 1 }, (_, index) => index)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const isSame = a[i - 1] === b[j - 1];
      const changed = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          (old[j] ?? 0) + 1,
          (row[j - 1] ?? 0) + 1,
          (old[j - 1] ?? 0) + (isSame ? 0 : 1),
          changed ? (older[j - 2] ?? 0) + 1 : Infinity,
        ),
      );
    }
    [older, old] = [old, row];
  }
  return old[b.length] ?? 0;
}

function commonStart(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length++;
  return length;
}
