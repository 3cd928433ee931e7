/**
 * The published JSON Schema (draft 2020-12) of a `.standlines` file, made from the schemas that the reader uses. It
 * says all that can be said of a file by its structure; what hangs together across records (ids that exist, doors
 * that fit their wall, outlines that do not cross) only the reader checks.
 */

import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import { kindWord } from '../document/labels.ts';
import type { Kind } from '../document/records.ts';
import { MOST_RECORDS, MOST_SETUPS } from './limits.ts';
import { modelsOf } from './models.ts';
import { FORMAT, KINDS, schemaOf, VERSION } from './schema.ts';

const DESCRIPTION =
  'A concert platform with its house, and one or more setups of players and things on it. All lengths are in ' +
  'millimetres, angles in degrees, times in seconds. The origin is where the centre line meets the front edge of ' +
  'the platform, on its floor; x grows towards stage left, y upstage, heights upwards. A field with a default may ' +
  'be left out. Every id that a record names must be the id of a record of the right kind, in the same setup or ' +
  'there for the whole concert.';

export function fileJsonSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Standlines concert',
    description: DESCRIPTION,
    type: 'object',
    properties: {
      format: { title: 'Format', description: 'Marks the file as one of Standlines.', const: FORMAT },
      version: { title: 'Version', description: 'Version of the file format.', const: VERSION },
      records: recordsSchema(),
    },
    required: ['format', 'version', 'records'],
    additionalProperties: false,
    $defs: Object.fromEntries(KINDS.map((kind) => [kind, recordSchema(kind)])),
  };
}

function recordsSchema(): JsonSchema {
  return {
    title: 'Records',
    description: 'All that the concert consists of, in any order.',
    type: 'array',
    maxItems: MOST_RECORDS,
    items: { oneOf: KINDS.map((kind) => ({ $ref: `#/$defs/${kind}` })) },
    allOf: [count('concert', 1, 1), count('platform', 1, 1), count('setup', 1, MOST_SETUPS)],
  };
}

/** `minContains` and `maxContains` came with draft 2019-09 and are not in the converter's types. */
function count(kind: Kind, least: number, most: number): JsonSchema {
  const contains = { type: 'object', properties: { kind: { const: kind } }, required: ['kind'] };
  return { contains, minContains: least, maxContains: most } as JsonSchema;
}

function recordSchema(kind: Kind): JsonSchema {
  const { $schema: _, ...schema } = toJsonSchema(schemaOf(kind), {
    target: 'draft-2020-12',
    typeMode: 'input',
    // A pattern is written for the "u" flag, with which JSON Schema reads every pattern.
    overrideAction: ({ valibotAction, jsonSchema }) => {
      // What a field measures is for sentences; a validator knows its bounds.
      if (valibotAction.type === 'metadata') return withoutMeasure(jsonSchema);
      return 'requirement' in valibotAction && valibotAction.requirement instanceof RegExp
        ? { ...jsonSchema, pattern: valibotAction.requirement.source }
        : undefined;
    },
  });
  nameModels(schema, modelsOf(kind));
  return { title: kindWord(kind), description: KIND_DESCRIPTIONS[kind], ...schema, ...ACROSS_FIELDS[kind] };
}

function withoutMeasure(schema: JsonSchema): JsonSchema {
  return Object.fromEntries(Object.entries(schema).filter(([name]) => name !== 'measure'));
}

/** Offers the catalogue's ids as examples wherever the record names a model. */
function nameModels(schema: JsonSchema, models: readonly string[]): void {
  for (const [name, inner] of Object.entries(schema.properties ?? {})) {
    if (typeof inner !== 'object') continue;
    if (name === 'model') inner.examples = [...models];
    nameModels(inner, models);
    for (const option of inner.anyOf ?? []) if (typeof option === 'object') nameModels(option, models);
  }
}

/** What one field asks of another. */
const ACROSS_FIELDS: Partial<Record<Kind, JsonSchema>> = {
  stand: {
    if: { properties: { form: { const: 'backToBack' } }, required: ['form'] },
    then: { properties: { sides: { type: 'array', minItems: 2 } } },
    else: { properties: { sides: { type: 'array', maxItems: 1 } } },
  },
};

const KIND_DESCRIPTIONS: Readonly<Record<Kind, string>> = {
  concert: 'The concert itself and what its director asks for. Exactly one in a file.',
  platform: 'What is played on. Exactly one in a file.',
  door: 'An opening in an edge of the platform: a door, steps, a ramp.',
  seatBlock:
    'Rows of seats. (x, y) is the middle of the front row, its facing the way its seats look; further rows lie behind.',
  place: 'A single place in the house.',
  storage: 'Where things wait that are not on the platform. (x, y) mostly lies beyond its edge.',
  stock: 'How many there are of one thing, of the venue’s own and borrowed.',
  underlay:
    'A picture or drawing under the plan to trace from, its lower left corner at (x, y). Never printed.',
  setup: 'One piece of music (or act) with its own placing of people and things. At least one in a file.',
  player: 'Somebody who plays. (x, y) is the vertical axis of head and shoulders.',
  instrument: 'An instrument that is carried, in a player’s hands or waiting on a stand or table.',
  stand: 'A music stand with one desk, or two back to back.',
  score:
    'The music of one setup, as a score or a table gives it, and who plays what of it. At most one for a setup.',
  pagePlan:
    'The page plan of one setup: which page is where on its stands, who turns when, and what another planning has to keep. At most one for a setup.',
  instrumentStand: 'A peg or stand that an instrument waits on.',
  table: 'A table or tray, for instance for small percussion.',
  seat: 'A chair, stool or bench that no player of the setup sits on.',
  piano: 'A piano. (x, y) is the middle of its case.',
  largeInstrument: 'An instrument that stands on the floor, such as a marimba, timpani or a harp.',
  lamp: 'A lamp, with the cable to its socket.',
  riser: 'A rectangular level on the platform; what stands on it stands higher.',
  group: 'Things that are taken hold of together; of one thing alone, what keeps it locked or hidden.',
  shape: 'Anything else with an outline and a height, from the floor up: a column, a flight case, a lectern.',
};
