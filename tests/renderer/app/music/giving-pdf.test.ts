/** What a part's PDF may say of itself, refused in words that name no place in the file. */

import { expect, it } from 'vitest';
import { type setPartPdf } from '#model/commands/score.ts';
import { asId } from '#model/document/ids.ts';
import { setPdf } from '../../../../renderer/app/music/giving-pdf.ts';
import type { Editor } from '../../../../renderer/state/editor.svelte.ts';
import { aDocument, aPdf, aPlayer, aScore } from '../../../helpers/build.ts';

const settled = aDocument(aPlayer(), aScore());
const which = { score: asId<'score'>('score-1'), part: 0 };
const carryOut = (outcome: ReturnType<typeof setPartPdf>) => (outcome.ok ? null : outcome);
const editor = { units: 'metric', session: { settled, carryOut } } as unknown as Editor;

it.each([0, -3, 0.9, 100.1, Number.NaN])('a staff is not %d mm high', (staffSize) => {
  expect(setPdf(editor, which, aPdf({ staffSize }))).toBe(
    'Give the height of a staff in millimetres, from 1 to 100; nothing when it is not known.',
  );
});

it.each([null, 1, 7.2, 100])('a staff may be %s mm high, as the file takes it', (staffSize) => {
  expect(setPdf(editor, which, aPdf({ staffSize }))).toBeNull();
});

it('other refusals name the part and no place in the file', () => {
  const said = setPdf(editor, which, aPdf({ file: '../oboe.pdf' }));
  expect(said).toMatch(/^score 1, PDF of part 1, file: .*name of a PDF without a folder/);
  expect(said).not.toMatch(/pdfs/);
});
