/** The real Electron, where its runtime is on the machine and may run: the window comes up sandboxed and answers. */

import { _electron as electron } from '@playwright/test';
import { expect, it } from 'vitest';
import { findElectron } from '../../../electron/bootstrap/electron-runtime.mjs';
import { hasDisplay, isRoot } from '../../../electron/bootstrap/surroundings.mjs';
import { root } from '../../helpers/built.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

/** Why it cannot be tried here, or null. */
function hindrance(): string | null {
  if (findElectron() === null)
    return "Electron's runtime is not on this machine: the real window was not tried";
  if (!hasDisplay()) return 'there is no display: the real Electron window was not tried';
  return isRoot() ? "Electron's sandbox does not work for root: the real window was not tried" : null;
}

it('the real window shows the page, has the bridge and has no Node', async (context) => {
  const reason = hindrance();
  if (reason !== null) return context.skip(reason);
  const env = { ...(process.env as Record<string, string>), STANDLINES_STATE_DIR: temporaryFolder() };
  const program = await electron.launch({ executablePath: findElectron() ?? '', args: [root], env });
  try {
    const page = await program.firstWindow();
    expect(page.url()).toBe('app://main/');
    const found = await page.evaluate(async () => {
      const { standlines } = window as unknown as { standlines: { call(channel: string): Promise<unknown> } };
      return {
        hello: await standlines.call('app.hello'),
        given: Object.keys(standlines),
        node: [typeof Reflect.get(window, 'require'), typeof Reflect.get(window, 'process')],
      };
    });
    expect(found).toMatchObject({
      hello: { ok: true, value: { shell: 'electron' } },
      given: ['call'],
      node: ['undefined', 'undefined'],
    });
  } finally {
    await program.close();
  }
});
