import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readDocument } from '#model/file-format/read.ts';
import { readRecord } from '#model/file-format/record.ts';
import { KINDS, RECORD_SCHEMAS } from '#model/file-format/schema.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { expectedProblems, fixtureNames, fixtureText } from './fixtures.ts';

beforeAll(() => speakFrom('de', german));
afterAll(speakEnglish);

/** Words of the English sentences, and of the schema library's own, that no German sentence has. */
const ENGLISH = /\b(?:the|is|are|not|give|there|has|have|must|invalid|expected|received|missing)\b/i;

describe('a bad file in German', () => {
  const expected = expectedProblems();

  it.each(fixtureNames('bad'))('%s is refused in German words, at the same place', (name) => {
    const reading = readDocument(fixtureText('bad', name));
    if (reading.ok) throw new Error(`${name} was read`);
    const { message, path } = reading.problem;
    expect(path).toBe(expected[name]?.path);
    expect(unquoted(message)).not.toMatch(ENGLISH);
    expect(message).not.toBe(expected[name]?.message);
  });

  const oddities = [undefined, null, 7.5, -1e9, '', 'an odd text', true, [], {}, [1, 2], { odd: 1 }];

  const sound = soundRecords();

  it.each(KINDS)('no field of a %s gets the schema library’s own English', (kind) => {
    expect(sound.get(kind)).toBeDefined();
    for (const field of Object.keys(RECORD_SCHEMAS[kind].entries)) {
      for (const odd of field === 'kind' ? [] : oddities) {
        const result = readRecord({ ...sound.get(kind), [field]: odd });
        if (!result.ok) expect(unquoted(result.complaint.text)).not.toMatch(ENGLISH);
      }
    }
  });

  it('says what stands where, and what to do', () => {
    expect(messageOf('{"format":"standlines","version":4}')).toBe(
      'records fehlt; eine Liste von Datensätzen angeben.',
    );
    expect(messageOf('{"format": "standlines",\n "version": 4,}')).toBe(
      'Zeile 2, Spalte 15: vor "}" steht ein Komma zu viel.',
    );
    expect(messageOf('{"format":"standlines","version":99,"records":[]}')).toMatch(
      /^Die Datei stammt von einem neueren Standlines \(Dateiversion 99, dieses Programm liest bis \d+\);/,
    );
    const lamp = { id: 'lamp-1', kind: 'lamp', x: 0, y: 0, height: 'hoch' };
    expect(readRecord(lamp)).toEqual({
      ok: false,
      complaint: {
        field: 'height',
        text: ': "hoch" ist nicht erlaubt; eine Länge von 10 bis 10000 mm angeben',
      },
    });
  });
});

function messageOf(text: string): string {
  const reading = readDocument(text);
  return reading.ok ? '' : reading.problem.message;
}

/** One of each kind, from the files that are good. */
function soundRecords(): ReadonlyMap<string, object> {
  const records = fixtureNames('good').flatMap((name) => {
    const reading = readDocument(fixtureText('good', name));
    return reading.ok ? [...reading.document.records.values()] : [];
  });
  return new Map(records.map((record) => [record.kind, record]));
}

/** Without what is quoted from the file, names of fields and lists of them. */
function unquoted(text: string): string {
  return text
    .replace(/"(?:[^"\\]|\\.)*"/g, '')
    .replace(/(?:Feldern angeben|Felder sind hier).*/, '')
    .replace(/^records\S*/, '');
}
