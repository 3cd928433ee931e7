import type { Entry } from '#model/document/history.ts';
import { describe, expect, it } from 'vitest';
import {
  kindOf,
  OF_THE_DOCUMENT,
  OF_THE_FILE,
  remarked,
  settled,
  stillTrue,
  type Remark,
  type Topic,
} from '../../../renderer/state/remarks.ts';

const remark = (topic: Topic, message: string, more: Partial<Remark> = {}): Remark => ({
  kind: 'warning',
  topic,
  message,
  ...more,
});

const messages = (remarks: readonly Remark[]): string[] => remarks.map(({ message }) => message);

const entry = (label: string): Entry => ({ label }) as Entry;

describe('remarks', () => {
  it('does not pile up the same words', () => {
    const once = remarked([], remark('file', 'A lamp was left out.'));
    expect(remarked(once, remark('file', 'A lamp was left out.'))).toHaveLength(1);
  });

  it('replaces what was said of the same matter, but keeps all notes on a file', () => {
    const first = remarked([], remark('opening', 'a.standlines is not there.'));
    const second = remarked(first, remark('opening', 'b.standlines is not there.'));
    expect(messages(second)).toEqual(['b.standlines is not there.']);
    const notes = remarked(remarked([], remark('file', 'one')), remark('file', 'two'));
    expect(messages(notes)).toEqual(['one', 'two']);
  });

  it('forgets everything about a document when another one is opened, and keeps what is about the shell', () => {
    const all = [...OF_THE_DOCUMENT, 'shell' as const, 'settings' as const].map((topic) =>
      remark(topic, topic),
    );
    expect(messages(settled(all, OF_THE_DOCUMENT))).toEqual(['shell', 'settings']);
  });

  it('forgets with a save what kept the file from being safe, not what was noted in it', () => {
    const all = [remark('saving', 'disk full'), remark('keeping', 'not kept'), remark('file', 'note')];
    expect(messages(settled(all, OF_THE_FILE))).toEqual(['note']);
  });

  it('say quietly that a file was of an older version, until it is saved in the newest', () => {
    expect(kindOf('version')).toBe('notice');
    expect((['file', 'opening', 'saving', 'refusal'] as const).map(kindOf)).toEqual(Array(4).fill('warning'));
    const all = [remark('version', 'of version 1'), remark('file', 'note')];
    expect(messages(settled(all, OF_THE_FILE))).toEqual(['note']);
    expect(messages(settled(all, OF_THE_DOCUMENT))).toEqual([]);
  });

  it('forgets a refusal when the document has changed since', () => {
    const [before, after] = [entry('move stand 1'), entry('turn stand 1')];
    const all = [remark('refusal', 'no', { at: before }), remark('shell', 'in a browser')];
    expect(messages(stillTrue(all, before))).toEqual(['no', 'in a browser']);
    expect(messages(stillTrue(all, after))).toEqual(['in a browser']);
    expect(messages(stillTrue(all, null))).toEqual(['in a browser']);
  });
});
