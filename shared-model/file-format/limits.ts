/**
 * How large a document may grow. Far above any concert and low enough that every file is read or refused within
 * seconds; the commands keep to the same figures, so what can be made can be saved and opened again. What it takes to
 * check and print files of thousands of things: tests/bench/README.md.
 */

/** Largest file text in UTF-16 units; the shells refuse larger files before they read them. */
export const MOST_TEXT = 64 * 1024 * 1024;

/** Deepest nesting of lists and objects in the JSON. A proper file needs six. */
export const MOST_DEPTH = 100;

/** Most values of any kind in the JSON: well above what the limits below allow together. */
export const MOST_VALUES = 2_000_000;

/** Most fields in one object of the JSON. */
export const MOST_FIELDS = 200;

export const MOST_RECORDS = 20_000;
export const MOST_SETUPS = 200;
/** Pairs of players named in one setup: what a hundred players have among them. */
export const MOST_PAIRS = 4950;
/** Seats of all seat blocks and single places together. */
export const MOST_PLACES = 50_000;
/** Players in one setup: any two of them must see each other, so the checks grow with the square of this. */
export const MOST_PLAYERS = 500;
/** Places times players of one setup: each is a line of sight with a share of its own. */
export const MOST_SIGHTLINES = 1_000_000;
/** Rows of all seat blocks together. */
export const MOST_ROWS = 20_000;
/** Corners of all outlines and cables together. */
export const MOST_CORNERS = 100_000;
/** Corners of one outline. */
export const MOST_OUTLINE_CORNERS = 500;
/** Farthest coordinate from the origin, in millimetres. */
export const FARTHEST = 1_000_000;
export const LONGEST_NAME = 200;
export const LONGEST_NOTES = 4000;

/** Things in one group. */
export const MOST_MEMBERS = 2000;
export const MOST_CONTACTS = 50;
export const MOST_VIEWS = 100;
export const MOST_OF_A_THING = 100_000;
/** Underlays: one of its pictures in base64, its sides, and the lines of a drawing with the numbers of one of them. */
export const MOST_PICTURE_TEXT = 12 * 1024 * 1024;
export const MOST_PIXELS_ACROSS = 16_384;
export const MOST_UNDERLAY_LINES = 50_000;
export const MOST_LINE_NUMBERS = 20_000;

/** Pages of the PDF of one part. */
export const MOST_PDF_PAGES = 1000;
/** Sides of a page that goes on a stand. */
export const [SMALLEST_PAGE, LARGEST_PAGE] = [40, 1200] as const;
/** One plain file name: it never leads into another folder. */
export const PDF_NAME = /^[^/\\\u0000-\u001f\u007f-\u009f\u2028\u2029\ud800-\udfff]{1,196}\.[pP][dD][fF]$/u;
/** Of a page plan. */
export const MOST_LEAVES = 999;
export const MOST_PAGES_ACROSS = 12;
export const MOST_PAGE = 999;
export const MOST_STATIONS = 100;
export const MOST_TURNS = 2000;
export const MOST_PINS = 2000;
