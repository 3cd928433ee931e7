/** What the window says where there is no plan, rendered as it stands there. */

import { svelte } from '@sveltejs/vite-plugin-svelte';
import type { Component } from 'svelte';
import { createServer, type ViteDevServer } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { documentOf } from '#model/document/document.ts';
import type { Remedy } from '#model/pages/planner/remedies.ts';
import type { Blocked } from '#model/pages/planner/ways-out.ts';

let server: ViteDevServer;
let told: (blocked: readonly Blocked[], remedies?: readonly Remedy[]) => string;

beforeAll(async () => {
  server = await createServer({
    configFile: false,
    logLevel: 'error',
    appType: 'custom',
    optimizeDeps: { noDiscovery: true },
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    plugins: [svelte({ configFile: false })],
  });
  const { render } = await server.ssrLoadModule('svelte/server');
  const { provideEditor } = await server.ssrLoadModule('/renderer/state/editor.svelte.ts');
  const { default: unplanned } = await server.ssrLoadModule('/renderer/app/turns/Unplanned.svelte');
  const inEditor = (...given: Parameters<Component>) => {
    provideEditor({ session: { document: documentOf([]), setup: 'setup-1' } });
    return unplanned(...given);
  };
  told = (blocked, remedies = []) => {
    const answer = {
      kind: 'none',
      proved: true,
      instance: { players: [], stations: [] },
      remedies,
      blocked,
    };
    const { body } = render(inEditor as Component<Record<string, unknown>>, {
      props: { answer },
      context: new Map(),
    });
    return body.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
  };
});

afterAll(() => server.close());

const more: Remedy = { kind: 'station', like: 'stand-1' };
const wider: Remedy = { kind: 'wider', station: 'stand-1', pages: 3 };
const blocked = (player: string, pairs: Blocked['pairs']): Blocked => ({
  players: [player],
  remedies: [],
  pairs,
  without: null,
});

it('names the changes that only together make a plan', () => {
  expect(
    told([
      blocked('player-1', [
        [wider, more],
        [more, more],
      ]),
    ]),
  ).toMatch(
    /Two changes at once do: room for 3 pages side by side at \S+, and one more stand like \S+ two more stands like/,
  );
});

it('names them beside each player who needs them', () => {
  const words = told([blocked('player-1', [[more, more]]), blocked('player-2', [])]);
  expect(words.match(/Two changes at once do/g)).toHaveLength(1);
  expect(words).toMatch(/player-1: .*Two changes at once do: two more stands like .*player-2:/);
});

it('says where it fails and why, beside what would help', () => {
  const reason = { kind: 'wide', pages: 3, room: 2 } as const;
  const without = { player: 'player-1', page: 5, at: 137.6, bar: '48', pass: { time: 2, of: 2 }, reason };
  const where =
    /It can be planned up to 2:17\.6 \(bar 48, second time\), where player-1 has to play on without page 5: 3 pages have to be in view at once there, and there is room for 2\./g;
  const group = { ...blocked('player-1', []), without };
  expect(told([group], [more]).match(where)).toHaveLength(1);
  expect(told([group], []).match(where)).toHaveLength(1);
  expect(told([group, blocked('player-2', [])]).match(where)).toHaveLength(1);
});
