/** One record read from anything: its schema, then the rules that no schema can say. */

import * as v from 'valibot';
import type { AnyRecord } from '../document/records.ts';
import { fieldName, missing, notAllowed, unknownField, type Complaint } from './complaint.ts';
import { ruleBroken } from './record-rules.ts';
import { measureTold } from './measure-words.ts';
import { isKind, KINDS, schemaOf } from './schema.ts';
import { t } from '../words/say.ts';

export type RecordResult =
  { readonly ok: true; readonly record: AnyRecord } | { readonly ok: false; readonly complaint: Complaint };

/** The record with every default filled in and its fields in their fixed order, or what is wrong with it. */
export function readRecord(raw: unknown): RecordResult {
  const kind = kindOf(raw);
  if (!isKind(kind)) return refused(kindComplaint(raw, kind));
  const result = v.safeParse(schemaOf(kind), raw, { abortEarly: true });
  if (!result.success)
    return refused(measureTold(kind, complaintOf(result.issues[0], raw), result.issues[0]));
  const broken = ruleBroken(result.output);
  return broken ? refused(broken) : { ok: true, record: result.output };
}

function refused(complaint: Complaint): RecordResult {
  return { ok: false, complaint };
}

function kindOf(raw: unknown): unknown {
  return typeof raw === 'object' && raw !== null && 'kind' in raw ? raw.kind : undefined;
}

function kindComplaint(raw: unknown, kind: unknown): Complaint {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return notAllowed('', raw, t`give an object with an id, a kind and the fields of that kind`);
  }
  const advice = t`give one of ${KINDS.join(', ')}`;
  return kind === undefined ? missing('kind', advice) : notAllowed('kind', kind, advice);
}

/** The first thing that a schema has to say against a value. */
export function complaintOf(issue: v.BaseIssue<unknown>, raw: unknown): Complaint {
  const keys = (issue.path ?? []).map((item) => item.key);
  const field = keys.reduce<string>(extendPath, '');
  const isAboutKey = issue.path?.at(-1)?.origin === 'key';
  if (isAboutKey && issue.expected === 'never') {
    return unknownField(field, issue.message);
  }
  if (isAboutKey) return missing(field, issue.message);
  return notAllowed(field, valueAt(raw, keys), issue.message);
}

function extendPath(path: string, key: unknown): string {
  if (typeof key === 'number') return `${path}[${key}]`;
  const name = fieldName(String(key));
  return path === '' ? name : `${path}.${name}`;
}

function valueAt(raw: unknown, keys: readonly unknown[]): unknown {
  return keys.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string, unknown>)[String(key)]
        : undefined,
    raw,
  );
}
