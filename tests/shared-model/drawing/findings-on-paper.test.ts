import { describe, expect, it } from 'vitest';
import type { Finding } from '#model/checks/finding.ts';
import { notTriedHere } from '#model/checks/remedy-words.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { findingBlocks } from '#model/drawing/sheet/findings.ts';
import { plotSheets } from '#model/drawing/plot-sheet.ts';
import { aDocument, aPlayer, SETUP } from '../../helpers/build.ts';
import { textsIn } from './drawings.ts';
import { plotRequest } from './plot-request.ts';
import { sixty } from './sixty-items.ts';

const DOCUMENT = aDocument(aPlayer());
const [FOUND] = checkSetup(aDocument(aPlayer({ x: 20_000 })), SETUP).findings;

function toldOf(count: number, advice = 'Try: move it.') {
  if (!FOUND) throw new Error('a player off the platform is found');
  const findings = Array.from({ length: count }, (_, index): Finding => ({
    ...FOUND,
    subjects: [`p${index}`],
  }));
  const request = plotRequest(DOCUMENT, {
    report: { ...checkSetup(DOCUMENT, SETUP), findings },
    explain: ({ subjects }) => ({ headline: `Head ${subjects[0]}`, text: 'Body.', advice }),
  });
  const blocks = findingBlocks(request, 400);
  return textsIn(blocks.flatMap((block) => block.draw({ x: 0, y: 0 }))).map(({ text }) => text);
}

describe('findings on paper', () => {
  it('tells all of a few alike in full', () => {
    expect(toldOf(4).filter((text) => text.startsWith('Body.'))).toHaveLength(4);
  });

  it('tells of many alike the first in full, some by their headlines, the others by their number', () => {
    const words = toldOf(40);
    expect(words.filter((text) => text.startsWith('Body.'))).toHaveLength(3);
    expect(words).toContain('37 more of this kind');
    const whole = words.join(' ');
    expect(whole).toContain('Head p3');
    expect(whole).toMatch(/Head p14; and 25 more\./);
    expect(whole).not.toContain('Head p15');
  });

  it('says nothing of what the window could do', () => {
    expect(toldOf(1, `${notTriedHere()} The venue decides.`).join(' ')).toContain('Body. The venue decides.');
  });
});

describe('a plot on which not every name has room', () => {
  it('says whose, as it does of the figures', () => {
    const document = { records: new Map(sixty.records) };
    for (const record of sixty.records.values())
      if (record.kind === 'player')
        document.records.set(record.id, { ...record, name: `Somebody with quite a long name ${record.id}` });
    const result = plotSheets(plotRequest(document));
    if (!result.ok) throw new Error(result.message);
    const plan = textsIn(result.sheets[0]?.children ?? []).map(({ text }) => text);
    const named = plan.filter((text) => text.startsWith('Somebody')).length;
    expect(named).toBeLessThan(30);
    expect(plan.join(' ')).toMatch(/No room here for the names of P\d/);
  });
});
