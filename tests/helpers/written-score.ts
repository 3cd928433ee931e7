/** Small scores of our own as MusicXML: common time, a quarter note or a whole rest in each bar. */

export interface WrittenPart {
  readonly name: string;
  /** Printed numbers of the bars in which the player rests: [first, last], both included. */
  readonly rests: readonly (readonly [first: number, last: number])[];
}

export interface WrittenScore {
  readonly title: string;
  readonly bars: number;
  /** Null: none is marked. */
  readonly quartersPerMinute: number | null;
  readonly parts: readonly WrittenPart[];
}

export function musicXml({ title, bars, quartersPerMinute, parts }: WrittenScore): string {
  const list = parts.map(
    ({ name }, index) => `<score-part id="P${index + 1}"><part-name>${name}</part-name></score-part>`,
  );
  const bodies = parts.map((part, index) => {
    const tempo = index === 0 ? quartersPerMinute : null;
    const measures = Array.from({ length: bars }, (_, bar) => measure(part, bar + 1, tempo));
    return `<part id="P${index + 1}">${measures.join('\n')}</part>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<score-partwise version="4.0"><work><work-title>${title}</work-title></work>`,
    `<part-list>${list.join('')}</part-list>`,
    ...bodies,
    '</score-partwise>',
  ].join('\n');
}

function measure({ rests }: WrittenPart, number: number, tempo: number | null): string {
  const attributes =
    '<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>';
  const sound = tempo === null ? '' : `<direction><sound tempo="${tempo}"/></direction>`;
  const head = number === 1 ? attributes + sound : '';
  const isRest = rests.some(([first, last]) => number >= first && number <= last);
  const note =
    '<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><type>quarter</type></note>';
  const content = isRest ? '<note><rest measure="yes"/><duration>4</duration></note>' : note.repeat(4);
  return `<measure number="${number}">${head}${content}</measure>`;
}
