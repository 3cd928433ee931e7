/** A validator that knows nothing of this program but the JSON Schema it publishes: ajv, draft 2020-12, strict. */

import { Ajv2020 } from 'ajv/dist/2020.js';
import { fileJsonSchema } from '#model/file-format/json-schema.ts';

const validate = new Ajv2020({ strict: true }).compile({ ...fileJsonSchema() });

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
