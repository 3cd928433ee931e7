import { describe, expect, it } from 'vitest';
import { removePart, setPart } from '#model/commands/score-parts.ts';
import { setScore } from '#model/commands/score.ts';
import { asId } from '#model/document/ids.ts';
import type { Part } from '#model/document/music.ts';
import { scoreOf } from '#model/document/parts.ts';
import { freeTypedId, isTyped } from '#model/score/table/part-table.ts';
import { aDocument, aPdf, aPlayer, aScore, MUSIC, recordOf, SETUP } from '../../helpers/build.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const score = asId<'score'>('score-1');
const oboe = aPlayer({ name: 'Oboe' });
const harp = aPlayer({ id: 'player-2', name: 'Harp', x: 900 });
const TYPED: Part = { ...MUSIC.parts[0]!, id: 'typed', name: 'Harp', silences: [[3, 0, 8]] };
const first = asId<'player'>('player-1');
const second = asId<'player'>('player-2');
const document = frozen(
  aDocument(oboe, harp, aScore({ players: [first], pdfs: [aPdf({ file: 'first.pdf' })] })),
);
const withHarp = carriedOut(
  document,
  setPart(document, { score, part: null, content: TYPED, player: second }),
);

describe('parts of the music of a setup', () => {
  it('can be added to those of a score', () => {
    const { music, players, pdfs } = recordOf(withHarp, 'score-1', 'score');
    expect(music.parts).toEqual([MUSIC.parts[0], TYPED]);
    expect(players).toEqual([first, second]);
    expect(pdfs.map((pdf) => pdf?.file)).toEqual(['first.pdf', undefined]);
    expect(isTyped(music)).toBe(false);
    expect(freeTypedId(music)).toBe('typed-2');
  });

  it('are replaced one by one, and keep their PDF', () => {
    const content = { ...TYPED, id: 'P1', name: 'Oboe' };
    const after = carriedOut(withHarp, setPart(withHarp, { score, part: 0, content, player: second }));
    const { music, players, pdfs } = recordOf(after, 'score-1', 'score');
    expect(music.parts).toEqual([content, TYPED]);
    // A player plays one part.
    expect(players).toEqual([second, null]);
    expect(pdfs[0]?.file).toBe('first.pdf');
    expect(refusal(document, setPart(document, { score, part: 1, content, player: null }))).toBe(
      'Give one of the 1 parts.',
    );
  });

  it('must go with its bars', () => {
    const content = {
      ...TYPED,
      pages: [
        { page: 1, bar: 0 },
        { page: 2, bar: 9 },
      ],
    };
    expect(refusal(document, setPart(document, { score, part: null, content, player: null }))).toMatch(
      /give pages in the order of their first bars/,
    );
  });

  it('are taken out again, except the last', () => {
    const after = carriedOut(withHarp, removePart(withHarp, { score, part: 1 }));
    expect(recordOf(after, 'score-1', 'score')).toEqual(recordOf(document, 'score-1', 'score'));
    expect(refusal(after, removePart(after, { score, part: 0 }))).toMatch(/It is the only part/);
    expect(refusal(after, removePart(after, { score, part: 4 }))).toBe('Give one of the 1 parts.');
  });

  it('that were typed go on when the score is opened again with the same bars', () => {
    const opened = (music: typeof MUSIC) =>
      scoreOf(carriedOut(withHarp, setScore(withHarp, { setup: SETUP, music, source: 'a.mxl' })), SETUP);
    expect(opened({ ...MUSIC, title: 'Mended' })).toMatchObject({
      music: { title: 'Mended', parts: [{ name: 'Oboe' }, TYPED] },
      players: [first, second],
    });
    expect(
      opened({ ...MUSIC, bars: MUSIC.bars.with(3, { number: '5', ticks: 8 }) })?.music.parts,
    ).toHaveLength(1);
    // The score has the part now.
    const whole = { ...MUSIC, parts: [...MUSIC.parts, { ...TYPED, id: 'P2', silences: [] }] };
    expect(opened(whole)?.music.parts.map(({ id }) => id)).toEqual(['P1', 'P2']);
  });
});
