/** Finding the PDF of a part again, with a shell whose folder is a map from name to content. */

import { describe, expect, it } from 'vitest';
import type { Answer, Host } from '#contract/contract.ts';
import { PartFiles } from '../../../renderer/state/part-files.ts';

const OBOE = { file: 'oboe.pdf', sha256: 'a'.repeat(64) };

/** `beside`: what lies beside the concert; `all`: what any handle holds. A handle is the name of its place. */
function host(beside: readonly string[], all: Readonly<Record<string, string>>): Host {
  return {
    call: async (channel, ...args) => {
      const [first, name] = args as unknown as [string, string];
      const value =
        channel === 'part.beside' ? (beside.includes(name) ? `beside/${name}` : null) : (all[first] ?? null);
      return { ok: true, value } as unknown as Answer<typeof channel>;
    },
  };
}

describe('the PDF of a part', () => {
  it('is found beside the concert', async () => {
    const files = new PartFiles(host(['oboe.pdf'], { 'beside/oboe.pdf': OBOE.sha256 }), () => 'concert');
    expect(await files.find(OBOE)).toEqual({ outcome: 'found', handle: 'beside/oboe.pdf' });
  });

  it('has changed when only its name is the same', async () => {
    const files = new PartFiles(host(['oboe.pdf'], { 'beside/oboe.pdf': 'b'.repeat(64) }), () => 'concert');
    expect(await files.find(OBOE)).toEqual({ outcome: 'changed', handle: 'beside/oboe.pdf' });
  });

  it('is missing for a concert that lies nowhere, until the user has shown it', async () => {
    const files = new PartFiles(host(['oboe.pdf'], { desk: OBOE.sha256 }), () => null);
    expect(await files.find(OBOE)).toEqual({ outcome: 'missing' });
    files.remember(OBOE, 'desk');
    expect(await files.find(OBOE)).toEqual({ outcome: 'found', handle: 'desk' });
  });

  it('of the right content goes before one that was shown and has changed since', async () => {
    const all = { desk: 'b'.repeat(64), 'beside/oboe.pdf': OBOE.sha256 };
    const files = new PartFiles(host(['oboe.pdf'], all), () => 'concert');
    files.remember(OBOE, 'desk');
    expect(await files.find(OBOE)).toEqual({ outcome: 'found', handle: 'beside/oboe.pdf' });
  });
});
