/** Packs on the way, as a window meets them. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { PackOrder, PackState } from '#contract/contract.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { testShell, type TestShell } from '../../../helpers/services.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';

const ORDER: PackOrder = {
  ...{ text: writeDocument(EVENING), paper: 'A4', scale: null, sheets: ['cover', 'plot', 'cautions'] },
  ...{ formats: ['pdf'], dpi: 150 },
};

async function begun({ handlers }: TestShell, order: Parameters<(typeof handlers)['pack.begin']>[0] = ORDER) {
  const answer = await handlers['pack.begin'](order);
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value.job;
}

async function watched({ handlers }: TestShell, job: string): Promise<PackState[]> {
  const states: PackState[] = [];
  for (;;) {
    const answer = await handlers['pack.watch'](job, states.at(-1)?.step ?? -1);
    if (!answer.ok) throw new Error(answer.error.message);
    states.push(answer.value);
    if (['ready', 'failed'].includes(answer.value.doing)) return states;
  }
}

describe('a pack beside a window', () => {
  it('is told step by step, then what is in it', async () => {
    const shell = testShell();
    const states = await watched(shell, await begun(shell));
    const steps = states.map(({ step }) => step);
    expect(steps).toEqual(steps.toSorted((a, b) => a - b));
    expect(states.at(-1)).toMatchObject({
      doing: 'ready',
      fault: null,
      pack: {
        sheets: 4,
        entries: [
          { name: 'cover', piece: '', first: 1, count: 1 },
          { name: 'plot-1', piece: 'First', first: 2 },
          { name: 'plot-2', piece: 'Second', first: 3 },
          { name: 'cautions', first: 4 },
        ],
      },
    });
  });

  it('saves the very bytes that were looked at', async () => {
    const shell = testShell();
    const job = await begun(shell);
    await watched(shell, job);
    const looked = await shell.handlers['pack.bytes'](job);
    const path = join(shell.folder, 'pack.pdf');
    const handle = shell.services.handles.handleOf(path);
    expect(await shell.handlers['pack.save'](job, handle, false)).toMatchObject({ ok: true });
    expect(looked).toEqual({ ok: true, value: readFileSync(path).toString('base64') });
    expect(await shell.handlers['pack.save'](job, handle, false)).toMatchObject({ ok: false });
  });

  it('once stopped is gone, and nothing of it can be saved', async () => {
    const shell = testShell();
    const job = await begun(shell);
    expect(await shell.handlers['pack.stop'](job)).toEqual({ ok: true, value: null });
    for (const answer of [
      await shell.handlers['pack.watch'](job, -1),
      await shell.handlers['pack.bytes'](job),
    ])
      expect(answer).toMatchObject({ ok: false, error: { code: 'pack.unknown' } });
  });

  it('cannot be looked at before it is whole', async () => {
    const shell = testShell();
    const job = await begun(shell);
    expect(await shell.handlers['pack.bytes'](job)).toMatchObject({ error: { code: 'pack.notReady' } });
    await watched(shell, job);
  });

  it('tells why it failed', async () => {
    const shell = testShell();
    const states = await watched(shell, await begun(shell, { ...ORDER, sheets: ['plot-9'] }));
    expect(states.at(-1)).toMatchObject({ doing: 'failed', fault: { code: 'pack.unknownSheet' } });
    expect(await shell.handlers['pack.begin']({ ...ORDER, text: '{' })).toMatchObject({
      ok: false,
      error: { code: 'pack.notADocument' },
    });
  });

  it('in several forms is one zip of whole files, saved as such', async () => {
    const shell = testShell();
    const formats = ['pdf', 'svg', 'png', 'dxf', 'csv'] as const;
    const job = await begun(shell, { ...ORDER, sheets: ['cautions'], formats, dpi: 40 });
    const states = await watched(shell, job);
    expect(states.at(-1)).toMatchObject({ doing: 'ready', pack: { sheets: 1 } });
    const wrong = shell.services.handles.handleOf(join(shell.folder, 'pack.pdf'));
    expect(await shell.handlers['pack.save'](job, wrong, false)).toMatchObject({
      error: { code: 'file.wrongEnding' },
    });
    const path = join(shell.folder, 'pack.zip');
    const handle = shell.services.handles.handleOf(path);
    expect(await shell.handlers['pack.save'](job, handle, false)).toMatchObject({ ok: true });
    const files = unzipSync(readFileSync(path));
    expect(Object.keys(files).sort()).toEqual([
      ...['01-cautions.png', '01-cautions.svg', 'inventory.csv'],
      ...['marks-1.csv', 'marks-2.csv', 'pack.pdf'],
      ...['plan-1.dxf', 'plan-2.dxf'],
    ]);
    const head = (name: string): string => Buffer.from(files[name] ?? []).toString('latin1', 0, 5);
    expect(head('pack.pdf')).toBe('%PDF-');
    expect(head('01-cautions.svg')).toBe('<?xml');
    expect(head('01-cautions.png').slice(1, 4)).toBe('PNG');
    // Nothing that is there is replaced unless that was said.
    expect(await shell.handlers['pack.save'](job, handle, false)).toMatchObject({ ok: false });
    expect(await shell.handlers['pack.save'](job, handle, true)).toMatchObject({ ok: true });
  });

  it('of plans and tables alone needs no sheets', async () => {
    const shell = testShell();
    const job = await begun(shell, { ...ORDER, sheets: [], formats: ['csv'] });
    expect((await watched(shell, job)).at(-1)).toMatchObject({ doing: 'ready', pack: { sheets: 0 } });
  });

  it('tells of a resolution that is too high', async () => {
    const shell = testShell();
    const states = await watched(shell, await begun(shell, { ...ORDER, formats: ['png'], dpi: 700 }));
    expect(states.at(-1)).toMatchObject({ doing: 'failed', fault: { code: 'png.resolution' } });
  });

  it('is forgotten when newer ones take its place', async () => {
    const shell = testShell();
    const jobs = [];
    for (let count = 0; count < 4; count++) jobs.push(await begun(shell, { ...ORDER, sheets: ['cautions'] }));
    expect(await shell.handlers['pack.watch'](jobs[0] ?? '', -1)).toMatchObject({ ok: false });
    await watched(shell, jobs[3] ?? '');
  });
});
