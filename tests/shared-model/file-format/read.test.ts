import { describe, expect, it } from 'vitest';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';

describe('a document of every kind of record', () => {
  it('reads back as it was written', () => {
    const document = documentOfEveryKind();
    const text = writeDocument(document);
    const result = readDocument(text);
    if (!result.ok) throw new Error(result.problem.message);
    expect(result.document).toEqual(document);
    expect(result.notes).toEqual([]);
    expect(writeDocument(result.document)).toBe(text);
  });
});
