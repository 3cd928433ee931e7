/**
 * What the user should read above the plan. Every remark is about something, and goes when that is no longer so: a
 * refusal with the next change, what could not be opened with the next file, what could not be saved with a save.
 */

import type { Entry } from '#model/document/history.ts';

export type Topic =
  | 'shell'
  | 'settings'
  /** The last file that could not be opened. */
  | 'opening'
  /** Said of the open file when it was read. */
  | 'file'
  /** The open file was of an older version; a save writes the newest. */
  | 'version'
  | 'saving'
  | 'keeping'
  /** Another program has changed the file. */
  | 'changed'
  /** A command that was refused. */
  | 'refusal'
  /** What a command did beyond what was asked. */
  | 'done';

export interface Remark {
  /** A warning is said at once, a notice when the reader has finished what it says. */
  readonly kind: 'warning' | 'notice';
  readonly topic: Topic;
  readonly message: string;
  /** Where the history stood: the remark goes when it stands elsewhere. Left out: it does not depend on that. */
  readonly at?: Entry | null;
  /** What can be done about it. */
  readonly offer?: { readonly words: string; readonly run: () => void };
}

/** Nothing has to be done about an older version of the file. */
export function kindOf(topic: Topic): Remark['kind'] {
  return topic === 'version' || topic === 'done' ? 'notice' : 'warning';
}

/** Topics of which several remarks may stand at a time; of all others the newest replaces the one before. */
const SEVERAL: readonly Topic[] = ['file'];

/** With one more, the newest last; the same words are never there twice. */
export function remarked(remarks: readonly Remark[], remark: Remark): readonly Remark[] {
  const others = remarks.filter(
    ({ topic, message }) => message !== remark.message && (topic !== remark.topic || SEVERAL.includes(topic)),
  );
  return [...others, remark];
}

/** Without what is about these topics. */
export function settled(remarks: readonly Remark[], topics: readonly Topic[]): readonly Remark[] {
  return remarks.filter(({ topic }) => !topics.includes(topic));
}

/** Without what belonged to another state of the document. */
export function stillTrue(remarks: readonly Remark[], at: Entry | null): readonly Remark[] {
  return remarks.filter((remark) => remark.at === undefined || remark.at === at);
}

/** What another document in the window makes untrue. */
export const OF_THE_DOCUMENT: readonly Topic[] = [
  'opening',
  'file',
  'version',
  'saving',
  'keeping',
  'changed',
  'refusal',
  'done',
];

/** What a save that went well makes untrue. */
export const OF_THE_FILE: readonly Topic[] = ['opening', 'version', 'saving', 'keeping', 'changed'];
