/** What a PDF says of itself as XML. */

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

interface Metadata {
  info: Record<string, unknown>;
  endMetadata(): void;
}

/** pdfkit puts title and author into its XML as they are typed, so that "Duo & Trio" would leave a file that no reader of XML takes. */
export function escapeMetadata(document: PDFKit.PDFDocument): void {
  const own = document as unknown as Metadata;
  const write = own.endMetadata.bind(own);
  own.endMetadata = () => {
    // By now the other copy, which is no XML, has been written.
    own.info = Object.fromEntries(Object.entries(own.info).map(([key, value]) => [key, escaped(value)]));
    write();
  };
}

/** Without what XML 1.0 cannot hold at all: most controls and lone surrogates. */
function escaped(value: unknown): unknown {
  if (typeof value !== 'string') return value;
  return value
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>]/g, (character) => ESCAPES[character] ?? character);
}
