import { describe, expect, it } from 'vitest';
import type { Handle } from '#contract/contract.ts';
import type { PdfPages } from '../../../../renderer/app/music/pdf-pages.ts';
import { PagePictures } from '../../../../renderer/app/paper/page-pictures.ts';

const oboe = 'oboe' as Handle;
const broken = 'broken' as Handle;

/** Draws when it is told to, and says what it was asked for. */
function fakePdf() {
  const asked: string[] = [];
  const opened: Handle[] = [];
  const waiting: ((drawn: boolean) => void)[] = [];
  let closed = 0;
  const pages: PdfPages = {
    count: 9,
    sizeOf: async () => ({ width: 595, height: 842 }),
    draw: (page, _, width) => {
      asked.push(`${page} at ${width}`);
      return new Promise((resolve) => waiting.push(resolve));
    },
    close: () => (closed += 1),
  };
  const open = async (handle: Handle) => {
    opened.push(handle);
    return handle === broken ? null : pages;
  };
  let arrived = 0;
  const pictures = new PagePictures({
    open,
    canvas: () => ({}) as HTMLCanvasElement,
    arrived: () => (arrived += 1),
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve));
  const finish = async (drawn = true) => {
    await settle();
    waiting.shift()?.(drawn);
    await settle();
  };
  return { pictures, asked, opened, finish, settle, closed: () => closed, arrived: () => arrived };
}

describe('pictures of pages', () => {
  it('are drawn once, in steps of width, from a file that is opened once', async () => {
    const { pictures, asked, opened, finish, arrived } = fakePdf();
    expect(pictures.of(oboe, 3, 400)).toBeUndefined();
    expect(pictures.of(oboe, 3, 401)).toBeUndefined();
    await finish();
    const picture = pictures.of(oboe, 3, 410);
    expect(picture).toBeTruthy();
    expect(pictures.of(oboe, 3, 400)).toBe(picture);
    expect(pictures.of(oboe, 3, 900)).toBeUndefined();
    await finish();
    expect(asked).toEqual(['3 at 512', '3 at 1024']);
    expect(arrived()).toBe(2);
    expect(opened).toEqual([oboe]);
  });

  it('come one after the other, the newest wish first, and forget sheets that were turned over', async () => {
    const { pictures, asked, finish } = fakePdf();
    for (const page of [1, 2, 3, 4, 5, 6]) pictures.of(oboe, page, 128);
    for (let count = 0; count < 6; count += 1) await finish();
    // Page 1 was being drawn already.
    expect(asked).toEqual(['1', '6', '5', '4', '3'].map((page) => `${page} at 128`));
    expect(pictures.of(oboe, 2, 128)).toBeUndefined();
    await finish();
    expect(asked.at(-1)).toBe('2 at 128');
  });

  it('that cannot be drawn are not tried again', async () => {
    const { pictures, asked, finish, settle } = fakePdf();
    pictures.of(broken, 1, 128);
    await settle();
    expect(pictures.of(broken, 1, 128)).toBeNull();
    pictures.of(oboe, 1, 128);
    await finish(false);
    expect(pictures.of(oboe, 1, 128)).toBeNull();
    expect(asked).toHaveLength(1);
  });

  it('are at most sixteen', async () => {
    const { pictures, asked, finish } = fakePdf();
    for (let page = 1; page <= 17; page += 1) {
      pictures.of(oboe, page, 128);
      await finish();
    }
    expect(pictures.of(oboe, 2, 128)).toBeTruthy();
    expect(pictures.of(oboe, 1, 128)).toBeUndefined();
    await finish();
    expect(asked).toHaveLength(18);
  });

  it('are none any more when it is closed, also while one is being drawn', async () => {
    const { pictures, finish, settle, closed } = fakePdf();
    pictures.of(oboe, 1, 128);
    await settle();
    pictures.close();
    await finish();
    expect(closed()).toBe(1);
    expect(pictures.of(oboe, 1, 128)).toBeUndefined();
    await settle();
    expect(closed()).toBe(1);
  });
});
