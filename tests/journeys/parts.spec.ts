/** Players without a score: tables pasted, PDFs given, pages left out, a staff measured by keyboard, all kept. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import PDFDocument from 'pdfkit';
import { DARK_SHARE, faxScan, jbig2Scan, jpeg2000Scan, scannedPdf } from '../helpers/scanned-pdf.ts';
import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

const MM = 72 / 25.4;

/** Where the first staff of every page lies, millimetres from the top, and how high it is: an odd height of our own. */
const STAFF = { top: 75, height: 6.4 };

/** A title page, then `pages` pages with a staff. Our own. */
function partPdf(title: string, pages: number): Promise<Buffer> {
  const document = new PDFDocument({ autoFirstPage: false });
  const pieces: Buffer[] = [];
  document.on('data', (piece: Buffer) => pieces.push(piece));
  for (let page = 0; page <= pages; page += 1) {
    document.addPage({ size: 'A4', margin: 40 });
    document
      .font('Helvetica-Bold')
      .fontSize(18)
      .text(page === 0 ? title : `${title} ${page}`, 60, 60);
    for (let line = 0; page > 0 && line < 5; line += 1) {
      const y = (STAFF.top + (line * STAFF.height) / 4) * MM;
      document.moveTo(50, y).lineTo(545, y).lineWidth(0.4).stroke();
    }
  }
  document.end();
  return new Promise((resolve) => document.on('end', () => resolve(Buffer.concat(pieces))));
}

/** 60 bars in 2:23. */
const CLARINET =
  'page\tfirst bar\tlast bar\tseconds\tfree hands\n1\t1\t20\t45\t18-20\n2\t21\t44\t1:00\t40-44\n3\t45\t60\t38\t\n';
const VIOLA = '1\t1\t30\t\t\t9-12\n2\t31\t61\t\t\t\n';

