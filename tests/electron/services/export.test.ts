import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { writeDocument } from '#model/file-format/write.ts';
import { aDocument, aPlayer, SETUP } from '../../helpers/build.ts';
import { testShell } from '../../helpers/services.ts';
import { readDxf } from '../../shared-model/drawing/dxf/reading.ts';

const text = writeDocument(aDocument(aPlayer({ name: '=1+1', x: 820, y: 1450 })));

function saving(name: string) {
  const { handlers, services, folder } = testShell();
  const path = join(folder, name);
  const save = (what: 'dxf' | 'marks' | 'inventory', replace = false, setup: string = SETUP) =>
    handlers['export.save']({ text, setup, what }, services.handles.handleOf(path), replace);
  return { path, save };
}

describe('export.save', () => {
  it('writes the plan for drawing programs', async () => {
    const { path, save } = saving('plan.dxf');
    expect(await save('dxf')).toMatchObject({ ok: true, value: { name: 'plan.dxf' } });
    const inserts = readDxf(readFileSync(path, 'utf8')).entities.filter(({ layer }) => layer === 'players');
    expect(inserts).toMatchObject([{ type: 'INSERT', x: 820, y: 1450 }]);
  });

  it('writes tables that a spreadsheet takes for what they are', async () => {
    const { path, save } = saving('marks.csv');
    expect((await save('marks')).ok).toBe(true);
    const written = readFileSync(path, 'utf8');
    expect(written.startsWith('\ufeff')).toBe(true);
    expect(Papa.parse<string[]>(written.slice(1)).data[1]?.slice(0, 2)).toEqual(['P1', `'=1+1 (player)`]);
  });

  it('replaces nothing unasked, and writes only files of its own ending', async () => {
    const { path, save } = saving('marks.csv');
    writeFileSync(path, 'mine');
    expect(await save('inventory')).toMatchObject({ ok: false, error: { code: 'file.exists' } });
    expect(await save('dxf', true)).toMatchObject({ ok: false, error: { code: 'file.wrongEnding' } });
    expect(readFileSync(path, 'utf8')).toBe('mine');
    expect((await save('inventory', true)).ok).toBe(true);
  });

  it('refuses a setup that is not there, and writes nothing', async () => {
    const { path, save } = saving('plan.dxf');
    expect(await save('dxf', false, 'setup-9')).toMatchObject({
      ok: false,
      error: { code: 'export.noSetup' },
    });
    expect(existsSync(path)).toBe(false);
  });
});
