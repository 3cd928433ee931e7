/** What a command that changes one field of records is called. */

import type { Kind, RecordOf } from '../document/records.ts';
import { t } from '../words/say.ts';

type FieldName = { [K in Kind]: Exclude<keyof RecordOf<K>, 'id' | 'kind'> }[Kind];

/** "change lip of stand 3". */
export function changingWords(field: string, names: string): string {
  return isFieldName(field) ? CHANGING[field](names) : t`change ${names}`;
}

function isFieldName(field: string): field is FieldName {
  return Object.hasOwn(CHANGING, field);
}

/** A sentence for each field, for languages whose words for it depend on the rest. */
const CHANGING: Readonly<Record<FieldName, (names: string) => string>> = {
  name: (names) => t`change name of ${names}`,
  venue: (names) => t`change venue of ${names}`,
  date: (names) => t`change date of ${names}`,
  revision: (names) => t`change revision of ${names}`,
  author: (names) => t`change author of ${names}`,
  units: (names) => t`change units of ${names}`,
  headsInFront: (names) => t`change whether heads in front count in ${names}`,
  limits: (names) => t`change limits of ${names}`,
  contacts: (names) => t`change contacts of ${names}`,
  views: (names) => t`change views of ${names}`,
  order: (names) => t`change order of ${names}`,
  notes: (names) => t`change notes of ${names}`,
  needNotSee: (names) => t`change who need not see each other in ${names}`,
  variantOf: (names) => t`change what ${names} is a variant of`,
  changeTime: (names) => t`change time before ${names}`,
  setup: (names) => t`change setup of ${names}`,
  source: (names) => t`change source of ${names}`,
  music: (names) => t`change music of ${names}`,
  players: (names) => t`change players of ${names}`,
  pdfs: (names) => t`change PDFs of ${names}`,
  score: (names) => t`change score of ${names}`,
  stations: (names) => t`change stands of ${names}`,
  turns: (names) => t`change turns of ${names}`,
  pins: (names) => t`change pins of ${names}`,
  outline: (names) => t`change outline of ${names}`,
  height: (names) => t`change height of ${names}`,
  openEdges: (names) => t`change open edges of ${names}`,
  edge: (names) => t`change edge of ${names}`,
  offset: (names) => t`change offset of ${names}`,
  width: (names) => t`change width of ${names}`,
  exit: (names) => t`change whether ${names} is an exit`,
  stepFree: (names) => t`change whether ${names} is free of steps`,
  x: (names) => t`change place of ${names}`,
  y: (names) => t`change place of ${names}`,
  facing: (names) => t`change facing of ${names}`,
  rows: (names) => t`change rows of ${names}`,
  seatsPerRow: (names) => t`change seats per row of ${names}`,
  seatPitch: (names) => t`change seat pitch of ${names}`,
  rowDepth: (names) => t`change row depth of ${names}`,
  riser: (names) => t`change riser of ${names}`,
  floor: (names) => t`change floor height of ${names}`,
  curveRadius: (names) => t`change curve radius of ${names}`,
  staggered: (names) => t`change stagger of ${names}`,
  aisles: (names) => t`change aisles of ${names}`,
  frontRail: (names) => t`change front rail of ${names}`,
  eyeHeight: (names) => t`change eye height of ${names}`,
  firstRow: (names) => t`change first row of ${names}`,
  use: (names) => t`change use of ${names}`,
  door: (names) => t`change door of ${names}`,
  item: (names) => t`change item of ${names}`,
  model: (names) => t`change model of ${names}`,
  owned: (names) => t`change own stock of ${names}`,
  borrowed: (names) => t`change borrowed stock of ${names}`,
  storage: (names) => t`change storage of ${names}`,
  turn: (names) => t`change turn of ${names}`,
  scale: (names) => t`change scale of ${names}`,
  opacity: (names) => t`change opacity of ${names}`,
  shown: (names) => t`change whether ${names} is shown`,
  content: (names) => t`change content of ${names}`,
  person: (names) => t`change person of ${names}`,
  chair: (names) => t`change chair of ${names}`,
  mobility: (names) => t`change mobility of ${names}`,
  player: (names) => t`change player of ${names}`,
  support: (names) => t`change support of ${names}`,
  freeTime: (names) => t`change free time of ${names}`,
  form: (names) => t`change form of ${names}`,
  deskWidth: (names) => t`change desk width of ${names}`,
  deskHeight: (names) => t`change desk height of ${names}`,
  lip: (names) => t`change lip of ${names}`,
  tilt: (names) => t`change tilt of ${names}`,
  sides: (names) => t`change sides of ${names}`,
  depth: (names) => t`change depth of ${names}`,
  lid: (names) => t`change lid of ${names}`,
  cable: (names) => t`change cable of ${names}`,
  cableCovered: (names) => t`change cover of the cable of ${names}`,
  fixed: (names) => t`change whether ${names} is part of the building`,
  members: (names) => t`change members of ${names}`,
  locked: (names) => t`change whether ${names} is locked`,
  hidden: (names) => t`change whether ${names} is hidden`,
};
