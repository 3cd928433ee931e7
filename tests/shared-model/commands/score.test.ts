import { describe, expect, it } from 'vitest';
import { keptParts } from '#model/commands/keep-parts.ts';
import { assignPart, setPartPdf, setScore } from '#model/commands/score.ts';
import { scoreOf } from '#model/document/parts.ts';
import { asId } from '#model/document/ids.ts';
import type { Music, Part } from '#model/document/music.ts';
import type { ScoreRecord } from '#model/document/records.ts';
import { aDocument, aPdf, aPlayer, aScore, aSetup, MUSIC, recordOf, SETUP } from '../../helpers/build.ts';
import { carriedOut, refusal } from './check-laws.ts';
import { frozen } from '../document/freeze.ts';

const duo = {
  ...MUSIC,
  parts: ['Oboe', 'Harp'].map((name, index) => ({ ...MUSIC.parts[0]!, id: `P${index + 1}`, name })),
};
const finer = ({ bars, ticksPerQuarter }: Music) => ({
  ticksPerQuarter: 3 * ticksPerQuarter,
  bars: bars.map((bar) => ({ ...bar, ticks: 3 * bar.ticks })),
});
const oboe = aPlayer({ name: 'oboe ' });
const harp = aPlayer({ id: 'player-2', name: 'Somebody', x: 900 });

