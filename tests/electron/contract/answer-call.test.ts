/** Nothing a window can send gets past the schemas to a handler, and nothing makes the shell throw. */

import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import * as v from 'valibot';
import { answerCall } from '#contract/answer-call.ts';
import { ARGUMENT_SCHEMAS, CHANNELS } from '#contract/argument-schemas.ts';
import type { Arguments, Channel, Handlers } from '#contract/contract.ts';
import { ok } from '#contract/result.ts';

const HANDLE = 'a'.repeat(32);
const PLOT = {
  text: '{}',
  setup: 'setup-1',
  options: { paper: 'A3', orientation: 'auto', scale: 50 },
} as const;

const WORK = { name: 'Trio', handle: null, hash: null, text: '{}', recoveredFrom: null };

const PAPER = {
  text: '{}',
  setup: 'setup-1',
  booklets: [{ station: 'stand-1', paper: 'a4' }],
  cards: null,
  pdfs: [{ player: 'player-1', handle: HANDLE }],
};

/** One good call of every channel. */
const GOOD: { readonly [C in Channel]: Arguments<C> } = {
  'app.hello': [],
  'files.askOpen': ['standlines'],
  'files.askSave': ['Trio.pdf', 'pdf'],
  'files.list': [null],
  'files.inFolder': [HANDLE, 'Trio.standlines'],
  'files.beside': [HANDLE, 'cards.pdf'],
  'files.read': [HANDLE],
  'files.save': [{ handle: HANDLE, text: '{}', expectedHash: 'f'.repeat(64), replace: false }],
  'score.read': [HANDLE, null],
  'table.read': [HANDLE],
  'part.read': [HANDLE],
  'part.bytes': [HANDLE],
  'part.beside': [HANDLE, 'oboe.pdf'],
  'underlay.read': ['handle-1'],
  'export.save': [{ text: '{}', setup: 'setup-1', what: 'dxf' }, 'handle-1', false],
  'part.hash': [HANDLE],
  'files.demo': [],
  'recent.list': [],
  'recent.clear': [],
  'recovery.keep': ['key-1', WORK],
  'recovery.drop': ['key-1'],
  'recovery.list': [],
  'recovery.read': [HANDLE],
  'recovery.discard': [HANDLE],
  'settings.read': [],
  'settings.write': [{ language: 'de', theme: 'dark', units: 'metric', paper: null, singleKeys: false }],
  'plan.first': [
    {
      ...{ view: { width: 850, height: 700 }, taken: { steps: 41, line: 37 } },
      ...{ dark: false, locale: 'en-GB', before: null },
    },
  ],
  'plot.render': [PLOT],
  'plot.save': [PLOT, HANDLE, false],
  'pack.begin': [
    {
      ...{ text: '{}', paper: 'A4', scale: 50, sheets: ['cover', 'plot-2b', 'seats-1-p3'] },
      ...{ formats: ['pdf', 'png'], dpi: 150 },
    },
  ],
  'pack.watch': ['job-1', -1],
  'pack.stop': ['job-1'],
  'pack.bytes': ['job-1'],
  'pack.save': ['job-1', HANDLE, false],
  'paper.save': [PAPER, HANDLE, false],
};

/** Handlers that only note what reached them. */
function noting(): { readonly handlers: Handlers; readonly reached: unknown[][] } {
  const reached: unknown[][] = [];
  const note = async (...args: unknown[]) => {
    reached.push(args);
    return ok(null);
  };
  const handlers = Object.fromEntries(CHANNELS.map((channel) => [channel, note])) as unknown as Handlers;
  return { handlers, reached };
}

const failOnBug = (bug: unknown) => {
  throw bug;
};

