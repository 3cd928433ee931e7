/** Page plans: what is planned and why it cannot be, the rules that a plan breaks, and what is done to it by hand. */

import type { Entries } from '../catalogue.ts';

const WHAT_IS_PLANNED: Entries = {
  '{0} turn': ['{0} Wendestelle', '{0} Wendestellen'],
  '{0} station': ['{0} Pult', '{0} Pulte'],
  '{0} page before a reader': ['{0} Seite vor einem Spieler', '{0} Seiten vor einem Spieler'],
  '{0} printed panel': ['{0} Druckbahn', '{0} Druckbahnen'],
  '{0} jump of the eye': ['{0} Blicksprung', '{0} Blicksprünge'],
  'loose pages': 'lose Seiten',
  book: 'Buch',
  concertina: 'Leporello',
  'ridge booklet': 'Firstheft',
  'Other plans:': 'Andere Pläne:',
  'fewest possible': 'weniger geht nicht',
  'at least {0}; not shown to be the fewest': 'mindestens {0}; ob weniger möglich sind, ist offen',
  'seen from the house: {0}': 'vom Saal aus: {0}',
  '{0} of the places see at least {1} of {2}': '{0} der Plätze sehen mindestens {1} von {2}',
  '{0}; worst {1} of {2} from {3}': '{0}; am wenigsten {1} von {2}, Platz: {3}',
  'the side without a reader': 'der Seite ohne Spieler',
  '{0} sees {1}': '{0} sieht {1}',
  '{0} with {1} leaf': ['{0} mit {1} Wendeblatt', '{0} mit {1} Wendeblättern'],
  'at first it lies before {0}': ['am Anfang liegt es vor {0}', 'am Anfang liegen sie vor {0}'],
  '{0}, then {1}': '{0}, dann {1}',
  'page {0}': ['Seite {0}', 'Seiten {0}'],
  'during page {0}': 'während Seite {0}',
  'after page {0}': 'nach Seite {0}',
  'for the partner too': 'auch für das Gegenüber',
  '{0}; {1} to spare': '{0}; {1} übrig',
  'any time': 'beliebig viel Zeit',
  '{0} {1},': '{0}, {1}:',
  '{0} turns {1} back with the left hand': '{0} blättert zurück, {1}, linke Hand',
  '{0} turns {1} back with the right hand': '{0} blättert zurück, {1}, rechte Hand',
  '{0} turns {1} with the left hand': '{0} blättert um, {1}, linke Hand',
  '{0} turns {1} with the right hand': '{0} blättert um, {1}, rechte Hand',
  'To spare is what is left after the whole turn, made with care: the hand to the leaf, the leaf over, the hand back.':
    'Übrig ist, was nach dem ganzen Umblättern mit Bedacht bleibt: die Hand ans Blatt, das Blatt hinüber, die Hand zurück.',
  'The kept plan keeps every rule: {0}': 'Der gespeicherte Plan hält alle Regeln ein: {0}',
  'The kept plan ({0}) breaks a rule:': 'Der gespeicherte Plan ({0}) verletzt eine Regel:',
  'The kept plan ({0}) breaks {1} rules:': 'Der gespeicherte Plan ({0}) verletzt {1} Regeln:',
  'This plan breaks {0} rule; see the page turns in the editor.': [
    'Dieser Plan verletzt {0} Regel; siehe die Wendestellen im Programm.',
    'Dieser Plan verletzt {0} Regeln; siehe die Wendestellen im Programm.',
  ],
  '{0}: {1} turns {2}; that needs {3} with care, and {4} are there.':
    '{0}: {1} blättert um, {2}; das braucht mit Bedacht {3}, Zeit ist für {4}.',
  '{0}: {1} changes to {2}; that needs {3} with care, and {4} are there.':
    '{0}: {1} wechselt zu {2}; das braucht mit Bedacht {3}, Zeit ist für {4}.',
  '{0}: {1} changes to {2}; that is not set anywhere within reach, so nobody knows how long it takes.':
    '{0}: {1} wechselt zu {2}; das steht nirgends in Reichweite, also ist nicht bekannt, wie lange es dauert.',
  '{0}: {1} has no page {2} for {3}.': '{0}: {1} hat Seite {2} für {3} nicht vor sich.',
};

