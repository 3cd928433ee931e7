import { describe, expect, it } from 'vitest';
import { readDocument } from '#model/file-format/read.ts';
import { expectedProblems, fixtureNames, fixtureText } from './fixtures.ts';
import { schemaVerdict } from './validator.ts';

const EXPECTED = expectedProblems();

describe('bad files', () => {
  it('all have an expected problem, and every problem a file', () => {
    expect(fixtureNames('bad').sort()).toEqual(Object.keys(EXPECTED).sort());
    expect(Object.keys(EXPECTED).length).toBeGreaterThan(90);
  });

  it.each(Object.entries(EXPECTED))('%s is refused in plain words', (name, { path, message }) => {
    const result = readDocument(fixtureText('bad', name));
    expect(result).toEqual({ ok: false, problem: { path, message } });
    expect(message).toMatch(/^[^\n]*\.$/);
  });

  it.each(Object.entries(EXPECTED))('%s gets the expected verdict of the JSON Schema', (name, { schema }) => {
    expect(schemaVerdict(fixtureText('bad', name))).toBe(schema);
  });

  it('leave no trace in the prototype of objects', () => {
    for (const name of fixtureNames('bad')) readDocument(fixtureText('bad', name));
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});
