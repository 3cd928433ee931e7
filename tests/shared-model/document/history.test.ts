import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { commit, redo, startHistory, undo, type History, type Selection } from '#model/document/history.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { answerOf, anyNumbers } from '../commands/any-command.ts';
import { documentOfEveryKind } from './every-kind.ts';
import { frozen } from './freeze.ts';

type Step = { readonly do: readonly number[] } | 'undo' | 'redo';

const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ do: anyNumbers }) },
  { weight: 2, arbitrary: fc.constant('undo' as const) },
  { weight: 1, arbitrary: fc.constant('redo' as const) },
);

/** What a history is meant to be: every state there was, in a list, and where one is in it. */
interface Model {
  readonly states: readonly { readonly document: Document; readonly selection: Selection }[];
  readonly at: number;
}

/** The same records, each the very same value. */
function expectSame(actual: Document, expected: Document): void {
  expect(actual.records.size).toBe(expected.records.size);
  for (const [id, record] of expected.records) expect(actual.records.get(id)).toBe(record);
}

function taken(history: History, model: Model, step: Step): [History, Model] {
  if (step === 'undo') return [undo(history), { ...model, at: Math.max(0, model.at - 1) }];
  if (step === 'redo')
    return [redo(history), { ...model, at: Math.min(model.states.length - 1, model.at + 1) }];
  const outcome = answerOf(history.document, step.do);
  if (!outcome.ok || outcome.diff.size === 0) return [history, model];
  const selection = outcome.select ?? history.selection;
  const state = { document: frozen(applyDiff(history.document, outcome.diff)), selection };
  const states = [...model.states.slice(0, model.at + 1), state];
  return [commit(history, outcome.label, outcome.diff, selection), { states, at: states.length - 1 }];
}

describe('undo and redo', () => {
  it('go through the very states there were, with their selections, and back to the first', () => {
    let commits = 0;
    fc.assert(
      fc.property(fc.array(anyStep, { minLength: 5, maxLength: 30 }), (steps) => {
        const first = frozen(documentOfEveryKind());
        const text = writeDocument(first);
        let history = startHistory(first);
        let model: Model = { states: [{ document: first, selection: [] }], at: 0 };
        for (const step of steps) {
          [history, model] = taken(history, model, step);
          const state = model.states[model.at];
          if (!state) throw new Error('model went astray');
          expectSame(history.document, state.document);
          expect(history.selection).toEqual(state.selection);
          expect(history.past).toHaveLength(model.at);
          expect(history.future).toHaveLength(model.states.length - 1 - model.at);
        }
        commits += model.states.length - 1;
        while (history.past.length > 0) history = undo(history);
        expectSame(history.document, first);
        expect(history.selection).toEqual([]);
        expect(writeDocument(history.document)).toBe(text);
      }),
      { numRuns: 80 },
    );
    expect(commits).toBeGreaterThan(100);
  });

  it('have no limit', () => {
    const first = frozen(documentOfEveryKind());
    let history = startHistory(first);
    for (let step = 0; step < 3000; step++) {
      const before = history.document.records.get('concert-1') ?? null;
      if (before?.kind !== 'concert') throw new Error('no concert');
      const after = { ...before, revision: String(step) };
      history = commit(history, 'revise', new Map([['concert-1', { before, after }]]), []);
    }
    for (let step = 0; step < 3000; step++) history = undo(history);
    expectSame(history.document, first);
    for (let step = 0; step < 3000; step++) history = redo(history);
    expect(history.document.records.get('concert-1')).toMatchObject({ revision: '2999' });
  });

  it('do nothing at either end', () => {
    const history = startHistory(documentOfEveryKind());
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it('do not remember an empty diff, but its selection holds', () => {
    const history = commit(startHistory(documentOfEveryKind()), 'nothing', new Map(), ['stand-1']);
    expect(history.past).toEqual([]);
    expect(history.selection).toEqual(['stand-1']);
  });
});