const WHY_NOT: Entries = {
  'cannot be planned: {0}': 'nicht planbar: {0}',
  'there is no plan': 'es gibt keinen Plan',
  'no plan was found in the steps allowed': 'in den erlaubten Schritten wurde kein Plan gefunden',
  'would make one: {0}': 'möglich würde er durch: {0}',
  'no single remedy was found': 'keine einzelne Abhilfe gefunden',
  'two changes at once do: {0}': 'zwei Änderungen zugleich genügen: {0}',
  'each of these needs one of its own remedies:': 'alle folgenden brauchen je eine eigene Abhilfe:',
  '{0} with {1}': '{0} mit {1}',
  'and {0}': 'und {0}',
  '{0}; or {1}': '{0}; oder {1}',
  '{0}, and {1}': '{0}, und {1}',
  'two more stations like {0}': 'zwei weitere Pulte wie {0}',
  'one more station like {0}': 'ein weiteres Pult wie {0}',
  'a rest of {0} for {1} after page {2}, at {3}': 'eine Pause von {0} für {1} nach Seite {2}, bei {3}',
  'room for {0} pages at {1}': 'Platz für {0} Seiten, {1}',
  'letting go of the pin on page {0} on {1}': 'Lösen der angehefteten Seite {0}, {1}',
  'letting go of the pin on the turn by {0} at {1}': 'Lösen der angehefteten Wendestelle von {0}, {1}',
  'it can be planned up to {0}, where {1} has to play on without page {2}: {3}':
    'planbar ist es bis {0}, dort muss {1} ohne Seite {2} weiterspielen: {3}',
  'nobody who could turn in time reaches a leaf there':
    'niemand, der rechtzeitig umblättern könnte, reicht dort an ein Blatt',
  'nobody who reaches a leaf there has a hand free while nobody reads from it':
    'wer dort an ein Blatt reicht, hat keine Hand frei, solange niemand davon liest',
  '{0} pages have to be in view at once there, and there is room for {1}':
    '{0} Seiten müssen dort zugleich zu sehen sein, Platz ist für {1}',
  'all who read there share no rest of {0}': 'alle, die dort lesen, haben keine gemeinsame Pause von {0}',
  '{0}, and there is room for {1}': '{0}, und Platz ist für {1}',
  'from page {0} on no rest has the {1} that a turn and the look ahead take':
    'ab Seite {0} ist keine Pause {1} lang, was Umblättern und Vorauslesen brauchen',
  '{0}; the longest has {1}': '{0}; die längste hat {1}',
  '{0} page': ['{0} Seite', '{0} Seiten'],
  'This setup has no music yet; give it a score.':
    'Diese Aufstellung hat noch keine Musik; eine Partitur öffnen.',
  'No stand of this setup has a reader with a part; say who reads where.':
    'An keinem Pult dieser Aufstellung liest jemand mit einer Stimme; angeben, wer wo liest.',
  'Nobody plays a part of the score yet; say who plays which.':
    'Noch spielt niemand eine Stimme der Partitur; angeben, wer welche spielt.',
  'The pages of "{0}" ({1}) are not known: the score tells only its own; give the bar that each page begins with.':
    'Die Seiten von „{0}“ für {1} sind nicht bekannt: Die Partitur nennt nur ihre eigenen; angeben, mit welchem Takt jede Seite beginnt.',
  '{0} has no part in the score and is left out.':
    '{0} hat keine Stimme in der Partitur und bleibt außer Acht.',
  'The desk of {0} has room for {1} pages side by side; it is planned with the {2} that its properties say.':
    '{0}: Auf die Auflage passen nebeneinander {1} Seiten; geplant wird mit {2}, wie in den Eigenschaften angegeben.',
  'two players have the same id': 'zwei Spieler haben dieselbe Kennung',
  'two stations have the same id': 'zwei Pulte haben dieselbe Kennung',
  '{0} stations; give at most {1}': '{0} Pulte; höchstens {1} angeben',
  'a pin names station {0}, which is not there': 'angeheftet ist etwas an {0}, das es nicht gibt',
  'more than {0} turns are pinned': 'mehr als {0} Wendestellen sind angeheftet',
  'the part of {0} has {1} pages; give 0 to {2}': '{0}: die Stimme hat {1} Seiten; 0 bis {2} angeben',
  'the look-ahead of {0} is {1} s': '{0}: vorausgelesen werden {1} s',
  '{0} reads a page that the part does not have': '{0} liest eine Seite, die die Stimme nicht hat',
  '{0} has a stretch of time that ends before it begins': '{0}: eine Zeitspanne endet, bevor sie beginnt',
  '{0} reads two pages at the same time': '{0} liest zwei Seiten zugleich',
  '{0} reads at station {1} but does not play': '{0} liest an {1}, spielt aber nicht',
  'station {0} is {1} pages wide; give 0 to {2}': '{0} ist {1} Seiten breit; 0 bis {2} angeben',
  '{0} cannot read on both sides of station {1}': '{0} kann nicht auf beiden Seiten lesen: {1}',
  '{0} turns at station {1} but does not play': '{0} blättert an {1} um, spielt aber nicht',
  'a turn at station {0} takes {1} s': '{0}: ein Umblättern dauert {1} s',
};

