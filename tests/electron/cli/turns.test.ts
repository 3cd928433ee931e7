/** `standlines turns`, and booklets from its plans, on documents and scores on disk. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Music } from '#model/document/music.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { aDocument, aPagePlan, aPlayer, aScore, aStand, MUSIC, SIDE } from '../../helpers/build.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

const player = aPlayer({ name: 'Oboe' });
const stand = aStand({ y: 1500, sides: [{ ...SIDE, reader: player.id, pagesAcross: 2 }] });
/** Bars of 4 s; pages begin with bars 1, 2, 5 and 7; bars 3 and 4 are silent. */
const music: Music = {
  ...MUSIC,
  bars: Array.from({ length: 8 }, (_, index) => ({ number: String(index + 1), ticks: 8 })),
  order: [[0, 7]],
  parts: [
    {
      ...MUSIC.parts[0]!,
      silences: [
        [2, 0, 8],
        [3, 0, 8],
      ],
      pages: [0, 1, 4, 6].map((bar, index) => ({ page: index + 1, bar })),
    },
  ],
};
const withMusic = aDocument(player, stand, aScore({ players: [player.id], music }));
const without = aDocument(player, stand);

/** Six bars of 3/4 at 45 quarters a minute: 4 s each; the third and fourth are silent. */
const SCORE = `<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Cornett</part-name></score-part></part-list>
<part id="P1">${[1, 2, 3, 4, 5, 6].map(barOf).join('')}</part></score-partwise>`;

/** The same in a score of two, whose page breaks are no player's. */
const DUO = SCORE.replace(
  '</part-list>',
  '<score-part id="P2"><part-name>Sackbut</part-name></score-part></part-list>',
).replace(
  '</score-partwise>',
  `<part id="P2">${[1, 2, 3, 4, 5, 6].map(barOf).join('')}</part></score-partwise>`,
);

function barOf(number: number): string {
  const start = number === 1 ? '<attributes><divisions>1</divisions></attributes><sound tempo="45"/>' : '';
  const what = number === 3 || number === 4 ? '<rest/>' : '<pitch><step>G</step><octave>4</octave></pitch>';
  return `<measure number="${number}">${start}<note>${what}<duration>3</duration></note></measure>`;
}

const run = (document: Document, ...words: string[]) => runVerb('turns', document, ...words);

async function runVerb(verb: string, document: Document, ...words: string[]) {
  const folder = temporaryFolder();
  const path = join(folder, 'concert.standlines');
  writeFileSync(path, writeDocument(document));
  writeFileSync(join(folder, 'cornett.musicxml'), SCORE);
  writeFileSync(join(folder, 'duo.musicxml'), DUO);
  const complaints: string[] = [];
  let out = '';
  const code = await commandLine([verb, path, ...words.map((word) => word.replace('FOLDER', folder))], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state: folder,
    print: (text) => (out += text),
    complain: (line) => complaints.push(line),
  });
  return { code, out, complaints };
}

it('plans the turns of the music that is in the file', async () => {
  const { code, out, complaints } = await run(withMusic);
  expect(complaints).toEqual([]);
  expect(code).toBe(0);
  expect(out).toMatch(/^1 turn \(fewest possible\)$/m);
  expect(out).toMatch(/Oboe \(player 1\)/);
});

it('gives the same as data, with the instance', async () => {
  const { code, out } = await run(withMusic, '--json');
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({
    labels: { 'player-1': 'Oboe (player 1)', 'stand-1': 'stand 1' },
    instance: { players: [{ id: 'player-1', pages: 4 }] },
    status: 'planned',
    cost: { turns: 1, stations: 1 },
    proof: { turns: { proved: true } },
    plan: { turns: [{ player: 'player-1', station: 'stand-1' }] },
  });
});

it('takes a score, players and pages from the command line', async () => {
  const words = ['--score', 'FOLDER/cornett.musicxml', '--plays', 'Cornett=oboe', '--pages', 'cornett=1,2,5'];
  const { code, out, complaints } = await run(without, ...words, '--json');
  expect(complaints).toEqual([]);
  expect(code).toBe(0);
  const { plan, instance } = JSON.parse(out);
  expect(instance.players[0].readings).toEqual([
    { page: 1, from: 0, to: 4 },
    { page: 2, from: 4, to: 16 },
    { page: 3, from: 16, to: 24 },
  ]);
  // The only rest: bars 3 and 4, from 8 s to 16 s; page 3 has to be there a bar, 4 s, before it is read.
  expect(plan.turns).toHaveLength(1);
  expect(plan.turns[0].at).toBeGreaterThanOrEqual(8);
  expect(plan.turns[0].at + plan.turns[0].seconds).toBeLessThanOrEqual(12);
});

