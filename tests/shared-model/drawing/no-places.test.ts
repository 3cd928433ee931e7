import { describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { figureSections } from '#model/drawing/sheet/sections.ts';
import { documentOf } from '#model/document/document.ts';
import { aConcert, aDocument, aPlatform, aPlayer, aSetup, SETUP } from '../../helpers/build.ts';
import { textsIn } from './drawings.ts';
import { plotRequest } from './plot-request.ts';

const wordsOf = (document: ReturnType<typeof aDocument>): string => {
  const request = plotRequest(document, { report: checkSetup(document, SETUP) });
  const blocks = figureSections(request, request, 180);
  return textsIn(blocks.flatMap((block) => block.draw({ x: 0, y: 0 })))
    .map(({ text }) => text)
    .join(' ');
};

describe('the figures of a concert without a house', () => {
  it('say that there are no places, and no share of them', () => {
    const words = wordsOf(documentOf([aConcert(), aSetup(), aPlatform(), aPlayer()]));
    expect(words).toContain('The house has no places yet');
    expect(words).not.toContain('100 %');
  });

  it('are shares as soon as there is a place', () => {
    const words = wordsOf(aDocument(aPlayer()));
    expect(words).not.toContain('no places');
    expect(words).toMatch(/\d %/);
  });
});