describe.each(CHANNELS)('%s', (channel) => {
  it('lets a good call through unchanged', async () => {
    const { handlers, reached } = noting();
    const { outcome } = await answerCall(handlers, channel, GOOD[channel], failOnBug);
    expect(outcome).toBe('answered');
    expect(reached).toEqual([GOOD[channel]]);
  });

  it('refuses an argument too many, one too few and arguments that are no list', async () => {
    const { handlers, reached } = noting();
    const good: readonly unknown[] = GOOD[channel];
    const bad = [[...good, null], good.length > 0 ? good.slice(1) : [1], { ...good, length: 9 }, null, 'x'];
    for (const args of bad) {
      const { outcome, result } = await answerCall(handlers, channel, args, failOnBug);
      expect([outcome, result.ok]).toEqual(['badArguments', false]);
    }
    expect(reached).toEqual([]);
  });

  it('refuses anything whatever of another form', async () => {
    const schema: v.GenericSchema = ARGUMENT_SCHEMAS[channel];
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.array(fc.anything()), fc.anything()), async (args) => {
        const { handlers, reached } = noting();
        const { outcome } = await answerCall(handlers, channel, args, failOnBug);
        expect(outcome === 'answered').toBe(v.is(schema, args));
        expect(reached).toHaveLength(outcome === 'answered' ? 1 : 0);
      }),
    );
  });
});

describe('single values that must not pass', () => {
  it.each([
    ['files.read', ['../../etc/passwd']],
    ['files.read', [`${HANDLE}\n`]],
    ['files.read', ['']],
    ['files.read', ['a'.repeat(65)]],
    ['files.list', [undefined]],
    ['files.askOpen', ['exe']],
    ['files.askSave', ['Trio', 'score']],
    ['score.read', ['../../etc/passwd', null]],
    ['score.read', [HANDLE, '']],
    ['files.save', [{ ...GOOD['files.save'][0], path: '/etc/passwd' }]],
    ['files.save', [{ ...GOOD['files.save'][0], expectedHash: 'F'.repeat(64) }]],
    [
      'files.save',
      [JSON.parse('{"handle":"a","text":"","expectedHash":null,"replace":false,"__proto__":{}}')],
    ],
    ['plot.render', [{ ...PLOT, options: { ...PLOT.options, scale: Infinity } }]],
    ['plot.render', [{ ...PLOT, options: { ...PLOT.options, scale: NaN } }]],
    ['plot.render', [{ ...PLOT, options: { ...PLOT.options, scale: -50 } }]],
    ['plot.render', [{ ...PLOT, options: { ...PLOT.options, paper: 'A0' } }]],
    ['plot.render', [{ ...PLOT, setup: '../x' }]],
    ['recovery.read', ['../settings']],
    ['recovery.keep', ['a/b', WORK]],
    ['recovery.keep', ['key-1', { ...WORK, recoveredFrom: '../settings' }]],
    ['recovery.keep', ['key-1', { ...WORK, hash: 'none' }]],
    ['settings.write', [{ theme: 'dark', units: 'metric', paper: 'x'.repeat(100) }]],
  ])('%s %j', async (channel, args) => {
    const { outcome } = await answerCall(noting().handlers, channel, args, failOnBug);
    expect(outcome).toBe('badArguments');
  });
});

it.each(['', 'app.goodbye', 'constructor', '__proto__', 'toString', 'app.hello '.repeat(50)])(
  'there is no channel %j',
  async (channel) => {
    const { outcome, result } = await answerCall(noting().handlers, channel, [], failOnBug);
    expect(outcome).toBe('unknownChannel');
    expect(JSON.stringify(result).length).toBeLessThan(200);
  },
);

it('a handler with a bug gives a plain sentence and the bug goes to the log', async () => {
  const bugs: unknown[] = [];
  const broken = {
    ...noting().handlers,
    'app.hello': () => Promise.reject(new Error('secret path /home/somebody')),
  } as Handlers;
  const { outcome, result } = await answerCall(broken, 'app.hello', [], (bug) => bugs.push(bug));
  expect(outcome).toBe('crashed');
  expect(JSON.stringify(result)).not.toContain('secret');
  expect(bugs).toHaveLength(1);
});

it('the schemas describe exactly the arguments of the contract', () => {
  type Loose<T> = T extends readonly (infer E)[]
    ? { -readonly [K in keyof T]: Loose<T[K]> } & { readonly element?: Loose<E> }
    : T extends object
      ? { -readonly [K in keyof T]: Loose<T[K]> }
      : T;
  expectTypeOf<keyof typeof ARGUMENT_SCHEMAS>().toEqualTypeOf<Channel>();
  type Accepted = { [C in Channel]: Loose<v.InferInput<(typeof ARGUMENT_SCHEMAS)[C]>> };
  type Wanted = { [C in Channel]: Loose<Arguments<C>> };
  expectTypeOf<Wanted>().toExtend<Accepted>();
  expectTypeOf<Accepted>().toExtend<Wanted>();
});
