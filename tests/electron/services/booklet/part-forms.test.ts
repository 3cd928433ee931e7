/** What pages of a part bring along into the file of a booklet: every kind of object, as its own file has it, and no page. */

import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFRawStream,
  PDFStream,
  type PDFObject,
} from '@cantoo/pdf-lib';
import { expect, it } from 'vitest';
import { looseRow, pagesOf } from '#model/pages/bindings/make.ts';
import { renderBooklet } from '../../../../electron/services/booklet.ts';
import { openPartPdf } from '../../../../electron/services/part-pdf.ts';

const name = (text: string): PDFName => PDFName.of(text);

/** A part of two pages; the resources of both are those that are made here. */
async function partWith(resources: (document: PDFDocument) => PDFDict): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const pages = [document.addPage([595, 842]), document.addPage([595, 842])];
  const own = document.context.register(resources(document));
  for (const page of pages) page.node.set(PDFName.Resources, own);
  pages[0]?.node.set(PDFName.Contents, document.context.register(document.context.stream('0 0 m 9 9 l S')));
  pages[1]?.node.delete(PDFName.Contents);
  return document.save({ useObjectStreams: false });
}

/** The forms that the first printed sheets draw with. */
async function printedForms(bytes: Uint8Array): Promise<PDFRawStream[]> {
  const part = await openPartPdf(bytes, 'part.pdf');
  const { bytes: booklet } = await renderBooklet({
    title: 'Test',
    binding: looseRow(pagesOf('part', 1, 2)),
    players: ['Horn'],
    page: null,
    paper: { name: 'large', width: 500, height: 700 },
    cues: [],
    now: new Date(0),
    sourceOf: ({ page }) => ({ part, page: page - 1 }),
  });
  const printed = await PDFDocument.load(booklet, { updateMetadata: false });
  return printed.getPages().flatMap(({ node }) => {
    const forms = node.Resources()?.lookup(name('XObject'));
    if (!(forms instanceof PDFDict)) return [];
    return forms.keys().flatMap((key) => {
      const form = forms.lookup(key);
      return form instanceof PDFRawStream ? [form] : [];
    });
  });
}

function resourcesOf(form: PDFRawStream | undefined): PDFDict {
  return (form?.dict.lookup(PDFName.Resources) ?? expect.unreachable()) as PDFDict;
}

const text = (object: PDFObject | undefined): string | undefined => object?.toString();

it('keeps names, numbers and strings to the last letter', async () => {
  const forms = await printedForms(
    await partWith(({ context }) =>
      context.obj({ 'A B/C#': [0.000001, -12345678, true, null, name('x y')], Words: '' }),
    ),
  );
  const own = resourcesOf(forms[0]).lookup(name('A B/C#'), PDFArray);
  expect(own.asArray().map(text)).toEqual(['0.000001', '-12345678', 'true', 'null', '/x#20y']);
});

it('takes over what pages share once, also when objects refer to one another in a circle', async () => {
  const forms = await printedForms(
    await partWith(({ context }) => {
      const [one, other] = [context.nextRef(), context.nextRef()];
      context.assign(one, context.obj({ Next: other }));
      context.assign(
        other,
        context.obj([one, context.register(context.stream('in a stream', { Odd: one }))]),
      );
      return context.obj({ One: one });
    }),
  );
  const [first, second] = forms.map((form) => resourcesOf(form).get(name('One')));
  expect(text(first)).toBe(text(second));
  const next = resourcesOf(forms[0]).lookup(name('One'), PDFDict).lookup(name('Next'), PDFArray);
  expect(text(next.get(0))).toBe(text(first));
  const stream = next.lookup(1, PDFStream) as PDFRawStream;
  expect(Buffer.from(stream.contents).toString()).toBe('in a stream');
  expect(text(stream.dict.get(name('Odd')))).toBe(text(first));
});

it('prints a page with nothing on it', async () => {
  const forms = await printedForms(await partWith(({ context }) => context.obj({})));
  expect(forms.map(({ contents }) => Buffer.from(contents).toString())).toEqual(['0 0 m 9 9 l S', '\n']);
});

it('leaves out pages that something on a page refers to, and what is nowhere', async () => {
  const forms = await printedForms(
    await partWith((document) =>
      document.context.obj({
        Page: document.getPage(1).ref,
        Pages: document.catalog.get(name('Pages')) ?? null,
        Gone: document.context.nextRef(),
      }),
    ),
  );
  const own = resourcesOf(forms[0]);
  expect(own.entries().map(([key, object]) => `${text(key)} ${text(object)}`)).toEqual([
    '/Page null',
    '/Pages null',
    '/Gone null',
  ]);
});
