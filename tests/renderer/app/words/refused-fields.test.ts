import { afterEach, describe, expect, it } from 'vitest';
import type { Kind } from '#model/document/records.ts';
import { fieldWords } from '#model/file-format/field-words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { formsWords } from '../../../../renderer/app/words/forms.ts';
import { formsWords as germanForms } from '../../../../renderer/app/words/german/forms.ts';
import { packWords } from '../../../../renderer/app/words/pack.ts';
import { packWords as germanPack } from '../../../../renderer/app/words/german/pack.ts';
import { programmeWords } from '../../../../renderer/app/words/programme.ts';
import { programmeWords as germanProgramme } from '../../../../renderer/app/words/german/programme.ts';
import { underlayWords } from '../../../../renderer/app/words/underlay.ts';
import { underlayWords as germanUnderlay } from '../../../../renderer/app/words/german/underlay.ts';
import type { Widened } from '../../../../renderer/app/words/widened.ts';

interface Window {
  readonly forms: Widened<typeof formsWords>;
  readonly pack: Widened<typeof packWords>['pack'];
  readonly programme: Widened<typeof programmeWords>['programme'];
  readonly underlay: Widened<typeof underlayWords>['underlay'];
}

const ENGLISH: Window = {
  forms: formsWords,
  pack: packWords.pack,
  programme: programmeWords.programme,
  underlay: underlayWords.underlay,
};

const GERMAN: Window = {
  forms: germanForms,
  pack: germanPack.pack,
  programme: germanProgramme.programme,
  underlay: germanUnderlay.underlay,
};

afterEach(speakEnglish);

/** Every field that is typed into the window, and the label that it has there. */
function labels({ forms, pack, programme, underlay }: Window): readonly [Kind, string, string][] {
  const { properties, player, stand, things, platform, block, concert } = forms;
  return [
    ['concert', 'name', concert.name],
    ['concert', 'venue', concert.venue],
    ['concert', 'date', concert.date],
    ['concert', 'revision', concert.revision],
    ['concert', 'author', concert.author],
    ['concert', 'limits.seesWell', concert.seesWell],
    ['concert', 'limits.houseShare', concert.houseShare],
    ['concert', 'limits.edgeDistance', concert.edgeDistance],
    ['concert', 'limits.routeWidth', concert.routeWidth],
    ['concert', 'contacts[0].role', `${pack.contact(1)}, ${pack.contactRole}`],
    ['concert', 'contacts[0].reachedAt', `${pack.contact(1)}, ${pack.contactReached}`],
    ['platform', 'height', platform.height],
    ['platform', 'outline[1].x', `${platform.corner(1)}, ${properties.across}`],
    ['door', 'name', properties.name],
    ['door', 'offset', platform.doorOffset],
    ['door', 'width', platform.doorWidth],
    ['seatBlock', 'rows', block.rows],
    ['seatBlock', 'seatsPerRow', block.seatsPerRow],
    ['seatBlock', 'seatPitch', block.seatPitch],
    ['seatBlock', 'rowDepth', block.rowDepth],
    ['seatBlock', 'riser', block.riser],
    ['seatBlock', 'floor', block.floor],
    ['seatBlock', 'curveRadius', block.curve],
    ['seatBlock', 'frontRail', block.rail],
    ['seatBlock', 'eyeHeight', block.eyeHeight],
    ['seatBlock', 'firstRow', block.firstRow],
    ['player', 'x', properties.across],
    ['player', 'y', properties.depth],
    ['player', 'facing', properties.facing],
    ['player', 'person.size.percentile', player.percentile],
    ['player', 'person.size.stature', player.stature],
    ['player', 'person.shoes', player.shoes],
    ['player', 'person.measured.eyeHeight', player.eyeHeight],
    ['player', 'person.measured.shoulderHeight', player.shoulderHeight],
    ['player', 'person.measured.armLength', player.armLength],
    ['player', 'chair.height', player.seatHeight],
    ['instrument', 'freeTime', player.freeTime],
    ['stand', 'facing', properties.deskFacing],
    ['stand', 'lip', stand.lip],
    ['stand', 'tilt', stand.tilt],
    ['stand', 'deskWidth', stand.deskWidth],
    ['stand', 'deskHeight', stand.deskHeight],
    ['stand', 'sides[0].pagesAcross', stand.pages],
    ['stand', 'sides[1].pagesAcross', `${stand.side(1)}, ${stand.pages}`],
    ['stand', 'sides[0].staffSize', stand.staffSize],
    ['stand', 'sides[0].freeTime', stand.freeTime],
    ['instrumentStand', 'height', things.takeHeight],
    ['table', 'width', properties.width],
    ['table', 'depth', properties.depthSize],
    ['lamp', 'height', properties.height],
    ['setup', 'changeTime', programme.changeTime],
    ['underlay', 'x', underlay.across],
    ['underlay', 'y', underlay.upDown],
    ['underlay', 'opacity', underlay.strength],
  ];
}

const plain = (words: string): string => words.toLowerCase();

describe('a refused field is called as its label in the window', () => {
  it.each(labels(ENGLISH))('in English: %s %s is "%s"', (kind, path, label) => {
    expect(plain(fieldWords(kind, path))).toBe(plain(label));
  });

  it.each(labels(GERMAN))('in German: %s %s is "%s"', (kind, path, label) => {
    speakFrom('de', german);
    expect(plain(fieldWords(kind, path))).toBe(plain(label));
  });
});
