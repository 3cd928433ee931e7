/** A score file of any kind, recognised by its content: plain MusicXML, or a compressed one with one or several scores. */

import { MOST_ELEMENTS } from '#model/score/limits.ts';
import { outcomeOf, Refusal, type Outcome } from '#model/score/problem.ts';
import type { Remark } from '#model/score/remark.ts';
import { ScoreReader } from '#model/score/reading/score-reader.ts';
import type { Score } from '#model/score/score.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { children, mark, type Element } from '#model/score/xml/element.ts';
import { XmlReader } from '#model/score/xml/xml-reader.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { XmlDecoder } from './score-decoder.ts';
import { partsOfRoot } from './score-root-parts.ts';
import { SHORTEST_ELEMENT, TagCount } from './score-tags.ts';
import { inflate, isZip, zipEntries, type ZipEntry } from './score-zip.ts';

export interface ReadScore {
  readonly score: Score;
  /** The file inside a compressed score that was read; null: it is not compressed. */
  readonly root: string | null;
  /** All scores that a compressed one names, this one included. */
  readonly roots: readonly string[];
  /** Of several scores the names of the parts in each. */
  readonly rootParts: readonly (readonly string[])[];
}

const CONTAINER = 'META-INF/container.xml';
const MUSIC_XML = 'application/vnd.recordare.musicxml+xml';
const PIECE = 256 * 1024;

/**
 * `name` is for messages; `root` chooses among the scores of a compressed file, the first for null.
 * Throws `FaultError` for anything that cannot be read as a score.
 */
export function readScoreBytes(bytes: Uint8Array, name: string, root: string | null = null): ReadScore {
  if (bytes.length === 0) throw new FaultError('score.empty', t`"${name}" is empty.`);
  if (isZip(bytes)) return readCompressed(bytes, name, root);
  if (!looksLikeXml(bytes))
    throw new FaultError(
      'score.unknown',
      t`"${name}" is no MusicXML: it is neither XML nor a compressed score (.mxl). Export MusicXML from the music program.`,
    );
  if (root !== null)
    throw new FaultError('score.noRoot', t`"${name}" is one score; there is none to choose by "${root}".`);
  return { score: readPlain(bytes, name), root: null, roots: [], rootParts: [] };
}

/** A byte order mark, white space, or a pointed bracket in one byte or two. */
function looksLikeXml(bytes: Uint8Array): boolean {
  const start = bytes
    .subarray(0, 64)
    .filter((byte) => ![0, 9, 10, 13, 32, 0xef, 0xbb, 0xbf, 0xfe, 0xff].includes(byte));
  return start[0] === 0x3c;
}

function readPlain(bytes: Uint8Array, name: string): Score {
  const unpack: Unpack = (take) => {
    for (let from = 0; from < bytes.length; from += PIECE) take(bytes.subarray(from, from + PIECE));
  };
  refuseSwarm(name, bytes.length, unpack);
  return scoreFrom(name, unpack);
}

type Unpack = (take: (bytes: Uint8Array) => void) => void;

/** To count is many times as quick as to parse. */
function refuseSwarm(name: string, size: number, unpack: Unpack): void {
  if (size <= MOST_ELEMENTS * SHORTEST_ELEMENT) return;
  const count = new TagCount();
  unpack((bytes) => count.add(bytes));
  if (count.tags <= MOST_ELEMENTS) return;
  valueOf(name, { ok: false, problem: { code: 'xml.elements', most: MOST_ELEMENTS } });
}

function readCompressed(bytes: Uint8Array, name: string, wanted: string | null): ReadScore {
  const entries = zipEntries(bytes, name);
  const roots = rootsIn(bytes, entries, name);
  const root = chosen(roots, wanted, name);
  const entry = entries.get(root);
  if (!entry)
    throw new FaultError('score.noRoot', t`"${name}" names "${root}" as its score, but does not hold it.`);
  const unpack: Unpack = (take) => inflate(bytes, entry, name, take);
  refuseSwarm(name, entry.size, unpack);
  const score = scoreFrom(name, unpack);
  return {
    score: withOthers(
      score,
      roots.filter((other) => other !== root),
    ),
    root,
    roots,
    rootParts: roots.length > 1 ? roots.map((one) => partsOfRoot(bytes, entries.get(one), name)) : [],
  };
}

