/** The model has no chance, no clock, no console and no surroundings: each is planted and must be found. */

import { ESLint } from 'eslint';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const eslint = new ESLint({ cwd: root, overrideConfigFile: `${root}.config/eslint.config.js` });

async function rulesBroken(code: string, filePath: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(code, { filePath: `${root}${filePath}` });
  return result?.messages.map((message) => message.ruleId) ?? [];
}

it.each([
  ['Math.random()', 'no-restricted-properties'],
  ['Date.now()', 'no-restricted-properties'],
  ['new Date()', 'no-restricted-syntax'],
  ['Date()', 'no-restricted-syntax'],
  ['performance.now()', 'no-restricted-globals'],
  ['console.log(1)', 'no-console'],
  ['document.title', 'no-restricted-globals'],
  ['window.name', 'no-restricted-globals'],
  ['process.env', 'no-restricted-globals'],
  ['setTimeout(() => 1, 1)', 'no-restricted-globals'],
  ['fetch("a")', 'no-restricted-globals'],
  ['localStorage.length', 'no-restricted-globals'],
  ['crypto.randomUUID()', 'no-restricted-globals'],
  ['Buffer.from("")', 'no-restricted-globals'],
  ['new TextEncoder()', 'no-restricted-globals'],
  ['import("./a.ts")', 'no-restricted-syntax'],
  ['Math.max(...[1, 2])', 'no-restricted-syntax'],
  ['eval("1")', 'no-eval'],
])('the model may not say %s', async (code, rule) => {
  expect(await rulesBroken(`export const a = ${code};\n`, 'shared-model/document/planted.ts')).toContain(
    rule,
  );
});

it.each(['Math.max(1, 2)', 'new Map<string, number>()', 'Number.parseFloat("1")', 'structuredSum(1)'])(
  'but it may say %s',
  async (code) => {
    const text = `const structuredSum = (a: number) => a;\nexport const b = structuredSum(1);\nexport const a = ${code};\n`;
    expect(await rulesBroken(text, 'shared-model/document/planted.ts')).toEqual([]);
  },
);
