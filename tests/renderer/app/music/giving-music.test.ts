/** From the chosen file to the command, with a shell that answers what it is told to. */

import { describe, expect, it } from 'vitest';
import type { Answer, Channel, Host, ScoreFile } from '#contract/contract.ts';
import type { Outcome } from '#model/commands/command.ts';
import { scoreOf } from '#model/document/parts.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { giveMusic, type Giving } from '../../../../renderer/app/music/giving-music.ts';
import { aDocument, MUSIC, SETUP } from '../../../helpers/build.ts';

const ONE: ScoreFile = { name: 'furrows.musicxml', music: MUSIC, root: null, roots: [], rootParts: [] };
const ROOTS = ['furrows.xml', 'loam.xml'];
const failed = (message: string) => ({ ok: false, error: { code: 'score.bad', message } });

interface Told {
  readonly nativeDialogs: boolean;
  readonly answers: Partial<Record<Channel, (...args: unknown[]) => unknown>>;
  /** To dialogs of the window, in the order in which they are asked. */
  readonly said: readonly unknown[];
}

function editorWith({ nativeDialogs, answers, said }: Told) {
  let document: Document = aDocument();
  const asked: string[] = [];
  const waiting = [...said];
  const host: Host = {
    call: async (channel, ...args) => answers[channel]?.(...args) as Answer<typeof channel>,
  };
  const editor = {
    host,
    hello: { nativeDialogs },
    questions: {
      ask: async (kind: string) => {
        asked.push(kind);
        return waiting.shift();
      },
    },
    session: {
      get settled() {
        return document;
      },
      carryOut: (outcome: Outcome) => {
        if (!outcome.ok) return outcome;
        document = applyDiff(document, outcome.diff);
        return null;
      },
    },
  } as unknown as Giving;
  const busy: boolean[] = [];
  const give = () => giveMusic(editor, SETUP, (reading) => busy.push(reading));
  return { give, asked, busy, source: () => scoreOf(document, SETUP)?.source };
}

describe('giving a setup its music', () => {
  it('from a file chosen in the system\u2019s dialog', async () => {
    const { give, source, busy, asked } = editorWith({
      nativeDialogs: true,
      answers: {
        'files.askOpen': (type) => ({ ok: true, value: `a ${String(type)}` }),
        'score.read': (handle) => ({ ok: true, value: { ...ONE, name: String(handle) } }),
      },
      said: [],
    });
    expect(await give()).toEqual({ outcome: 'given', name: 'a score', dropped: [] });
    expect(source()).toBe('a score');
    expect([busy, asked]).toEqual([[true, false], []]);
  });

  it('from a file chosen in the window\u2019s own dialog, and one of its several scores', async () => {
    const read: unknown[][] = [];
    const { give, asked, source } = editorWith({
      nativeDialogs: false,
      answers: {
        'score.read': (...args) => {
          read.push(args);
          return { ok: true, value: { ...ONE, name: 'two.mxl', root: args[1] ?? ROOTS[0], roots: ROOTS } };
        },
      },
      said: [{ handle: 'h', replace: false }, 'loam.xml'],
    });
    expect(await give()).toEqual({ outcome: 'given', name: 'two.mxl', dropped: [] });
    expect(asked).toEqual(['place', 'scoreChoice']);
    expect(read).toEqual([
      ['h', null],
      ['h', 'loam.xml'],
    ]);
    expect(source()).toBe('two.mxl');
  });

  it('does nothing when the user changes his mind, at either question', async () => {
    const answers = { 'score.read': () => ({ ok: true, value: { ...ONE, root: ROOTS[0], roots: ROOTS } }) };
    for (const said of [[null], [{ handle: 'h', replace: false }, null]]) {
      const { give, source } = editorWith({ nativeDialogs: false, answers, said });
      expect(await give()).toEqual({ outcome: 'left' });
      expect(source()).toBeUndefined();
    }
  });

  it('says what is wrong with a file, is not busy any more, and leaves the concert as it was', async () => {
    const { give, source, busy } = editorWith({
      nativeDialogs: false,
      answers: { 'score.read': () => failed('"a.xml" is empty.') },
      said: [{ handle: 'h', replace: false }],
    });
    expect(await give()).toEqual({ outcome: 'refused', problem: '"a.xml" is empty.' });
    expect([source(), busy]).toEqual([undefined, [true, false]]);
  });
});