/** A concert with other music: its part has a cornett's name, and pages that begin with bars of these numbers. */
const other = (fields: Partial<Music> = {}, silences = music.parts[0]!.silences) => {
  const cornett = { ...music.parts[0]!, name: 'Cornett', silences };
  const old: Music = { ...music, ...fields, parts: [{ ...cornett, pages: [0, 1].map(pageFrom) }] };
  return aDocument(player, stand, aScore({ players: [player.id], music: old }));
};
const pageFrom = (bar: number, index: number) => ({ page: index + 1, bar });

it('plans no score with the pages of other music, and says what to give', async () => {
  const { code, out, complaints } = await run(other(), '--score', 'FOLDER/duo.musicxml');
  expect([code, out]).toEqual([2, '']);
  expect(complaints).toEqual([
    expect.stringMatching(
      /the pages of "Cornett" \(Oboe \(player 1\)\) are not known: .* as in --pages "Cornett=1,38"$/,
    ),
  ]);
  const told = await run(other(), '--score', 'FOLDER/duo.musicxml', '--pages', 'Cornett=1,5');
  expect(told.complaints).toEqual([
    expect.stringMatching(
      /Not kept of the music in FILE: the pages typed for "Cornett" belong to other music\./,
    ),
  ]);
  const { instance } = JSON.parse(
    (await run(other(), '--score', 'FOLDER/duo.musicxml', '--pages', 'Cornett=1,5', '--json')).out,
  );
  expect(instance.players[0].readings).toHaveLength(2);
});

it('keeps the pages of the same music in another file, and says which they are', async () => {
  // The six bars of 3/4 of the score, without a title.
  const bars = Array.from({ length: 6 }, (_, index) => ({ number: String(index + 1), ticks: 6 }));
  const same = other({ title: '', ticksPerQuarter: 2, bars, order: [[0, 5]] }, []);
  const { complaints, out } = await run(same, '--score', 'FOLDER/duo.musicxml', '--json');
  expect(complaints).toEqual([
    expect.stringMatching(
      /"Cornett" keeps the pages that FILE gives it: they begin with bars 1, 2\. --pages "Cornett=/,
    ),
  ]);
  expect(JSON.parse(out).instance.players[0].readings).toHaveLength(2);
});

const pair = aDocument(
  aPlayer({ name: 'Violin' }),
  aPlayer({ id: 'player-2', name: 'Violin', x: 1500 }),
  stand,
  aScore({
    music: { ...music, parts: ['Duo A', 'Duo B'].map((name) => ({ ...music.parts[0]!, id: name, name })) },
    players: [null, null],
  }),
);

it.each(['Violin (player 2)', 'violin (PLAYER 2)', 'player 2', 'player-2'])(
  'takes a player by his label, his mark and his id: "%s"',
  async (player) => {
    const { complaints } = await run(pair, '--plays', `Duo A=${player}`, '--plays', 'Duo B=player 1');
    // What is still complained of is the one stand, which player 2 does not read from.
    expect(complaints.join()).not.toMatch(/--plays/);
    const twice = await run(pair, '--plays', `Duo A=${player}`, '--plays', 'Duo B=player-2');
    expect(twice).toMatchObject({
      code: 2,
      complaints: [expect.stringMatching(/: Violin \(player 2\) cannot play both "Duo A" and "Duo B"$/)],
    });
  },
);

it('says what the house sees with each plan', async () => {
  const { out } = await run(withMusic, '--json');
  const [first] = JSON.parse(out).front;
  expect(first.sight).toMatchObject({ player: 'player-1', seesWell: 0.9, worst: { player: 'player-1' } });
  expect(first.sight.seenWell).toBeLessThanOrEqual(1);
  expect(first.sight.worst.share).toBeGreaterThan(0.5);
  expect((await run(withMusic)).out).toMatch(
    /^seen from the house: \d+ % of the places see at least 90 % of Oboe/m,
  );
});

/** A book of two leaves that shows page 1 and 2, then 3 and 4: turned once in the rest. */
const kept = (views: readonly (readonly (number | null)[])[], place = 2.1) =>
  aDocument(
    player,
    stand,
    aScore({ players: [player.id], music }),
    aPagePlan({
      stations: [
        { station: stand.id, kind: 'book', leaves: 1, pagesAcross: [2], stackSide: 0, views: [views] },
      ],
      turns: [{ station: stand.id, player: player.id, hand: 'right', place, fromState: 0, toState: 1 }],
      pins: [{ kind: 'page', station: stand.id, side: 0, state: 0, slot: 1, page: 2 }],
    }),
  );

