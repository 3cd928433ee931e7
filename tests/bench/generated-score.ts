/** A large score as notation programs write it: layout, stems, beams and lyrics that a reader of times passes over. */

const PARTS = 4;

/** MusicXML of about `size` characters. */
export function generatedScore(size: number): string {
  const bar = barXml(1).length;
  const bars = Math.round(size / bar / PARTS);
  const parts = Array.from({ length: PARTS }, (_, part) => {
    const measures = Array.from({ length: bars }, (_, index) => barXml(index + 1 + part));
    return `<part id="P${part + 1}">${measures.join('\n')}</part>`;
  });
  const list = parts.map(
    (_, part) => `<score-part id="P${part + 1}"><part-name>Part ${part + 1}</part-name></score-part>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0">\n<part-list>${list.join('')}</part-list>\n${parts.join('\n')}\n</score-partwise>`;
}

function barXml(number: number): string {
  const repeat =
    number % 32 === 0 ? '<barline location="right"><repeat direction="backward"/></barline>' : '';
  const tempo =
    number % 50 === 0
      ? '<direction placement="above"><direction-type><words>Tempo</words></direction-type><sound tempo="96"/></direction>'
      : '';
  const notes = Array.from({ length: 6 }, (_, index) => noteXml(number + index));
  return `<measure number="${number}" width="245.50">
      <attributes><divisions>24</divisions></attributes>${tempo}
${notes.join('\n')}
      <backup><duration>144</duration></backup>
${notes.slice(0, 3).join('\n')}
      <note><rest/><duration>72</duration><voice>2</voice><type>half</type><dot/></note>
      ${repeat}</measure>`;
}

function noteXml(seed: number): string {
  const step = 'CDEFGAB'[seed % 7];
  return `      <note default-x="${(80 + seed).toFixed(2)}" default-y="-35.00">
        <pitch>
          <step>${step}</step>
          <octave>4</octave>
          </pitch>
        <duration>24</duration>
        <voice>1</voice>
        <type>quarter</type>
        <stem>up</stem>
        <beam number="1">begin</beam>
        <notations>
          <slur type="start" number="1"/>
          </notations>
        </note>`;
}
