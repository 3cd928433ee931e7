/** Scores as a window gets them, over a real disk. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Result, ScoreFile } from '#contract/contract.ts';
import { testShell } from '../../helpers/services.ts';
import { musicXml } from '../../helpers/written-score.ts';

const FURROWS = musicXml({
  title: 'Furrows',
  bars: 12,
  quartersPerMinute: 96,
  parts: [{ name: 'Viola', rests: [[5, 6]] }],
});
const LOAM = FURROWS.replace('Furrows', 'Loam');

async function read(content: string | Uint8Array, name: string, root: string | null = null) {
  const { handlers, services, folder } = testShell();
  const path = join(folder, name);
  writeFileSync(path, content);
  const answer: Result<ScoreFile> = await handlers['score.read'](services.handles.handleOf(path), root);
  return { answer, path };
}

/** A compressed file with two scores. */
function both(): Uint8Array {
  const rootfiles = ['furrows.xml', 'loam.xml'].map((path) => `<rootfile full-path="${path}"/>`).join('');
  return zipSync({
    'META-INF/container.xml': strToU8(
      `<?xml version="1.0"?><container><rootfiles>${rootfiles}</rootfiles></container>`,
    ),
    'furrows.xml': strToU8(FURROWS),
    'loam.xml': strToU8(LOAM),
  });
}

describe('score.read', () => {
  it('answers with the music, plain enough for JSON, and leaves the file as it is', async () => {
    const { answer, path } = await read(FURROWS, 'furrows.musicxml');
    if (!answer.ok) throw new Error(answer.error.message);
    expect(answer.value).toMatchObject({ name: 'furrows.musicxml', root: null, roots: [] });
    expect(answer.value.music).toMatchObject({ title: 'Furrows', order: [[0, 11]] });
    expect(answer.value.music.parts.map(({ name }) => name)).toEqual(['Viola']);
    expect(JSON.parse(JSON.stringify(answer.value))).toEqual(answer.value);
    expect(readFileSync(path, 'utf8')).toBe(FURROWS);
  });

  it('takes the first of several scores, or the one that is asked for, and names all', async () => {
    const first = (await read(both(), 'two.mxl')).answer;
    expect(first).toMatchObject({
      ok: true,
      value: { root: 'furrows.xml', roots: ['furrows.xml', 'loam.xml'], music: { title: 'Furrows' } },
    });
    const second = (await read(both(), 'two.mxl', 'loam.xml')).answer;
    expect(second).toMatchObject({ ok: true, value: { root: 'loam.xml', music: { title: 'Loam' } } });
  });

  it.each([
    ['no score', '<html><body>Furrows</body></html>', 'score.notMusicXml'],
    ['no XML', 'Furrows', 'score.unknown'],
    ['empty', '', 'score.empty'],
    ['broken off', FURROWS.slice(0, -300), 'xml.notWellFormed'],
  ])('refuses in words what is %s', async (_, content, code) => {
    const { answer } = await read(content, 'furrows.xml');
    if (answer.ok) throw new Error('it was read');
    expect(answer.error.code).toBe(code);
    expect(answer.error.message).toMatch(/^"furrows\.xml".*\.$/);
  });

  it('refuses a file that is gone and a root that is not there', async () => {
    const { handlers, services, folder } = testShell();
    const gone = services.handles.handleOf(join(folder, 'gone.mxl'));
    expect(await handlers['score.read'](gone, null)).toMatchObject({ error: { code: 'file.notFound' } });
    const { answer } = await read(both(), 'two.mxl', 'clay.xml');
    expect(answer).toMatchObject({ ok: false, error: { code: 'score.noRoot' } });
  });
});
