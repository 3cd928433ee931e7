/** A validator that knows nothing of this program but the JSON Schema it publishes: ajv, draft 2020-12, strict. */

import type { AnySchemaObject, ValidateFunction } from 'ajv';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { Kind } from '#model/document/records.ts';
import { fileJsonSchema } from '#model/file-format/json-schema.ts';

const ajv = new Ajv2020({ strict: true });
ajv.addSchema({ ...fileJsonSchema(), $id: 'file' } as AnySchemaObject);
const validate = validatorOf('file');

function validatorOf(reference: string): ValidateFunction {
  const found = ajv.getSchema(reference);
  if (!found) throw new Error(`no schema ${reference}`);
  return found;
}

/** Whether a single record is as the schema says. */
export function schemaAcceptsRecord(kind: Kind, record: unknown): boolean {
  return validatorOf(`file#/$defs/${kind}`)(record) === true;
}

export function schemaVerdict(text: string): 'accepts' | 'refuses' | 'is not JSON' {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return 'is not JSON';
  }
  return validate(file) ? 'accepts' : 'refuses';
}

/** What the validator says is wrong with a file, for the message of a failing test. */
export function schemaErrors(text: string): string {
  return validate(JSON.parse(text)) ? '' : JSON.stringify(validate.errors?.slice(0, 5));
}