/** As the clipboard would: a test may not read it. */
async function paste(cell: Locator, words: string): Promise<void> {
  await cell.focus();
  await cell.evaluate((input, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, words);
}

const table = (editor: Editor, name: string) =>
  editor.dialog.getByRole('table', { name: `Table of ${name}` });
const music = (page: Page) => page.getByRole('button', { name: 'Music', exact: true });
const printedPart = (editor: Editor, part: string) =>
  editor.dialog.first().getByRole('region', { name: part, exact: true }).getByRole('button');

async function choosePdf(editor: Editor, file: string): Promise<void> {
  await editor.dialog
    .last()
    .getByRole('button', { name: /^(Choose a|Another) PDF/ })
    .click();
  await editor.dialog.last().getByRole('button', { name: file, exact: true }).dblclick();
}

/** Dark pixels in the middle of each picture: nothing is drawn on a page that only pretends. */
function inkOf(picture: Locator): Promise<number> {
  return picture.locator('canvas').evaluate((canvas: HTMLCanvasElement) => {
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    let dark = 0;
    for (let at = 0; at < data.length; at += 4)
      if ((data[at] ?? 255) < 128 && data[at + 3] === 255) dark += 1;
    return dark;
  });
}

for (const [colorScheme, width, height] of [
  ['light', 1440, 900],
  ['dark', 1100, 700],
] as const) {
  test(`two parts without a score, ${colorScheme}`, async ({ editor, page, program }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height });
    writeFileSync(join(program.home, 'clarinet.pdf'), await partPdf('Clarinet', 3));
    writeFileSync(join(program.home, 'viola.pdf'), await partPdf('Viola', 2));
    writeFileSync(join(program.home, 'letter.pdf'), 'Dear Viola');
    writeFileSync(join(program.home, 'viola.csv'), VIOLA.replace('61', '60').replaceAll('\t', ';'));
    await editor.showSetup('2b Hedgerow Dances');

    await music(page).click();
    await editor.dialog.getByRole('button', { name: 'Type tables…' }).click();
    await paste(table(editor, 'Clarinet').getByLabel('Page, row 2'), CLARINET);
    await editor.dialog.getByRole('button', { name: 'Another player' }).click();
    await paste(table(editor, 'Viola').getByLabel('Page, row 2'), VIOLA);
    const told = editor.dialog.last().getByRole('status');
    await expect(told).toHaveText(
      'Viola: It plays 61 bars, and "Clarinet" 60 bars; both have to go through the same bars.',
    );
    await expect(editor.dialog.getByRole('button', { name: 'Take over' })).toBeDisabled();
    await table(editor, 'Viola').getByLabel('Free hands, row 3').fill('70');
    await expect(told).toContainText('Row 3, column "free hands": "70" cannot be used');
    expect(await axeComplaints(page), 'tables').toEqual([]);
    // What the table should have been lies in a file.
    await editor.dialog
      .getByRole('region', { name: 'Viola' })
      .getByRole('button', { name: 'From a CSV file…' })
      .click();
    await editor.dialog.last().getByRole('button', { name: 'viola.csv' }).dblclick();
    await expect(told).toHaveText('60 bars, 2:23.0. The tables go together.');
    await editor.dialog.getByRole('button', { name: 'Take over' }).click();
    await expect(editor.dialog).toHaveCount(1);
    await expect(editor.dialog).toContainText('12.5\u00a0s at 1:32.5, bars 40 to 44');

    // No PDF is refused in words; a PDF shows its pages.
    await printedPart(editor, 'Clarinet').click();
    await choosePdf(editor, 'letter.pdf');
    await expect(editor.dialog.getByRole('alert')).toHaveText('"letter.pdf" is not a PDF.');
    await choosePdf(editor, 'clarinet.pdf');
    await expect(editor.dialog.last()).toContainText('4 pages, 210 x 297\u00a0mm');
    const map = editor.dialog.getByLabel('Pages of the part');
    await expect(map).toHaveValue('1-4');
    for (const number of [1, 2])
      await expect
        .poll(() => inkOf(editor.dialog.getByRole('img', { name: `PDF page ${number}` })))
        .toBeGreaterThan(number === 1 ? 5 : 100);
    expect(await axeComplaints(page), 'PDF').toEqual([]);

    // The title page is left out by keyboard; the order can be typed.
    await editor.dialog.getByLabel('Use PDF page 1').focus();
    await page.keyboard.press('Space');
    await expect(map).toHaveValue('2-4');
    await map.fill('2-9');
    await page.keyboard.press('Enter');
    await expect(editor.dialog.getByRole('alert')).toHaveText(
      'Give pages from 1 to 4, such as 2-6, 8; a dash for none.',
    );
    await map.fill('2, -, 4');
    await page.keyboard.press('Enter');
    await expect(map).toHaveValue('2, –, 4');

    // The marks are moved to the outer lines of the staff with arrow keys.
    await editor.dialog.getByRole('button', { name: 'Measure: PDF page 2' }).focus();
    await page.keyboard.press('Enter');
    for (const [mark, target] of [
      ['Top line', STAFF.top],
      ['Bottom line', STAFF.top + STAFF.height],
    ] as const) {
      const button = editor.dialog.getByRole('button', { name: mark });
      await button.focus();
      const at = async () =>
        Number(/([\d.]+) mm from the top/.exec((await button.getAttribute('aria-label')) ?? '')?.[1]);
      for (let tries = 0; tries < 100 && Math.abs((await at()) - target) > 0.06; tries += 1)
        await page.keyboard.press((await at()) > target ? 'ArrowUp' : 'ArrowDown');
    }
    await expect(editor.dialog.last()).toContainText('Staff height 6.4\u00a0mm, staff space 1.6\u00a0mm');
    expect(await axeComplaints(page), 'ruler').toEqual([]);
    await editor.dialog.getByRole('button', { name: 'Use this height' }).click();
    await expect(editor.dialog.getByLabel('Staff height, printed')).toHaveValue('6.4');
    await editor.dialog.last().getByRole('button', { name: 'Done' }).click();
    await printedPart(editor, 'Viola').click();
    await choosePdf(editor, 'viola.pdf');
    await expect(editor.dialog.getByLabel('Pages of the part')).toHaveValue('1-3');
    await editor.dialog.getByRole('button', { name: 'Begin here: PDF page 2' }).click();
    await expect(editor.dialog.getByLabel('Pages of the part')).toHaveValue('2-3');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await expect(editor.dialog).toHaveCount(0);

    // The check of the page knows how large the staff is, and the planner plans.
    await expect(editor.findings).toContainText('6.4');
    await page.getByRole('button', { name: 'Page turns', exact: true }).click();
    await expect(page.getByRole('region', { name: 'Page turns', exact: true })).toContainText(/turns?\s/);

    await editor.saveAs('hedgerow');
    const saved = readFileSync(join(program.home, 'hedgerow.standlines'), 'utf8');
    expect(saved).not.toContain(program.home);
    // The window opens again what it worked on.
    await page.reload();
    await editor.open(program.address());
    await expect(editor.title).toContainText('hedgerow.standlines');
    await editor.showSetup('2b Hedgerow Dances');
    await music(page).click();
    await printedPart(editor, 'Clarinet').click();
    await expect(editor.dialog.getByLabel('Pages of the part')).toHaveValue('2, –, 4');
    await expect(editor.dialog.getByLabel('Staff height, printed')).toHaveValue('6.4');
    // Found beside the file without asking.
    await expect(editor.dialog.getByRole('img', { name: 'PDF page 4' })).toBeVisible();
    await page.keyboard.press('Escape');

    // Another file of that name is not taken for it.
    writeFileSync(join(program.home, 'clarinet.pdf'), await partPdf('Clarinet again', 2));
    await printedPart(editor, 'Clarinet').click();
    await expect(editor.dialog.last()).toContainText('its content has changed');
    await editor.dialog.getByRole('button', { name: 'Take it as it is now' }).click();
    await expect(editor.dialog.last()).toContainText('3 pages');
    await expect(editor.dialog.getByLabel('Pages of the part')).toHaveValue('2');
    await page.keyboard.press('Escape');

    // The tables are as they were typed.
    await editor.dialog.getByRole('button', { name: 'Tables…' }).click();
    await expect(table(editor, 'Viola').getByLabel('Last bar, row 3')).toHaveValue('60');
    await expect(table(editor, 'Clarinet').getByLabel('Free hands, row 3')).toHaveValue('40-44');
  });
}