it('judges the plan that is kept, and plans with its pins', async () => {
  const good = kept([
    [1, 2],
    [3, 4],
  ]);
  expect((await run(good)).out).toMatch(
    /^The kept plan keeps every rule: 1 turn, 1 station, 4 printed panels$/m,
  );
  const { instance, kept: told, plan } = JSON.parse((await run(good, '--json')).out);
  expect(told).toMatchObject({ keepsRules: true, violations: [], plan: { turns: [{ at: 8.4 }] } });
  expect(instance.pins).toEqual([{ kind: 'page', station: 'stand-1', side: 0, state: 0, slot: 1, page: 2 }]);
  expect(plan.stations[0].views[0][0][1]).toBe(2);
});

it('tells the kept plan first, which cards and booklets are made from, and then the one that it found anew', async () => {
  // Turned later in the rest than the search would, and too late.
  const document = kept(
    [
      [1, 2],
      [3, 4],
    ],
    2.5,
  );
  const { out } = await run(document);
  const [before = '', after = ''] = out.split(/^Searched anew, with the pins of the kept plan.*$/m);
  expect(before).toMatch(/^FILE keeps a plan: booklets and cue cards are made from it\./m);
  expect(before).toMatch(/^0:10 bar 3, Oboe \(player 1\) turns/m);
  expect(after).toMatch(/^0:08 bar 3, Oboe \(player 1\) turns/m);
  expect((await run(withMusic)).out).not.toMatch(/kept plan|keeps a plan|Searched anew/);
});

it('says what the times of turns and of check are made of, as they are not of the same', async () => {
  const { out: planned } = await run(withMusic);
  expect(planned).toMatch(
    /^To spare is what is left after the whole turn, made with care: the hand to the leaf,/m,
  );
  const turned = kept([
    [1, 2],
    [3, 4],
  ]);
  const { out: checked } = await runVerb('check', turned);
  expect(checked).toMatch(
    /turn a page at stand 1 .*, hand there in \d\.\d s \(with care \d\.\d s\); rest 8\.0 s$/m,
  );
});

it('says which rules the plan that is kept breaks', async () => {
  const bad = kept([
    [1, 2],
    [3, null],
  ]);
  const { out, code } = await run(bad);
  expect(code).toBe(0);
  expect(out).toMatch(
    /^The kept plan \(.*\) breaks a rule:\n {2}Oboe \(player 1\) needs page 4 from 0:20\.0 to 0:32\.0/m,
  );
  const { kept: told } = JSON.parse((await run(bad, '--json')).out);
  expect(told).toMatchObject({
    keepsRules: false,
    violations: [{ code: 'page-not-in-view', page: 4, subjects: ['player-1'] }],
  });
});

it('prints the booklet of the plan that is kept, not of the best one, and says when it breaks rules', async () => {
  const onePage = aPagePlan({
    stations: [
      {
        ...{ station: stand.id, kind: 'loose', leaves: 0, pagesAcross: [1], stackSide: 0 },
        views: [[[3]]],
      },
    ],
    turns: [],
  });
  const document = aDocument(player, stand, aScore({ players: [player.id], music }), onePage);
  const { code, out, complaints } = await runVerb('booklet', document, '--out', 'FOLDER/kept.pdf');
  expect(code).toBe(0);
  expect(complaints.join()).toMatch(/of the plan that FILE keeps.*kept page plan breaks rules/s);
  expect(out).toMatch(/, 1 sheet and 1 of instructions$/m);
  const best = await runVerb('booklet', withMusic, '--out', 'FOLDER/best.pdf');
  expect(best.complaints.join()).not.toMatch(/breaks rules|FILE keeps/);
  expect(best.out).toMatch(/, [2-9] sheets and 1 of instructions$/m);
});

