/** The files of tests/fixtures. */

import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('../../fixtures/', import.meta.url);

export function fixtureNames(folder: 'good' | 'old' | 'bad'): string[] {
  return readdirSync(new URL(`${folder}/`, FOLDER)).filter((name) => name.endsWith('.standlines'));
}

export function fixtureText(folder: 'good' | 'old' | 'bad', name: string): string {
  return readFileSync(new URL(`${folder}/${name}`, FOLDER), 'utf8');
}

/** The concert that a newcomer sees first. */
export function demoText(): string {
  return readFileSync(new URL('../../assets/demo-concert.standlines', FOLDER), 'utf8');
}

export interface ExpectedProblem {
  /** What a validator says of the file that knows only the JSON Schema. */
  readonly schema: 'accepts' | 'refuses' | 'is not JSON';
  readonly path: string;
  readonly message: string;
}

export function expectedProblems(): Readonly<Record<string, ExpectedProblem>> {
  const text = readFileSync(new URL('bad/expected.json', FOLDER), 'utf8');
  return JSON.parse(text) as Record<string, ExpectedProblem>;
}