const BROKEN_RULES: Entries = {
  '{0} needs page {1} {2}, and it is not in view all that time.':
    '{0} braucht Seite {1} {2}, und sie ist nicht die ganze Zeit zu sehen.',
  'from {0} to {1}': 'von {0} bis {1}',
  'Nobody who has a part reads at {0}, so the plan cannot use it.':
    '{0}: Hier liest niemand mit einer Stimme, der Plan kann nichts darauf legen.',
  '{0} is in the plan twice.': '{0} kommt im Plan zweimal vor.',
  'The plan uses {0} stands; {1} are allowed.': 'Der Plan braucht {0} Pulte; erlaubt sind {1}.',
  '{0} does not take paper that is bound like this.': '{0}: So gebundenes Papier passt nicht darauf.',
  'The views of {0} do not fit its leaves and its pages side by side.':
    '{0}: Die Ansichten passen nicht zu den Wendeblättern und den Seiten nebeneinander.',
  '{0} shows page {1}, which its reader’s part does not have.':
    '{0} zeigt Seite {1}, die es in der Stimme nicht gibt.',
  '{0} page side by side are too wide for {1}, which holds {2}.': [
    '{1}: {0} Seite ist zu breit, Platz ist für {2}.',
    '{1}: {0} Seiten nebeneinander sind zu breit, Platz ist für {2}.',
  ],
  'A turn of the plan is not there.': 'Eine Wendestelle des Plans gibt es nicht.',
  '{0}, who turns at {1} at {2},': 'Beim Umblättern an {1}, {2}: {0}',
  '{0} does not get to the leaf with the left hand without a step.':
    '{0} kommt mit der linken Hand nicht ohne einen Schritt an das Blatt.',
  '{0} does not get to the leaf with the right hand without a step.':
    '{0} kommt mit der rechten Hand nicht ohne einen Schritt an das Blatt.',
  '{0} has no left hand free for the {1} that it takes.':
    '{0} hat die linke Hand nicht so lange frei, wie es dauert: {1}.',
  '{0} has no right hand free for the {1} that it takes.':
    '{0} hat die rechte Hand nicht so lange frei, wie es dauert: {1}.',
  '{0} needs {1} for it; the plan gives {2}.': '{0} braucht dafür {1}; der Plan lässt {2}.',
  '{0} finds no leaf there to turn back.': '{0} findet dort kein Blatt zum Zurückblättern.',
  '{0} finds no leaf there to turn on.': '{0} findet dort kein Blatt zum Umblättern.',
  '{0} would lift the leaf from the side where it does not lie.':
    '{0} würde das Blatt auf der Seite heben, auf der es nicht liegt.',
  '{0} is at it while another turn is made, at {1} by {2}; neither leaves the other time.':
    '{0} ist noch dabei, während auch {2} an {1} umblättert; keines lässt dem anderen Zeit.',
  '{0} is at it while another turn is made; neither leaves the other time.':
    '{0} ist noch dabei, während anderswo umgeblättert wird; keines lässt dem anderen Zeit.',
  'Page {0} is pinned on {1}, {2}, and is not there.':
    'An {1} ist Seite {0} angeheftet, {2}, und liegt dort nicht.',
  'before any leaf is turned': 'vor dem ersten Umblättern',
  'with {0} leaf turned': ['nach einmal Umblättern', 'nach {0}-mal Umblättern'],
  'A turn by {0} at {1} is pinned between {2} and {3}, and there is none.':
    'Zwischen {2} und {3} ist angeheftet, dass {0} an {1} umblättert; das kommt nicht vor.',
};

/** In the words of a booklet's own file, whose codes stand in them. */
const BINDINGS: Entries = {
  'give 0 to {0} leaves, not {1}': '0 bis {0} Wendeblätter angeben, nicht {1}',
  'give 1 to {0} pages a panel, not {1}': '1 bis {0} Seiten je Druckbahn angeben, nicht {1}',
  'loose pages have no leaves to turn': 'lose Seiten haben keine Wendeblätter',
  'each page of a book is a panel of its own': 'in einem Buch ist jede Seite eine Druckbahn für sich',
  'a concertina shows at least two pages': 'ein Leporello zeigt mindestens zwei Seiten',
  'a {0} has one side, the first': '„{0}“ hat nur eine Seite, die erste',
  'a {0} has {1} side, not {2}': ['„{0}“ hat {1} Seite, nicht {2}', '„{0}“ hat {1} Seiten, nicht {2}'],
  'side {0} has {1} views; there are {2} states': 'Seite {0} hat {1} Ansichten; es gibt {2} Stände',
  'side {0} shows {1} pages in state {2}; it has {3} places':
    'Seite {0} zeigt im Stand {2} {1} Notenseiten; sie hat {3} Plätze',
  'in state {0} the pages that were in view before have to move on by two, as they hang together':
    'im Stand {0} müssen die Seiten, die schon zu sehen waren, um zwei weiterrücken, denn sie hängen zusammen',
};

