/** Freezes a document to its last field, so that whoever changes it in place is caught. */

import type { Document } from '#model/document/document.ts';

export function frozen(document: Document): Document {
  for (const record of document.records.values()) deepFreeze(record);
  return document;
}

export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const inner of Object.values(value)) deepFreeze(inner);
  return value;
}
