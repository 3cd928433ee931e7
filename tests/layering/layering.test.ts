/** Who may import whom (.config/dependency-cruiser.cjs), and that the check would notice. */

import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { temporaryFolder } from '../helpers/folders.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const ROOMS = ['shared-model', 'electron', 'renderer'];
const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

interface Cruise {
  readonly modules: number;
  readonly violations: readonly string[];
}

function cruise(folder: string): Cruise {
  const config = join(folder, '.config/dependency-cruiser.cjs');
  const words = [program, '--config', config, '--output-type', 'json', ...ROOMS];
  const { stdout, stderr } = spawnSync(process.execPath, words, {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1e9,
  });
  if (!stdout.startsWith('{')) throw new Error(stderr || stdout);
  const { summary } = JSON.parse(stdout) as {
    summary: { totalCruised: number; violations: { rule: { name: string }; from: string; to: string }[] };
  };
  const violations = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
  return { modules: summary.totalCruised, violations };
}

it('the walls between the rooms hold', () => {
  const { modules, violations } = cruise(root);
  expect(violations).toEqual([]);
  // A cruiser that cannot read the language finds nothing wrong in nothing.
  expect(modules).toBeGreaterThan(250);
});

/** A file that imports one thing from another. */
interface Planting {
  readonly from: string;
  readonly statement: string;
  readonly to: string;
}

function cruisePlanted(plantings: readonly Planting[]): Cruise {
  const folder = temporaryFolder();
  cpSync(join(root, '.config'), join(folder, '.config'), { recursive: true });
  const imports = { '#model/*': './shared-model/*', '#contract/*': './electron/contract/*' };
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ imports }));
  for (const room of ROOMS) mkdirSync(join(folder, room));
  for (const { from, statement, to } of plantings) {
    for (const path of [from, to]) mkdirSync(join(folder, dirname(path)), { recursive: true });
    writeFileSync(join(folder, to), 'export interface Thing { a: number }\nexport const thing = 1;\n');
    writeFileSync(join(folder, from), `${statement}\nexport const a = 1;\n`);
  }
  return cruise(folder);
}

const VIOLATIONS = [
  ['model-geometry', 'shared-model/geometry/a.ts', '../document/b.ts', 'shared-model/document/b.ts'],
  ['model-document', 'shared-model/document/a.ts', '../checks/b.ts', 'shared-model/checks/b.ts'],
  ['model-checks', 'shared-model/checks/a.ts', '../commands/b.ts', 'shared-model/commands/b.ts'],
  ['model-commands', 'shared-model/commands/a.ts', '../checks/b.ts', 'shared-model/checks/b.ts'],
  ['model-catalogue', 'shared-model/catalogue/a.ts', '../drawing/b.ts', 'shared-model/drawing/b.ts'],
  ['model-drawing', 'shared-model/drawing/a.ts', '../commands/b.ts', 'shared-model/commands/b.ts'],
  ['model-alone', 'shared-model/checks/c.ts', '../../electron/services/b.ts', 'electron/services/b.ts'],
  ['renderer-not-to-shell', 'renderer/a.ts', '../electron/services/b.ts', 'electron/services/b.ts'],
  ['renderer-contract-types', 'renderer/c.ts', '#contract/b.ts', 'electron/contract/b.ts'],
  ['shell-not-to-renderer', 'electron/services/a.ts', '../../renderer/b.ts', 'renderer/b.ts'],
  ['contract', 'electron/contract/a.ts', '../services/b.ts', 'electron/services/b.ts'],
  ['services-know-no-shell', 'electron/services/c.ts', '../main/b.ts', 'electron/main/b.ts'],
  ['shells-apart', 'electron/loopback/a.ts', '../main/b.ts', 'electron/main/b.ts'],
  ['not-to-tests', 'electron/services/d.ts', '../../tests/b.ts', 'tests/b.ts'],
] as const;

it('every planted violation is found, under its own rule', () => {
  const { violations } = cruisePlanted(
    VIOLATIONS.map(([, from, address, to]) => ({
      from,
      to,
      statement: `import { thing } from '${address}';`,
    })),
  );
  for (const [rule, from, , to] of VIOLATIONS) expect(violations).toContain(`${rule}: ${from} -> ${to}`);
});

it('a circle is found', () => {
  const { violations } = cruisePlanted([
    { from: 'shared-model/geometry/a.ts', statement: "import './b.ts';", to: 'shared-model/geometry/b.ts' },
    { from: 'shared-model/geometry/b.ts', statement: "import './a.ts';", to: 'shared-model/geometry/c.ts' },
  ]);
  expect(violations.join()).toContain('no-circles');
});

it('what is allowed is not found: a type from the contract, and a remedy that tries commands', () => {
  const { violations } = cruisePlanted([
    {
      from: 'renderer/a.ts',
      statement: "import type { Thing } from '#contract/b.ts';",
      to: 'electron/contract/b.ts',
    },
    {
      from: 'shared-model/checks/remedy.ts',
      statement: "import { thing } from '../commands/b.ts';",
      to: 'shared-model/commands/b.ts',
    },
  ]);
  expect(violations).toEqual([]);
});
