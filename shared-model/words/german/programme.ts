import type { Entries } from '../catalogue.ts';

export const programme: Entries = {
  // A step of a changeover: what is done, with what, from where, to where.
  Strike: 'Abräumen',
  Set: 'Aufstellen',
  Move: 'Umstellen',
  Turn: 'Drehen',
  Adjust: 'Einstellen',
  'Put aside': 'Wegstellen',
  'Bring back': 'Zurückholen',
  '{0} of {1}': '{0} von {1}',
  '{0} of {1} ({2})': '{0} von {1} ({2})',
  'front side': 'vordere Seite',
  'other side': 'andere Seite',
  'same spot': 'gleiche Stelle',
  '{0}, on +{1}': '{0}, auf +{1}',
  '{0}, through {1}': '{0}, durch {1}',
  'off, through {0}': 'außerhalb, durch {0}',
  'off, at the nearest edge': 'außerhalb, an der nächsten Kante',

  // What else there is to a step.
  '{0} and {1}': '{0} und {1}',
  'after {0}': 'nach {0}',
  'turn {0}° anticlockwise': '{0}° linksherum drehen',
  'turn {0}° clockwise': '{0}° rechtsherum drehen',
  'becomes {0}': 'wird {0}',
  'lip to {0}': 'Leiste auf {0}',
  'height to {0}': 'Höhe auf {0}',
  'tilt to {0}°': 'Neigung auf {0}°',
  'lid closed': 'Deckel geschlossen',
  'lid half open': 'Deckel halb offen',
  'lid full open': 'Deckel ganz offen',
  'unplug, lay its cable anew, then plug in': 'Stecker ziehen, Kabel neu verlegen, dann einstecken',
  'lay its cable, cover it, then plug in': 'Kabel verlegen, abdecken, dann einstecken',
  'lay its cable, then plug in': 'Kabel verlegen, dann einstecken',
  'unplug, then take up the cover and the cable': 'ausstecken, Abdeckung und Kabel aufnehmen',
  'unplug, then take up its cable': 'ausstecken, Kabel aufnehmen',
  'narrow way, or over a step': 'enger Weg oder über eine Stufe',
  'no way found that it fits through': 'kein Weg gefunden, der passt',
  'over a step of {0}': 'über eine Stufe von {0}',

  // A changeover as a whole.
  'nothing to carry': 'nichts zu tragen',
  '{0} step': ['{0} Schritt', '{0} Schritte'],
  'about {0} ({1} to {2})': 'etwa {0} ({1} bis {2})',
  '{0} thing stays': ['{0} Teil bleibt stehen', '{0} Teile bleiben stehen'],
  'The time there is for it has not been given.': 'Wie viel Zeit dafür ist, wurde nicht angegeben.',
  'There are {0}: enough, even at {1}.': 'Zeit dafür: {0}. Das reicht, selbst wenn es {1} dauert.',
  'There are {0}: usually enough, but it may take up to {1}.':
    'Zeit dafür: {0}. Das reicht meist, doch es kann bis zu {1} dauern.',
  'There are {0}: {1} too little.': 'Zeit dafür: {0}. Das ist um {1} zu knapp.',
  'There are {0}: whether that is enough cannot be told while {1} thing has no way.': [
    'Zeit dafür: {0}. Ob das reicht, lässt sich nicht sagen, solange für {1} Teil kein Weg da ist.',
    'Zeit dafür: {0}. Ob das reicht, lässt sich nicht sagen, solange für {1} Teile kein Weg da ist.',
  ],
  'For {0} thing nobody said where it waits: the way is counted to the nearest opening.': [
    'Für {0} Teil ist kein Lager angegeben: Gerechnet wird der Weg bis zur nächsten Öffnung.',
    'Für {0} Teile ist kein Lager angegeben: Gerechnet wird der Weg bis zur nächsten Öffnung.',
  ],
  'For {0} thing the way is narrower than a route should be, or goes over the edge of a level.': [
    'Für {0} Teil ist der Weg schmaler, als ein Weg sein soll, oder er führt über die Kante einer Ebene.',
    'Für {0} Teile ist der Weg schmaler, als ein Weg sein soll, oder er führt über die Kante einer Ebene.',
  ],
  '{0} thing that two carry or roll goes over a step: see how that can be done, and who can do it.': [
    '{0} Teil, das zwei tragen oder rollen, muss über eine Stufe: klären, wie das geht und wer es kann.',
    '{0} Teile, die zwei tragen oder rollen, müssen über eine Stufe: klären, wie das geht und wer es kann.',
  ],
  'For {0} thing no way was found that it fits through as it stands: see how it can go, and who can take it.':
    [
      'Für {0} Teil fand sich kein Weg, auf dem es so, wie es steht, durchpasst: klären, wie es gehen kann und wer es nimmt.',
      'Für {0} Teile fand sich kein Weg, auf dem sie so, wie sie stehen, durchpassen: klären, wie es gehen kann und wer sie nimmt.',
    ],
  '{0} thing put aside first, because what it stands on is moved.': [
    '{0} Teil wird zuerst weggestellt, weil umgestellt wird, worauf es steht.',
    '{0} Teile werden zuerst weggestellt, weil umgestellt wird, worauf sie stehen.',
  ],
  '{0} thing put aside first, because its place and another’s are exchanged.': [
    '{0} Teil wird zuerst weggestellt, weil es mit einem anderen den Platz tauscht.',
    '{0} Teile werden zuerst weggestellt, weil sie mit anderen den Platz tauschen.',
  ],
  'Carrying can hurt. What one person takes here may be too heavy or too awkward for whoever is there: let the venue and those who are trained for it decide who lifts what and how.':
    'Beim Tragen kann man sich verletzen. Was hier eine Person nimmt, kann für die, die da sind, zu schwer oder zu sperrig sein: Wer was wie hebt, entscheiden das Haus und dafür Ausgebildete.',
  'Pianos, large instruments and risers are moved by people who know them. Keep ways and exits clear and lit, mind open edges and steps, and unplug before you carry.':
    'Klaviere, Großinstrumente und Podeste bewegt, wer sich damit auskennt. Wege und Ausgänge frei und beleuchtet halten, auf offene Kanten und Stufen achten, vor dem Tragen den Stecker ziehen.',
  'Local codes, the venue and licensed practice come before this list.':
    'Örtliche Vorschriften, das Haus und zugelassene Fachleute gehen dieser Liste vor.',
  'Walking: 1.07 m/s (TxDOT Roadway Design Manual), from 0.82 to 1.31 m/s (Murtagh et al., Sports Med 2020), with a start for each walk.':
    'Gehen: 1,07 m/s (TxDOT Roadway Design Manual), von 0,82 bis 1,31 m/s (Murtagh et al., Sports Med 2020), dazu ein Anlauf für jeden Gang.',
  'Bending and rising: MTM-1, from memory. Brakes, marks, cables and adjusting: common practice, no source. Each walks once for each thing.':
    'Bücken und Aufrichten: MTM-1, aus dem Gedächtnis. Bremsen, Marken, Kabel und Einstellen: übliche Praxis, ohne Quelle. Für jedes Teil wird einmal gegangen.',

  // What there is, and what is missing.
  '{0}: {1} too few for {2}, which needs {3}.': '{0}: {1} zu wenig für {2}; gebraucht: {3}.',
  '{0}: {1} too few for {2} (a variant), which needs {3}.':
    '{0}: {1} zu wenig für {2} (eine Variante); gebraucht: {3}.',
  'setup {0}': 'Aufstellung {0}',
  'Of everything that was counted there is enough for every setup.':
    'Von allem, was gezählt wurde, reicht es für jede Aufstellung.',
  'Not counted in the stock: {0}.': 'Im Bestand nicht gezählt: {0}.',
};
