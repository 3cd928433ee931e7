/** MusicXML in, a score out: one pass over the text, which may come in pieces. */

import { MOST_PARTS, MOST_SPANS } from '../limits.ts';
import { outcomeOf, Refusal, type InBar, type Outcome } from '../problem.ts';
import type { Score } from '../score.ts';
import { children, textOf, type Attributes, type Element } from '../xml/element.ts';
import { XmlReader } from '../xml/xml-reader.ts';
import { assembleScore } from './assemble.ts';
import type { Context } from './context.ts';
import { noMarks } from './marks.ts';
import { measureContent } from './measure-element.ts';
import { partListElement, tidyName, type ListedPart } from './part-list.ts';
import { PartReader, tooManySpans } from './part-reader.ts';

const PIECE = 256 * 1024;

/** Reads a whole text. Never throws, whatever the text. */
export function readScore(text: string): Outcome<Score> {
  return outcomeOf(() => {
    const reader = new ScoreReader();
    for (let from = 0; from < text.length; from += PIECE) reader.write(text.slice(from, from + PIECE));
    return reader.finish();
  });
}

/** For a text that comes in pieces. Its methods throw `Refusal`: see `outcomeOf`. */
export class ScoreReader {
  private readonly xml = new XmlReader((name) => this.root(name));
  private readonly titles = { work: '', movement: '' };
  private version: string | null = null;
  private readonly listed: ListedPart[] = [];
  private readonly parts: PartReader[] = [];
  private readonly partsById = new Map<string, PartReader>();
  private readonly marks = noMarks();
  private part = new PartReader(0, '');
  /** Stretches in which players sound, of all parts. */
  private spans = 0;
  private readonly context: Context;

  constructor() {
    this.context = this.contextOfCurrentPart();
  }

  write(piece: string): void {
    this.xml.write(piece);
  }

  finish(): Score {
    this.xml.finish();
    const { titles, version, listed, parts, marks } = this;
    return assembleScore({ title: titles.work || titles.movement, version, listed, parts, marks });
  }

  private contextOfCurrentPart(): Context {
    const current = () => this.part;
    return {
      get part() {
        return current();
      },
      marks: this.marks,
      where: () => this.where(),
      takeUp: (id, mayBegin) => this.takeUp(id, mayBegin),
    };
  }

  private root(name: string): Element {
    if (name === 'score-partwise') return this.score({ part: this.partwisePart() });
    if (name === 'score-timewise') return this.score({ measure: this.timewiseMeasure() });
    if (name === 'opus') throw new Refusal({ code: 'score.opus' });
    throw new Refusal({ code: 'score.notMusicXml', root: name.slice(0, 60) });
  }

  private score(music: Readonly<Record<string, Element>>): Element {
    const { titles } = this;
    return {
      open: ({ version }) => (this.version = version?.slice(0, 20) ?? null),
      children: children({
        work: { children: children({ 'work-title': textOf((text) => (titles.work = tidyName(text))) }) },
        'movement-title': textOf((text) => (titles.movement = tidyName(text))),
        'part-list': partListElement(this.listed),
        ...music,
      }),
    };
  }

  private partwisePart(): Element {
    return {
      open: (attributes) => this.beginPart(attributes),
      children: children({
        measure: {
          open: ({ number }) => this.part.beginBar(tidyName(number ?? '')),
          close: () => this.endBar(),
          children: measureContent(this.context),
        },
      }),
    };
  }

  private timewiseMeasure(): Element {
    let number = '';
    let index = 0;
    return {
      open: (attributes) => {
        [number, index] = [tidyName(attributes['number'] ?? ''), 0];
      },
      children: children({
        part: {
          open: (attributes) => {
            this.resumePart(attributes, index);
            this.part.beginBar(number);
          },
          close: () => {
            this.endBar();
            index += 1;
          },
          children: measureContent(this.context),
        },
      }),
    };
  }

  private endBar(): void {
    this.part.endBar();
    this.spans += this.part.bars.at(-1)?.sounding.length ?? 0;
    if (this.spans > MOST_SPANS) throw tooManySpans();
  }

  private beginPart({ id }: Attributes): void {
    if (this.parts.length >= MOST_PARTS)
      throw new Refusal({ code: 'score.tooLarge', what: 'parts', most: MOST_PARTS });
    this.part = new PartReader(this.parts.length, id ?? '');
    this.parts.push(this.part);
    this.partsById.set(this.part.id, this.part);
  }

  /** Timewise: by its id, or by its place in the bar where it has none. */
  private resumePart(attributes: Attributes, index: number): void {
    const { id } = attributes;
    const known = id === undefined ? this.parts[index] : this.partsById.get(id);
    if (known) this.part = known;
    else this.beginPart(attributes);
  }

  private takeUp(id: string, mayBegin: boolean): void {
    const { part } = this;
    const listed = this.listed.find((entry) => entry.id === part.id);
    const name = listed?.instruments.get(id) || id.slice(0, 100);
    if (part.instrument !== name && !(mayBegin && part.instrument === null))
      part.instruments.push({ bar: part.bar, name });
    part.instrument = name;
  }

  private where(): InBar {
    const { part } = this;
    const name = this.listed.find(({ id }) => id === part.id)?.name;
    return { part: name || part.id, bar: part.number, line: this.xml.place.line };
  }
}
