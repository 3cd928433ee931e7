/** `<direction>` and `<sound>`: tempo, jumps, words, changes of instrument. */

import { plus, ZERO, type Fraction } from '../fraction.ts';
import { MOST_TEMPOS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import type { JumpKind } from '../score.ts';
import { children, mark, textOf, type Attributes, type Element } from '../xml/element.ts';
import type { Context } from './context.ts';
import { metronomeElement, type Metronome } from './metronome.ts';
import { offsetOf, tempoOf } from './values.ts';

/** What one direction said, kept until it closes: its offset comes after what it moves. */
interface Said {
  readonly sounds: Attributes[];
  readonly metronomes: Metronome[];
  readonly symbols: JumpKind[];
  readonly words: string[];
  offset: Fraction;
}

export function directionElement(context: Context): Element {
  let said = nothing();
  return {
    open: () => {
      said = nothing();
    },
    close: () => tell(said, context),
    children: children({
      'direction-type': directionType((add) => add(said)),
      offset: offsetElement(context, (offset) => (said.offset = offset)),
      sound: soundContent(context, () => said),
    }),
  };
}

/** A `<sound>` that stands in a bar by itself. */
export function loneSoundElement(context: Context): Element {
  let said = nothing();
  const content = soundContent(context, () => said);
  return {
    ...content,
    open: (attributes) => {
      said = nothing();
      content.open?.(attributes);
    },
    close: () => tell(said, context),
  };
}

function nothing(): Said {
  return { sounds: [], metronomes: [], symbols: [], words: [], offset: ZERO };
}

function directionType(into: (add: (said: Said) => void) => void): Element {
  return {
    children: children({
      words: textOf((text) => into((said) => said.words.push(text))),
      rehearsal: textOf((text) => into((said) => said.words.push(text))),
      segno: mark(() => into((said) => said.symbols.push('segno'))),
      coda: mark(() => into((said) => said.symbols.push('coda'))),
      metronome: metronomeElement((metronome) => into((said) => said.metronomes.push(metronome))),
    }),
  };
}

function soundContent(context: Context, said: () => Said): Element {
  return {
    open: (attributes) => said().sounds.push(attributes),
    children: children({
      'instrument-change': mark(({ id }) => {
        if (id !== undefined) context.takeUp(id, false);
      }),
      offset: offsetElement(context, (offset) => (said().offset = offset)),
    }),
  };
}

/** Most offsets only say where something is printed; `sound="yes"` moves what it means. */
function offsetElement(context: Context, take: (offset: Fraction) => void): Element {
  let sounds = false;
  return {
    open: ({ sound }) => {
      sounds = sound === 'yes';
    },
    close: (text) => {
      if (sounds) take(context.part.quarters(offsetOf(text, context.where)));
    },
  };
}

function tell(said: Said, context: Context): void {
  const { part } = context;
  const at = plus(part.at, said.offset);
  const spot = { part: part.index, bar: part.bar, at: at.n < 0 ? ZERO : at };
  tellTempo(said, context, spot.at);
  for (const attributes of said.sounds) tellJumps(attributes, context);
  for (const kind of said.symbols)
    context.marks.jumps.push({ kind, bar: part.bar, name: '', source: 'symbol' });
  const text = said.words.join(' ').replace(/\s+/g, ' ').trim().slice(0, 200);
  if (text !== '') context.marks.words.push({ ...spot, text });
}

function tellTempo({ sounds, metronomes }: Said, context: Context, at: Fraction): void {
  const { part, marks, where } = context;
  const tempo = (given: string | number, source: 'sound' | 'metronome') => {
    if (marks.tempos.length >= MOST_TEMPOS)
      throw new Refusal({ code: 'score.tooLarge', what: 'tempo marks', most: MOST_TEMPOS });
    const quartersPerMinute = tempoOf(given, where);
    marks.tempos.push({ part: part.index, bar: part.bar, at, quartersPerMinute, source });
  };
  const told = sounds.flatMap((sound) => (sound['tempo'] === undefined ? [] : [sound['tempo']]));
  for (const given of told) tempo(given, 'sound');
  if (told.length > 0) return;
  for (const { quartersPerMinute, modulation } of metronomes) {
    if (quartersPerMinute !== null) tempo(quartersPerMinute, 'metronome');
    else if (modulation) marks.modulations.add(part.bar);
  }
}

const JUMPS: readonly JumpKind[] = ['dacapo', 'dalsegno', 'fine', 'tocoda', 'segno', 'coda'];

function tellJumps(sound: Attributes, { part, marks }: Context): void {
  for (const kind of JUMPS) {
    const name = sound[kind];
    if (name !== undefined && name !== 'no')
      marks.jumps.push({ kind, bar: part.bar, name: name.trim().slice(0, 100), source: 'sound' });
  }
  if (sound['forward-repeat'] === 'yes') marks.forward.push({ bar: part.bar, inside: false });
}
