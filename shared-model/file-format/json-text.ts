/**
 * Looks over a JSON text before it is parsed: where exactly it stops being JSON (RFC 8259), and whether it is built
 * to do harm. One pass without recursion, so that no nesting can overflow the stack. The engine's own parser reads
 * the values afterwards; it reports faults in words that differ from engine to engine, takes the last of two equal
 * keys in silence, and accepts any depth.
 */

import { MOST_DEPTH, MOST_FIELDS, MOST_VALUES } from './limits.ts';
import { t } from '../words/say.ts';

export interface TextFault {
  /** Index in the text. */
  readonly at: number;
  readonly message: string;
}

/** Keys that would reach into an object's prototype. */
const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export function findTextFault(text: string): TextFault | null {
  return new JsonWalk(text).run();
}

/** Line and column, both from 1, of an index in the text. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  for (let end = text.indexOf('\n'); end !== -1 && end < at; end = text.indexOf('\n', start)) {
    line++;
    start = end + 1;
  }
  return { line, column: at - start + 1 };
}

/** What may come next: `first` members may also be the end of an empty list or object. */
type Expected = 'value' | 'firstValue' | 'key' | 'firstKey' | 'colon' | 'commaOrEnd' | 'nothing';

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /[A-Za-z_$-][A-Za-z0-9_$]*/y;
const UNICODE_ESCAPE = /\\u[0-9a-fA-F]{4}/y;

class JsonWalk {
  private at = 0;
  private values = 0;
  private expected: Expected = 'value';
  /** One entry for each open list (null) or object (its keys so far). */
  private readonly open: (Set<string> | null)[] = [];

  constructor(private readonly text: string) {}

  run(): TextFault | null {
    for (;;) {
      this.skipSpace();
      if (this.at >= this.text.length) return this.expected === 'nothing' ? null : this.truncated();
      const fault = this.step(this.text.charCodeAt(this.at));
      if (fault) return fault;
    }
  }

  private step(code: number): TextFault | null {
    switch (this.expected) {
      case 'nothing':
        return this.fault(t`there is more text after the end of the document; remove it`);
      case 'colon':
        return code === COLON ? this.pass('value') : this.fault(t`expected ":" after the key`);
      case 'commaOrEnd':
        return this.commaOrEnd(code);
      case 'key':
      case 'firstKey':
        return this.key(code);
      default:
        return this.value(code);
    }
  }

  private commaOrEnd(code: number): TextFault | null {
    const inObject = this.open.at(-1) !== null;
    if (code === COMMA) return this.pass(inObject ? 'key' : 'value');
    if (code === (inObject ? CLOSE_BRACE : CLOSE_BRACKET)) return this.close();
    return this.fault(t`expected "," or "${inObject ? '}' : ']'}"`);
  }

  private key(code: number): TextFault | null {
    if (code === CLOSE_BRACE && this.expected === 'firstKey') return this.close();
    if (code === CLOSE_BRACE) return this.fault(tooManyCommas('}'));
    if (code !== QUOTE) return this.fault(t`expected a key in double quotes`);
    const start = this.at;
    const fault = this.string();
    if (fault) return fault;
    this.expected = 'colon';
    return this.checkKey(start);
  }

  private checkKey(start: number): TextFault | null {
    const raw = this.text.slice(start, this.at);
    const key: unknown = raw.includes('\\') ? JSON.parse(raw) : raw.slice(1, -1);
    const keys = this.open.at(-1);
    if (typeof key !== 'string' || !keys) return null;
    if (FORBIDDEN_KEYS.has(key)) return this.fault(t`the key ${raw} is not allowed; remove it`, start);
    if (keys.has(key)) return this.fault(t`the key ${shortened(raw)} stands twice in one object`, start);
    if (keys.size >= MOST_FIELDS) return this.fault(t`there are too many fields in one object`, start);
    keys.add(key);
    return null;
  }

