/** Everything that people read in the model and the shell goes through `t`. */

import ts from 'typescript';
import { describe, expect, it, test } from 'vitest';
import { proseIn } from '../../helpers/prose.ts';
import { sourceFiles } from '../../helpers/sentences.ts';

const ROOMS = [
  'shared-model',
  ...['contract', 'services', 'main', 'loopback'].map((room) => `electron/${room}`),
];

/** Files and folders whose words are not for the users of the window, nor for readers of a print. */
const EXEMPT: Readonly<Record<string, string>> = {
  'shared-model/words/german/': 'is German itself',
  'shared-model/file-format/demo-in-german.ts': 'is German itself',
  'shared-model/file-format/json-schema.ts': 'is published for programs and those who write them',
  'shared-model/file-format/schema/':
    'has titles and descriptions for the same; its advice is held by the German test of bad files',
  'shared-model/score/parts/': 'has names that are read, of all languages in which parts are headed',
  'shared-model/catalogue/paper.ts': 'names sources, which nobody is shown',
  'shared-model/arrange/abbreviations.ts': 'has words that are read when an ensemble is typed',
  'shared-model/arrange/instrument-words.ts': 'has words that are read when an ensemble is typed',
  'shared-model/arrange/named-ensembles.ts': 'has words that are read when an ensemble is typed',
  'shared-model/arrange/spaced-words.ts': 'has words that are read when an ensemble is typed',
  'shared-model/checks/about/cited.ts': 'has titles of publications, which stay as they are',
  'shared-model/drawing/to-svg.ts': 'names typefaces',
  'electron/services/svg-lettering.ts': 'names typefaces',
  'electron/services/state-folder.ts': 'names a folder of the system',
  'electron/services/window-headers.ts': 'writes headers of HTTP',
  'electron/loopback/main.ts': 'speaks on the terminal',
};

test('nothing that reads like a sentence is said past the languages', () => {
  const files = ROOMS.flatMap(sourceFiles);
  const spoken = files.filter((file) => !Object.keys(EXEMPT).some((exempt) => file.startsWith(exempt)));
  const found = proseIn(spoken);
  expect(found.map(({ file, line, words }) => `${file}:${line} ${words}`)).toEqual([]);
});

test.each(Object.keys(EXEMPT))('%s is exempt because it has such words', (exempt) => {
  expect(proseIn(ROOMS.flatMap(sourceFiles).filter((file) => file.startsWith(exempt)))).not.toEqual([]);
});

describe('what reads like a sentence', () => {
  const wordsIn = (code: string, file = 'shared-model/score/odd.ts'): string[] => {
    const read = () => ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
    return proseIn([file], read).map(({ words }) => words);
  };

  it.each([
    ["const words = 'This is wrong.';", 'This is wrong.'],
    ['return `the ${a} is "${b}" here`;', 'the {0} is "{1}" here'],
    ['return t`${is ? "one of them" : count} left`;', 'one of them'],
    ["throw new FaultError('file.gone', 'It has gone.');", 'It has gone.'],
    ["const SAYS = { gone: 'It has gone.' };", 'It has gone.'],
    ["const source = { source: 'ISO 216, from memory' };", 'ISO 216, from memory'],
  ])('is found in %s', (code, words) => {
    expect(wordsIn(code)).toEqual([words]);
  });

  it.each([
    'return t`It has gone.`;',
    'return ngettext(msgid`${count} thing has gone`, `${count} things have gone`, count);',
    "import { gone } from 'it has gone';",
    "type Column = 'first bar' | 'last bar'; const column: Column = 'first bar';",
    "const NAMES = { 'first bar': 1 }; const found = NAMES['first bar'];",
    "if (name === 'first bar' || name.startsWith('and so on')) return;",
    "const NAMES = 'first, second, and so on'.split(', ');",
    "throw new Error('a bar that is not there');",
    'return `M ${x} ${y} L ${a} ${b} Z`;',
    "const id = 'stand-model'; const file = '../some/where.ts';",
  ])('is not found in %s', (code) => {
    expect(wordsIn(code)).toEqual([]);
  });

  it('may be the source of a number in the catalogue', () => {
    const code =
      "const ISO = 'ISO 216, from memory'; const paper = { source: ISO, sourceOf: { x: 'from memory' } };";
    expect(wordsIn(code, 'shared-model/catalogue/odd.ts')).toEqual([]);
    expect(wordsIn("const paper = { name: 'Odd paper' };", 'shared-model/catalogue/odd.ts')).toEqual([
      'Odd paper',
    ]);
  });
});