it.each([
  [without, [], /has no music yet/],
  [without, ['--plays', 'Cornett=Oboe'], /has no music; give it with --score/],
  [without, ['--score', 'FOLDER/nothing.mxl'], /nothing\.mxl/],
  [withMusic, ['--plays', 'Oboe'], /is not of the form PART=/],
  [withMusic, ['--plays', 'Tuba=Oboe'], /there is no part "Tuba"; there are "Oboe"/],
  [withMusic, ['--plays', 'Oboe=Nobody'], /nobody is called "Nobody"; there are "Oboe \(player 1\)"/],
  [
    pair,
    ['--plays', 'Duo A=Violin'],
    /several are called "Violin"; write which: "Violin \(player 1\)", "Violin \(player 2\)"$/,
  ],
  [withMusic, ['--pages', 'Oboe=1,99'], /99/],
  [withMusic, ['--pages', 'Oboe=1', '--pages', 'Oboe=2'], /names part "Oboe" twice/],
] as const)('refuses in one line: %#', async (document, words, complaint) => {
  const { code, out, complaints } = await run(document, ...words);
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(complaints).toHaveLength(1);
  expect(complaints[0]).toMatch(complaint);
});

it('prints the paper of the plan: both sides of the two leaves of a book, with its cue', async () => {
  const { code, out, complaints } = await runVerb('booklet', withMusic, '--out', 'FOLDER/book.pdf');
  expect(complaints).toEqual([]);
  expect(code).toBe(0);
  expect(out).toMatch(/book\.pdf: ".+: stand 1", \d+ sheets and \d+ of instructions/);
});

it('asks whose paper when the plan uses several stands', async () => {
  const second = aPlayer({ id: 'player-2', name: 'Harp', x: 2000 });
  const theirs = aStand({
    id: 'stand-2',
    x: 2000,
    y: 1500,
    sides: [{ ...stand.sides[0], reader: second.id }],
  });
  const both = { ...music, parts: [music.parts[0]!, { ...music.parts[0]!, id: 'P2', name: 'Harp' }] };
  const players = [player.id, second.id];
  const document = aDocument(player, second, stand, theirs, aScore({ players, music: both }));
  const out = ['--out', 'FOLDER/a.pdf'];
  const asked = await runVerb('booklet', document, ...out);
  expect(asked).toMatchObject({
    code: 2,
    complaints: [expect.stringMatching(/the plan uses "stand 1", "stand 2"/)],
  });
  const wrong = await runVerb('booklet', document, ...out, '--stand', 'stand 7');
  expect(wrong).toMatchObject({ code: 2, complaints: [expect.stringMatching(/no paper on "stand 7"/)] });
  expect(await runVerb('booklet', document, ...out, '--stand', '2', '--paper', 'A3')).toMatchObject({
    code: 0,
  });
});

it('needs the part that a PDF is said to be', async () => {
  const words = ['--out', 'FOLDER/a.pdf', '--pdf', 'Tuba=FOLDER/tuba.pdf'];
  expect(await runVerb('booklet', withMusic, ...words)).toMatchObject({
    code: 2,
    complaints: [expect.stringMatching(/there is no part "Tuba"/)],
  });
});

it('prints cue cards of the plan beside what it tells', async () => {
  const { code, complaints } = await run(withMusic, '--cards', 'FOLDER/cards.pdf', '--paper', 'Letter');
  expect([code, complaints]).toEqual([0, []]);
  const refused = await run(withMusic, '--paper', 'Letter');
  expect(refused).toMatchObject({
    code: 2,
    complaints: [expect.stringMatching(/--paper goes with --cards/)],
  });
  const named = await run(withMusic, '--cards', 'FOLDER/cards.txt');
  expect(named).toMatchObject({
    code: 2,
    complaints: [expect.stringMatching(/--cards ".+" does not end in/)],
  });
});

it('names every player who has no plan, with what would make one for him', async () => {
  const other = aPlayer({ id: asId<'player'>('player-2'), name: 'Bassoon', x: 2500 });
  const sides = [{ ...SIDE, reader: other.id, pagesAcross: 2 }] as const;
  const second = aStand({ id: asId<'stand'>('stand-2'), x: 2500, y: 1500, sides });
  const part = { ...music.parts[0]!, silences: [] };
  const busy: Music = { ...music, parts: [part, part] };
  const score = aScore({ players: [player.id, other.id], music: busy });
  const blocked = aDocument(player, stand, other, second, score);
  const { code, out } = await run(blocked);
  expect(code).toBe(1);
  expect(out).toMatch(/^ {2}Oboe \(player 1\): \S/m);
  expect(out).toMatch(/^ {2}and Bassoon \(player 2\): \S/m);
  const told = JSON.parse((await run(blocked, '--json')).out) as { readonly blocked: unknown };
  expect(told).toMatchObject({ blocked: [{ players: [player.id] }, { players: [other.id] }] });
});
