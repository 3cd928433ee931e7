/** Drives the parser and keeps strangers' files within bounds. No entity is expanded and nothing is ever fetched. */

import { SaxesParser } from 'saxes';
import {
  LONGEST_PROLOGUE,
  LONGEST_TEXT,
  MOST_ATTRIBUTES,
  MOST_DEPTH,
  MOST_ELEMENTS,
  MOST_XML,
} from '../limits.ts';
import { Refusal, type Problem } from '../problem.ts';
import type { Attributes, Element } from './element.ts';

/** Where the parser is; for messages. */
export interface Place {
  readonly line: number;
}

export class XmlReader {
  private readonly parser = new SaxesParser<{ xmlns: false; position: false }>({
    xmlns: false,
    position: false,
  });
  /** The wanted elements that are open, the innermost last; null: passed over. */
  private readonly open: (Element | null)[] = [];
  private readonly root: (name: string) => Element;
  private text = '';
  private elements = 0;
  private size = 0;

  /** `root` gives the grammar for the outermost element, or throws `Refusal`. */
  constructor(root: (name: string) => Element) {
    this.root = root;
    this.parser.on('error', (error) => this.notWellFormed(error.message));
    this.parser.on('doctype', (doctype) => this.checkDoctype(doctype));
    this.parser.on('opentag', ({ name, attributes }) => this.begin(name, attributes));
    this.parser.on('closetag', () => this.end());
    this.parser.on('text', (text) => this.take(text));
    this.parser.on('cdata', (text) => this.take(text));
  }

  get place(): Place {
    return { line: this.parser.line };
  }

  /** The next piece of the file. Throws `Refusal`. */
  write(chunk: string): void {
    this.size += chunk.length;
    if (this.size > MOST_XML) throw new Refusal({ code: 'xml.size', most: MOST_XML });
    this.parser.write(chunk);
    if (this.elements === 0 && this.size > LONGEST_PROLOGUE)
      throw new Refusal({ code: 'xml.prologue', most: LONGEST_PROLOGUE });
  }

  finish(): void {
    this.parser.close();
  }

  private begin(name: string, attributes: Attributes): void {
    this.elements += 1;
    if (this.elements > MOST_ELEMENTS) throw new Refusal({ code: 'xml.elements', most: MOST_ELEMENTS });
    if (this.open.length >= MOST_DEPTH) throw new Refusal({ code: 'xml.deep', most: MOST_DEPTH });
    const element = this.elementFor(name);
    this.text = '';
    this.open.push(element);
    checkAttributes(attributes);
    element?.open?.(attributes);
  }

  private elementFor(name: string): Element | null {
    if (this.open.length === 0) return this.root(name);
    return this.open.at(-1)?.children?.get(name) ?? null;
  }

  private end(): void {
    this.open.pop()?.close?.(this.text);
    this.text = '';
  }

  private take(text: string): void {
    if (!this.open.at(-1)?.close) return;
    this.text += text;
    if (this.text.length > LONGEST_TEXT) throw new Refusal({ code: 'xml.text', most: LONGEST_TEXT });
  }

  /** A document type is tolerated: it names the MusicXML DTD, which is not read. */
  private checkDoctype(doctype: string): void {
    if (/<!\s*entity/i.test(doctype)) throw new Refusal({ code: 'xml.entities', line: this.parser.line });
  }

  /** The parser would go on after an error; half a score is none. */
  private notWellFormed(message: string): never {
    const reason = message.replace(/\.$/, '');
    const problem: Problem = { code: 'xml.notWellFormed', line: this.parser.line, reason };
    throw new Refusal(problem);
  }
}

function checkAttributes(attributes: Attributes): void {
  let count = 0;
  for (const name in attributes) {
    count += 1;
    if (count > MOST_ATTRIBUTES) throw new Refusal({ code: 'xml.attributes', most: MOST_ATTRIBUTES });
    if ((attributes[name]?.length ?? 0) > LONGEST_TEXT)
      throw new Refusal({ code: 'xml.text', most: LONGEST_TEXT });
  }
}