describe('the music of a setup', () => {
  it('is given to the players whose names the parts have, and to nobody else', () => {
    const document = frozen(aDocument(oboe, harp));
    const after = carriedOut(document, setScore(document, { setup: SETUP, music: duo, source: 'duo.mxl' }));
    expect(scoreOf(after, SETUP)).toMatchObject({ source: 'duo.mxl', players: ['player-1', null] });
  });

  it('takes the place of the music before, and who played a part of that name still does', () => {
    const document = frozen(aDocument(oboe, harp, aScore({ music: duo, players: [null, asId('player-2')] })));
    const music = { ...duo, parts: duo.parts.toReversed() };
    const after = carriedOut(document, setScore(document, { setup: SETUP, music, source: 'again.mxl' }));
    expect(scoreOf(after, SETUP)).toMatchObject({ id: 'score-1', players: ['player-2', 'player-1'] });
  });

  it('is told who plays which part: each player one', () => {
    const document = frozen(aDocument(oboe, harp, aScore({ music: duo, players: [asId('player-1'), null] })));
    const order = { score: asId<'score'>('score-1'), part: 1, player: asId<'player'>('player-1') };
    const after = carriedOut(document, assignPart(document, order));
    expect(recordOf(after, 'score-1', 'score').players).toEqual([null, 'player-1']);
    expect(refusal(document, assignPart(document, { ...order, part: 2 }))).toBe('Give one of the 2 parts.');
    expect(refusal(document, assignPart(document, { ...order, player: asId('player-9') }))).toMatch(
      /there is no record of that id/,
    );
  });

  it('of another setup needs players of that setup', () => {
    const document = frozen(aDocument(oboe, aSetup({ id: 'setup-2' })));
    const outcome = setScore(document, { setup: asId('setup-2'), music: duo, source: '' });
    expect(scoreOf(carriedOut(document, outcome), asId('setup-2'))?.players).toEqual([null, null]);
  });

  const solo = (id: string, name: string, fields: Partial<Part> = {}): Part => ({
    ...MUSIC.parts[0]!,
    id,
    name,
    ...fields,
  });
  const again = (before: readonly Part[], after: readonly Part[], fields: Partial<ScoreRecord> = {}) => {
    const known = aScore({
      music: { ...MUSIC, parts: before },
      players: [asId('player-1'), asId('player-2')],
      pdfs: [aPdf({ file: 'first.pdf' }), aPdf({ file: 'second.pdf' })],
      ...fields,
    });
    const document = frozen(aDocument(aPlayer(), harp, known));
    const music = { ...MUSIC, parts: after };
    const { dropped } = keptParts(music, known, []);
    const outcome = setScore(document, { setup: SETUP, music, source: 'again.mxl' });
    const record = scoreOf(carriedOut(document, outcome), SETUP)!;
    return {
      players: record.players,
      files: record.pdfs.map((pdf) => pdf?.file),
      parts: record.music.parts,
      dropped,
    };
  };

  it.each([
    ['of one name', 'Horn', 'Horn'],
    ['without a name', '', ''],
    ['named now', '', 'Horn'],
  ])('opened again keeps players and PDFs of parts %s', (_, a, b) => {
    const parts = [solo('P1', a), solo('P2', b)];
    const kept = { players: ['player-1', 'player-2'], files: ['first.pdf', 'second.pdf'], dropped: [] };
    expect(again(parts, parts)).toMatchObject(kept);
    expect(again(parts, parts.toReversed())).toMatchObject({
      players: kept.players.toReversed(),
      files: kept.files.toReversed(),
    });
    const renamed = parts.map((part, index) => ({ ...part, name: `Voice ${index}` }));
    expect(again(parts, renamed)).toMatchObject(kept);
  });

  it('goes by the name when the ids are others, and by the place when there is neither', () => {
    const named = again([solo('P1', 'Oboe'), solo('P2', 'Harp')], [solo('P1', 'Harp'), solo('P2', 'Oboe')]);
    expect(named.players).toEqual(['player-2', 'player-1']);
    const unnamed = again([solo('P1', ''), solo('P2', '')], [solo('a', ''), solo('b', '')]);
    expect(unnamed.players).toEqual(['player-1', 'player-2']);
  });

  it('keeps pages that were typed where the score has none, and says what it drops', () => {
    const typed = solo('P1', 'Oboe');
    const ofScore = solo('P1', 'Oboe', { ownPages: false, pages: [{ page: 1, bar: 0 }] });
    const kept = again([typed, solo('P2', 'Harp')], [ofScore]);
    expect(kept.parts[0]).toEqual(typed);
    expect(kept.dropped).toEqual(['"Harp" is not there any more, nor are its player and its PDF']);
    const playedOnly = again([typed, solo('P2', 'Harp')], [ofScore], { pdfs: [null, null] });
    expect(playedOnly.dropped).toEqual(['"Harp" is not there any more, nor is its player']);

    const bars = MUSIC.bars.map((bar, index) => (index === 2 ? { ...bar, number: '9' } : bar));
    const known = aScore({ music: { ...MUSIC, parts: [typed] } });
    expect(keptParts({ ...MUSIC, bars, parts: [ofScore] }, known, [])).toMatchObject({
      music: { parts: [ofScore] },
      dropped: ['the pages typed for "Oboe" begin with other bars now'],
    });
  });

  const opened = (fields: Partial<Music>, known = aScore({ music: duo, pdfs: [aPdf(), null] })) => {
    const parts = duo.parts.map((part) => ({ ...part, ownPages: false, pages: [{ page: 1, bar: 0 }] }));
    return keptParts({ ...duo, parts, ...fields }, known, [oboe, harp]);
  };
  const otherBars = MUSIC.bars.map((bar) => ({ ...bar, ticks: bar.ticks + 2 }));

  it.each([
    ['another title and other bars', { title: 'Another', bars: otherBars }],
    ['no title and other bars', { title: '', bars: otherBars }],
    ['no title and a bar more', { title: '', bars: [...MUSIC.bars, MUSIC.bars[0]!] }],
  ])('gives music with %s neither pages nor PDFs of the one before', (_, fields) => {
    const { music, pdfs, dropped } = opened(fields);
    expect(music.parts.map(({ ownPages }) => ownPages)).toEqual([false, false]);
    expect(pdfs).toEqual([null, null]);
    expect(dropped).toEqual([
      'the pages typed for "Oboe" belong to other music',
      'the pages typed for "Harp" belong to other music',
      'the PDF of "Oboe" belongs to other music',
    ]);
  });

  it.each([
    ['a further bar', { bars: [...MUSIC.bars, MUSIC.bars[0]!] }],
    ['finer ticks', { title: '', ...finer(MUSIC) }],
  ])('with %s is still the same piece', (_, fields) => {
    const { music, pdfs, dropped } = opened(fields);
    expect(music.parts.map(({ pages }) => pages)).toEqual(duo.parts.map(({ pages }) => pages));
    expect(pdfs).toEqual([aPdf(), null]);
    expect(dropped).toEqual([]);
  });

  it('of another piece goes to players by the names of parts, not by the ids that files give them', () => {
    const known = aScore({ music: duo, players: [asId('player-1'), asId('player-2')] });
    const parts = ['Lute', 'Harp'].map((name, index) => solo(`P${index + 1}`, name, { silences: [] }));
    expect(opened({ title: 'Another', parts }, known).players).toEqual([null, 'player-2']);
    expect(opened({ parts }, known).players).toEqual(['player-1', 'player-2']);
  });

  it('names the PDF of a part, and forgets it', () => {
    const document = frozen(aDocument(oboe, aScore()));
    const order = { score: asId<'score'>('score-1'), part: 0, pdf: aPdf() };
    const after = carriedOut(document, setPartPdf(document, order));
    expect(recordOf(after, 'score-1', 'score').pdfs).toEqual([aPdf()]);
    const without = carriedOut(after, setPartPdf(after, { ...order, pdf: null }));
    expect(recordOf(without, 'score-1', 'score').pdfs).toEqual([null]);
    expect(refusal(document, setPartPdf(document, { ...order, part: 1 }))).toBe('Give one of the 1 parts.');
    const path = { ...order, pdf: aPdf({ file: '../oboe.pdf' }) };
    expect(refusal(document, setPartPdf(document, path))).toMatch(/name of a PDF without a folder/);
  });
});
