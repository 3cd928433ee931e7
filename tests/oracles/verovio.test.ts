/**
 * Scores read by this program and by verovio 6.3.0 (npm, WebAssembly): bars and seconds as written and as performed. It
 * is a second opinion: where the two differ it is said why, and the difference itself is checked, so that a change on
 * either side is noticed.
 */

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { musicFromScore } from '#model/score/music/from-score.ts';
import { inScoreOrder, performanceOf } from '#model/score/music/performance.ts';
import { readScoreBytes } from '../../electron/services/score-container.ts';
import {
  BEGIN,
  DIVISIONS,
  END,
  ending,
  endingStops,
  endTimes,
  filled,
  note,
  part,
  rest,
  scoreXml,
  sound,
  time,
} from '../shared-model/score/write-score.ts';
import { verovioReader, type Played } from './verovio.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/data/scores/', import.meta.url));
const isThere = existsSync(FOLDER);
if (!isThere) console.warn('NOT RUN in part: shared/data/scores does not lie beside this checkout.');

let verovio: (bytes: Uint8Array, expanded: boolean) => Played;
beforeAll(async () => {
  verovio = await verovioReader();
});

function ours(bytes: Uint8Array, expanded: boolean): Played {
  const outcome = musicFromScore(readScoreBytes(bytes, 'score').score);
  if (!outcome.ok) throw new Error(outcome.problem.code);
  const { played, seconds } = expanded ? performanceOf(outcome.value) : inScoreOrder(outcome.value);
  return { bars: played.length, seconds };
}

function agrees(bytes: Uint8Array, expanded: boolean): void {
  const [mine, theirs] = [ours(bytes, expanded), verovio(bytes, expanded)];
  expect(mine.bars).toBe(theirs.bars);
  expect(Math.abs(mine.seconds - theirs.seconds)).toBeLessThan(1e-3);
}

const fine = sound('fine="yes"');

/** Verovio takes the length of a note from how it is printed, and a tempo only with words that are printed. */
function printed(xml: string): Uint8Array {
  const types: Readonly<Record<string, string>> = {
    4: '<type>quarter</type>',
    8: '<type>half</type>',
    12: '<type>half</type><dot/>',
    16: '<type>whole</type>',
  };
  return new TextEncoder().encode(
    xml
      .replaceAll('<direction-type/>', '<direction-type><words>Tempo</words></direction-type>')
      .replace(/<duration>(\d+)<\/duration><\/note>/g, (all, duration: string) =>
        all.replace('</note>', `${types[duration] ?? ''}</note>`),
      ),
  );
}

describe('small scores of our own, as performed', () => {
  it.each([
    ['two repeats', ['', END, BEGIN, END, '']],
    ['a repeat with its beginning', ['', BEGIN, '', END, '']],
    ['a repeat made three times', ['', `${BEGIN}${endTimes(3)}`, '']],
    [
      'two endings',
      [
        BEGIN,
        `${ending('1')}${endingStops('1', 'repeat')}`,
        `${ending('2')}${endingStops('2', 'goes on')}`,
        '',
      ],
    ],
    [
      'lists of endings',
      [
        BEGIN,
        `${ending('1, 2')}${endingStops('1, 2', 'repeat')}`,
        `${ending('3')}${endingStops('3', 'goes on')}`,
        '',
      ],
    ],
    ['D.C. al Fine', ['', fine, '', sound('dacapo="yes"')]],
    [
      'D.S. al Coda',
      ['', sound('segno="a"'), sound('tocoda="b"'), sound('dalsegno="a"'), sound('coda="b"'), ''],
    ],
  ])('%s', (_, bars) => {
    const bytes = printed(filled(bars));
    agrees(bytes, false);
    agrees(bytes, true);
  });

  it('a second repeat without a sign at its beginning: verovio goes back to the very first bar', () => {
    const bytes = printed(filled(['', END, '', END, '']));
    expect(ours(bytes, true).bars).toBe(9);
    expect(verovio(bytes, true).bars).toBe(11);
  });

  // Within a bar verovio has one tempo only.
  it('pick-ups, changes of tempo between bars, and of metre', () => {
    const xml = scoreXml(
      part([
        `${DIVISIONS}${time('3', 4)}${sound('tempo="90"')}${note(1)}`,
        `${note(3)}`,
        `${sound('tempo="72"')}${note(1)}${rest(1)}${note(1)}`,
        `${time('6', 8)}${sound('tempo="144"')}${note(3)}`,
      ]),
    );
    agrees(printed(xml), false);
  });
});

/** Why the two differ as written; everything else agrees. */
const AS_WRITTEN: Readonly<Record<string, string>> = {
  'o06_weber_concertino_clarinet-piano.mxl': 'its parts disagree on the length of three bars',
  'o12_multimeasure_rests.xml': 'verovio counts several bars of rest as one',
  'o13_multimeasure_rests_meters.xml': 'verovio counts several bars of rest as one',
  'o17_senza_misura.xml': 'verovio drops the bar of rest in free metre',
  'o19_too_many_parts.xml': 'verovio reads nothing where the divisions are missing',
  'o20_part_without_id.xml': 'verovio reads nothing where the part has no id',
  'o21_synth_wind_trio_score_and_parts.mxl':
    'verovio counts six bars of rest as one, and not the metronome mark in half notes',
};

/** Further ones that differ as performed. */
const AS_PERFORMED: Readonly<Record<string, string>> = {
  'o02_saint-georges_quartet_op1no3.mxl':
    'verovio takes D.C. to the first movement and its endings by their place',
  'o03_haydn_quartet_op1no1.mxl': 'verovio makes one of the two D.C., and to the first movement',
  'o09_haydn_quartet_op9no1.mxl': 'verovio does not know M.D.C. from words and repeats otherwise',
};

const FILES = [
  'o01_telemann_two-recorders_dolce.xml',
  'o02_saint-georges_quartet_op1no3.mxl',
  'o03_haydn_quartet_op1no1.mxl',
  'o04_mozart_k464_minuet.mxl',
  'o05_mayer_op14_scherzo.mxl',
  'o06_weber_concertino_clarinet-piano.mxl',
  'o07_grandval_mignonne_voice-2pianos.mxl',
  'o08_kinkel_wiegenlied_voice-piano.mxl',
  'o09_haydn_quartet_op9no1.mxl',
  'o10_unfold_voltas.xml',
  'o11_unfold_dacapo.xml',
  'o12_multimeasure_rests.xml',
  'o13_multimeasure_rests_meters.xml',
  'o14_pickup_implicit.xml',
  'o15_page_and_system_breaks.xml',
  'o16_transposing_change.xml',
  'o17_senza_misura.xml',
  'o18_repeats_not_ended.xml',
  'o19_too_many_parts.xml',
  'o20_part_without_id.xml',
  'o21_synth_wind_trio_score_and_parts.mxl',
  'o22_synth_wind_trio_part_clarinet.musicxml',
];

describe.skipIf(!isThere)('scores of shared/data', () => {
  for (const file of FILES) {
    const why = AS_WRITTEN[file];
    it(`${file} as written: ${why ?? 'the same'}`, () => {
      compare(file, false, why !== undefined);
    });
    const whyPlayed = AS_PERFORMED[file] ?? why;
    it(`${file} as performed: ${whyPlayed ?? 'the same'}`, () => {
      compare(file, true, whyPlayed !== undefined);
    });
  }
});

function compare(file: string, expanded: boolean, differs: boolean): void {
  const bytes = readFileSync(`${FOLDER}${file}`);
  if (differs) expect(() => agrees(bytes, expanded)).toThrow();
  else agrees(bytes, expanded);
}
