/** How large a score may be: far above any music, and low enough that every file is read or refused within seconds. */

/** Characters of MusicXML, in UTF-16 units. The containers keep to the same number of bytes. */
export const MOST_XML = 64 * 1024 * 1024;
/** Nesting of elements: MusicXML needs about twelve. */
export const MOST_DEPTH = 200;
/** What may stand before the first element: the document type names the DTD, and programs leave a comment. */
export const LONGEST_PROLOGUE = 512 * 1024;
export const MOST_ELEMENTS = 5_000_000;
export const MOST_ATTRIBUTES = 256;
/** One piece of text or one attribute. Pictures inside a score are longer, but nobody reads those here. */
export const LONGEST_TEXT = 65_536;

export const MOST_PARTS = 500;
/** Bars of the score, each counted once. */
export const MOST_BARS = 50_000;
/** Bars as performed: several hours of music. Repeats of repeats reach any number. */
export const MOST_PLAYED_BARS = 100_000;
/** D.C., D.S., Fine and their signs, each counted once however many parts print it. */
export const MOST_JUMPS = 2000;
/** Stretches in which players sound, of all parts: what a file keeps of an hour of a large orchestra is half of it. */
export const MOST_SPANS = 300_000;
/** Tempo marks of all parts. */
export const MOST_TEMPOS = 200_000;
export const MOST_REPEATS = 1000;
/** Quarters in one bar. */
export const LONGEST_BAR = 100_000;
export const MOST_DIVISIONS = 1_000_000;
/** Quarters a minute. */
export const SLOWEST_TEMPO = 1;
export const FASTEST_TEMPO = 2000;
export const LONGEST_NAME = 200;
/** Rows of a table typed for a part without a score. */
export const MOST_ROWS = 2000;
/** Bytes, or characters, of such a table. */
export const MOST_TABLE = 1024 * 1024;
/** Seconds of a whole performance. */
export const LONGEST_PERFORMANCE = 100 * 3600;
/** Remarks of one kind that are listed. */
export const MOST_REMARKS = 20;