/** Reads while it is unpacked; throws before anything counts when the content proves wrong at its end. */
function scoreFrom(name: string, unpack: Unpack): Score {
  return valueOf(
    name,
    outcomeOf(() => {
      const reader = new ScoreReader();
      pieceByPiece(name, unpack, (text) => reader.write(text));
      return reader.finish();
    }),
  );
}

function pieceByPiece(name: string, unpack: Unpack, write: (text: string) => void): void {
  const decoder = new XmlDecoder(name);
  let first = true;
  unpack((bytes) => {
    if (first && isZip(bytes))
      throw new FaultError('score.refused', t`"${name}" is refused: its score is a compressed file again.`);
    first &&= bytes.length === 0;
    write(decoder.decode(bytes, false));
  });
  write(decoder.decode(new Uint8Array(0), true));
}

function valueOf<T>(name: string, outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new FaultError(outcome.problem.code, t`"${name}": ${problemSentence(outcome.problem)}`);
}

/** Names of the scores in the file, in the order of its container: the first one is the score, others may be its parts. */
function rootsIn(bytes: Uint8Array, entries: ReadonlyMap<string, ZipEntry>, name: string): string[] {
  const container = entries.get(CONTAINER);
  if (!container)
    throw new FaultError(
      'score.noContainer',
      t`"${name}" is a compressed file without ${CONTAINER}, so it is no compressed score (.mxl).`,
    );
  const found = valueOf(
    name,
    outcomeOf(() => rootFiles(bytes, container, name)),
  );
  const scores = found.filter(({ type }) => type === null || type === MUSIC_XML || /xml/i.test(type));
  const roots = [...new Set(scores.map(({ path }) => normalised(path, entries, name)))];
  if (roots.length === 0)
    throw new FaultError('score.noRoot', t`"${name}" does not say which of its files is the score.`);
  return roots;
}

interface RootFile {
  readonly path: string;
  readonly type: string | null;
}

function rootFiles(bytes: Uint8Array, container: ZipEntry, name: string): RootFile[] {
  const found: RootFile[] = [];
  const rootFile: Element = mark((attributes) => {
    const path = attributes['full-path'];
    if (path !== undefined) found.push({ path, type: attributes['media-type'] ?? null });
  });
  const grammar: Element = {
    children: children({ rootfiles: { children: children({ rootfile: rootFile }) } }),
  };
  const reader = new XmlReader((root) => {
    if (root !== 'container') throw new Refusal({ code: 'score.notMusicXml', root });
    return grammar;
  });
  pieceByPiece(
    name,
    (take) => inflate(bytes, container, name, take),
    (text) => reader.write(text),
  );
  reader.finish();
  return found;
}

function normalised(path: string, entries: ReadonlyMap<string, ZipEntry>, name: string): string {
  const plain = path.replace(/^(?:\.\/)+/, '');
  const leadsOut = /^[/\\]|^[A-Za-z]:|\\/.test(plain) || plain.split('/').includes('..');
  if (leadsOut)
    throw new FaultError(
      'score.refused',
      t`"${name}" is refused: its score "${path}" leads out of the file.`,
    );
  const decoded = entries.has(plain) ? plain : percentDecoded(plain);
  return entries.has(decoded) ? decoded : plain;
}

function percentDecoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** By its whole path or its last step. */
function chosen(roots: readonly string[], wanted: string | null, name: string): string {
  const [first = ''] = roots;
  if (wanted === null) return first;
  const found =
    roots.find((root) => root === wanted) ?? roots.find((root) => root.split('/').at(-1) === wanted);
  if (found !== undefined) return found;
  const names = roots.map((root) => `"${root}"`).join(', ');
  throw new FaultError(
    'score.noRoot',
    t`"${name}" holds no score "${wanted.slice(0, 60)}"; it holds ${names}.`,
  );
}

function withOthers(score: Score, others: readonly string[]): Score {
  if (others.length === 0) return score;
  const remark: Remark = { code: 'file.otherRoots', bar: null, text: others.join(', ').slice(0, 300) };
  return { ...score, remarks: [...score.remarks, remark] };
}