test('scans and type that no file holds are shown', async ({ editor, page, program }) => {
  writeFileSync(join(program.home, 'scan.pdf'), scannedPdf([jpeg2000Scan(), faxScan(), jbig2Scan()]));
  writeFileSync(join(program.home, 'times.pdf'), await typedPdf('Times-Roman'));
  await music(page).click();
  await editor.dialog
    .getByRole('button', { name: /^Printed part/ })
    .first()
    .click();
  await choosePdf(editor, 'scan.pdf');
  for (const number of [1, 2, 3]) {
    const picture = editor.dialog.getByRole('img', { name: `PDF page ${number}` });
    await expect.poll(() => darkShare(picture), `page ${number}`).toBeGreaterThan(0.8 * DARK_SHARE);
    expect(await darkShare(picture), `page ${number}`).toBeLessThan(1.2 * DARK_SHARE);
  }
  await choosePdf(editor, 'times.pdf');
  await expect
    .poll(() => darkShare(editor.dialog.getByRole('img', { name: 'PDF page 1' })))
    .toBeGreaterThan(0.002);
});

/** As the eye takes it: mean darkness of the picture. */
function darkShare(picture: Locator): Promise<number> {
  return picture.locator('canvas').evaluate((canvas: HTMLCanvasElement) => {
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    let dark = 0;
    for (let at = 0; at < data.length; at += 4)
      dark += (data[at + 3] ?? 0) === 0 ? 0 : 1 - (data[at] ?? 255) / 255;
    return dark / (data.length / 4);
  });
}

/** Its letters are not in the file: whoever shows it has to have them. */
function typedPdf(face: string): Promise<Buffer> {
  const document = new PDFDocument({ size: 'A4' });
  const pieces: Buffer[] = [];
  document.on('data', (piece: Buffer) => pieces.push(piece));
  document.font(face).fontSize(60).text('Tutti divisi', 60, 200);
  document.end();
  return new Promise((resolve) => document.on('end', () => resolve(Buffer.concat(pieces))));
}
