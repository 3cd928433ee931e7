/** The movement behind a bar's name, read in whichever language it is said. */

/** A name taken apart: the bar, and its movement from 1; null: that is not said. */
export function withoutMovement(label: string): { readonly bar: string; readonly movement: number | null } {
  const { index = label.length, groups } = OF_MOVEMENT.exec(label) ?? {};
  const number = Object.values(groups ?? {}).find((each) => each !== undefined);
  return { bar: label.slice(0, index), movement: number === undefined ? null : Number(number) };
}

/** "of movement 2", "im 2. Satz", "in Satz 2", at the end. */
export const OF_MOVEMENT =
  /\s+(?:of\s+movement\s+(?<english>\d{1,4})|(?:im|vom|des|in|aus)?\s*(?:(?<german>\d{1,4})\.\s*Satz(?:es)?|Satz\s+(?<after>\d{1,4})))$/i;
