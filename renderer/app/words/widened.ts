/** The shape of a catalogue, whatever its language. */

/** Every sentence may read otherwise, and every function of a sentence says what it says; names and values stay. */
export type Widened<T> = T extends string
  ? string
  : T extends (...args: infer A) => infer R
    ? (...args: A) => Widened<R>
    : { readonly [K in keyof T]: Widened<T[K]> };
