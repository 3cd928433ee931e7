/** Elements of XML counted by their first bytes: a file with far too many is refused before it is parsed. */

const [OPENS, UPPER_A, UPPER_Z, LOWER_A, LOWER_Z] = [0x3c, 0x41, 0x5a, 0x61, 0x7a];

/** No element takes fewer bytes than `<a/>`. */
export const SHORTEST_ELEMENT = 4;

/** Counts over bytes that come in pieces. What looks like an element in a comment counts, too. */
export class TagCount {
  tags = 0;
  #opened = false;

  /** In two bytes a character the zero between is passed over. */
  add(bytes: Uint8Array): void {
    let [tags, opened] = [this.tags, this.#opened];
    for (let at = 0; at < bytes.length; at += 1) {
      const byte = bytes[at] ?? 0;
      if (byte === OPENS) opened = true;
      else if (opened && byte !== 0) {
        if ((byte >= LOWER_A && byte <= LOWER_Z) || (byte >= UPPER_A && byte <= UPPER_Z)) tags += 1;
        opened = false;
      }
    }
    [this.tags, this.#opened] = [tags, opened];
  }
}