  private value(code: number): TextFault | null {
    if (code === CLOSE_BRACKET && this.expected === 'firstValue') return this.close();
    if (++this.values > MOST_VALUES) return this.fault(t`there is more here than a Standlines file can hold`);
    if (code === OPEN_BRACE || code === OPEN_BRACKET) return this.descend(code);
    if (code === QUOTE) return this.string() ?? this.after();
    return this.bareValue();
  }

  private descend(code: number): TextFault | null {
    if (this.open.length >= MOST_DEPTH) return this.fault(t`it is nested deeper than ${MOST_DEPTH} levels`);
    this.open.push(code === OPEN_BRACE ? new Set() : null);
    return this.pass(code === OPEN_BRACE ? 'firstKey' : 'firstValue');
  }

  private close(): null {
    this.open.pop();
    this.at++;
    return this.after();
  }

  /** A number, or true, false, null. */
  private bareValue(): TextFault | null {
    if (this.text.charCodeAt(this.at) === CLOSE_BRACKET) return this.fault(tooManyCommas(']'));
    const word = this.match(WORD);
    if (word === 'true' || word === 'false' || word === 'null') return this.pass(null, word.length);
    const number = this.match(NUMBER);
    if (number) return this.pass(null, number.length);
    if (word && /^-?(?:NaN|Infinity)$/.test(word)) {
      return this.fault(t`${word} is not a number that a file can hold; give a finite number`);
    }
    return this.fault(t`expected a value, found ${shortened(word ?? this.text.charAt(this.at))}`);
  }

  /** Goes past a string whose opening quote is here. */
  private string(): TextFault | null {
    const { text } = this;
    for (let i = this.at + 1; i < text.length; i++) {
      const code = text.charCodeAt(i);
      if (code === QUOTE) {
        this.at = i + 1;
        return null;
      }
      if (code < 0x20) return this.fault(t`a text in quotes runs over a line end or control character`, i);
      if (code !== BACKSLASH) continue;
      const length = escapeLength(text, i);
      if (length === 0) return this.badEscape(i);
      i += length - 1;
    }
    return this.truncated();
  }

  private badEscape(at: number): TextFault {
    const isCutOff = /^\\(?:u[0-9a-fA-F]{0,3})?$/.test(this.text.slice(at, at + 6));
    return isCutOff ? this.truncated() : this.fault(t`unknown escape in a text`, at);
  }

  /** Goes past `length` characters and sets what comes next; null: a value ends here. */
  private pass(next: Expected | null, length = 1): null {
    this.at += length;
    if (next === null) return this.after();
    this.expected = next;
    return null;
  }

  private after(): null {
    this.expected = this.open.length > 0 ? 'commaOrEnd' : 'nothing';
    return null;
  }

  private match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    return pattern.exec(this.text)?.[0];
  }

  private skipSpace(): void {
    const { text } = this;
    let { at } = this;
    for (let code = text.charCodeAt(at); isSpace(code);) code = text.charCodeAt(++at);
    this.at = at;
  }

  private fault(message: string, at = this.at): TextFault {
    return { at, message };
  }

  private truncated(): TextFault {
    return this.fault(
      t`the file ends in the middle; it is damaged or was not saved completely`,
      this.text.length,
    );
  }
}

const QUOTE = 0x22;
const COMMA = 0x2c;
const COLON = 0x3a;
const OPEN_BRACKET = 0x5b;
const BACKSLASH = 0x5c;
const CLOSE_BRACKET = 0x5d;
const OPEN_BRACE = 0x7b;
const CLOSE_BRACE = 0x7d;

function isSpace(code: number): boolean {
  return code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09;
}

/** Of the escape that starts at `at`; 0: it is none. */
function escapeLength(text: string, at: number): number {
  const next = text.charAt(at + 1);
  if (next !== '' && '"\\/bfnrt'.includes(next)) return 2;
  UNICODE_ESCAPE.lastIndex = at;
  return UNICODE_ESCAPE.test(text) ? 6 : 0;
}

function tooManyCommas(end: string): string {
  return t`there is a comma too many before "${end}"`;
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