/** What is done stands behind „Rückgängig:“, as an infinitive. */
const BY_HAND: Entries = {
  '{0} has no music yet, and a page plan goes by its pages and bars.':
    '{0} hat noch keine Musik, und ein Seitenplan richtet sich nach ihren Seiten und Takten.',
  'keep a page plan for {0}': 'Seitenplan speichern – {0}',
  'let the kept page plan go': 'gespeicherten Seitenplan verwerfen',
  'No page plan is kept for this setup.': 'Für diese Aufstellung ist kein Seitenplan gespeichert.',
  'put paper on {0}': 'Papier auflegen – {0}',
  '{0} has paper of this plan already.': '{0} hat in diesem Plan schon Papier.',
  'take the paper off {0}': 'Papier wegnehmen – {0}',
  '{0} has no page {1}: the part has one page.': '{0} hat keine Seite {1}: Die Stimme hat eine Seite.',
  '{0} has no page {1}: the part has {2} pages.': '{0} hat keine Seite {1}: Die Stimme hat {2} Seiten.',
  'leave a place blank on {0}': 'Platz leer lassen – {0}',
  'put page {0} on {1}': 'Seite {0} auflegen – {1}',
  '{0} has no such place for a page.': '{0} hat keinen solchen Platz für eine Seite.',
  'change the leaves on {0}': 'Wendeblätter ändern – {0}',
  'change the pages side by side on {0}': 'Seiten nebeneinander ändern – {0}',
  'change the binding on {0}': 'Bindung ändern – {0}',
  'change where the leaves lie at first on {0}': 'Anfangsseite der Wendeblätter ändern – {0}',
  '{0} has no paper in this plan.': '{0} hat in diesem Plan kein Papier.',
  'the stand': 'Pult',
  'pin page {0}': 'Seite {0} anheften',
  'pin a page turn': 'Wendestelle anheften',
  'Put paper on that stand first.': 'Zuerst Papier auf dieses Pult legen.',
  'That stand has no such place for a page.': 'Dieses Pult hat keinen solchen Platz für eine Seite.',
  'take a pin out': 'Angeheftetes lösen',
  'add a page turn': 'Wendestelle hinzufügen',
  'change a page turn': 'Wendestelle ändern',
  'That turn is not there any more.': 'Diese Wendestelle gibt es nicht mehr.',
  'remove a page turn': 'Wendestelle entfernen',
  'turn {0}': '{0} drehen',
  'turn {0} towards a point': '{0} drehen, Blick auf einen Punkt',
  'turn {0} towards {1}': '{0} drehen, Blick auf {1}',
  'There is nothing there to turn to.': 'Dort ist nichts, worauf sich der Blick richten ließe.',
  '{0} is at that very spot and cannot look at it.': '{0} steht genau dort und kann nicht dorthin blicken.',
};

const MUSIC: Entries = {
  'give {0} its music': 'Musik zuordnen – {0}',
  'say who plays': 'festlegen, wer spielt',
  'say who plays {0}': 'festlegen, wer spielt – {0}',
  'say what {0} is printed in': 'Noten-PDF festlegen – {0}',
  'part {0}': 'Stimme {0}',
  '"{0}"': '„{0}“',
  'Give one of the {0} parts.': 'Eine der {0} Stimmen angeben.',
  'It is the only part: remove the music instead.':
    'Es ist die einzige Stimme: stattdessen die Musik entfernen.',
  'add the part': 'Stimme hinzufügen',
  'add the part {0}': 'Stimme hinzufügen – {0}',
  'change the part': 'Stimme ändern',
  'change the part {0}': 'Stimme ändern – {0}',
  'take out the part': 'Stimme herausnehmen',
  'take out the part {0}': 'Stimme herausnehmen – {0}',
  '{0} is not there any more, nor is its player': '{0} gibt es nicht mehr, auch nicht, wer sie spielte',
  '{0} is not there any more, nor is its PDF': '{0} gibt es nicht mehr, auch nicht das PDF dazu',
  '{0} is not there any more, nor are its player and its PDF':
    '{0} gibt es nicht mehr, auch nicht, wer sie spielte, und das PDF dazu',
  'the pages typed for {0} belong to other music': 'die eingegebenen Seiten für {0} gehören zu anderer Musik',
  'the pages typed for {0} begin with other bars now':
    'die eingegebenen Seiten für {0} beginnen jetzt mit anderen Takten',
  'the PDF of {0} belongs to other music': 'das PDF zu {0} gehört zu anderer Musik',
  'the tempo that was typed': 'das eingegebene Tempo',
};

export const pages: Entries = {
  ...WHAT_IS_PLANNED,
  ...WHY_NOT,
  ...BROKEN_RULES,
  ...BINDINGS,
  ...BY_HAND,
  ...MUSIC,
};
