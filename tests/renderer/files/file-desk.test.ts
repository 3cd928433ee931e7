import { readFileSync } from 'node:fs';
import type { Document } from '#model/document/document.ts';
import type { Entry } from '#model/document/history.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  FileDesk,
  withEnding,
  type Asking,
  type ConflictChoice,
  type TroubleChoice,
  type UnsavedChoice,
} from '../../../renderer/files/file-desk.ts';
import { WorkKeeper } from '../../../renderer/files/work-keeper.ts';
import * as concerts from '../../../renderer/state/open-concert.ts';
import { aDocument, aPlayer, aStand } from '../../helpers/build.ts';
import { FakeShell } from './fake-shell.ts';

/** The open concert without the window round it. */
class PlainConcert {
  now = concerts.opened(aDocument(), true);
  get settled(): Document {
    return this.now.history.document;
  }
  get dirty(): boolean {
    return concerts.isDirty(this.now);
  }
  get lastEntry(): Entry | null {
    return concerts.lastEntry(this.now);
  }
  open(document: Document, inFile: boolean): void {
    this.now = concerts.opened(document, inFile);
  }
  markSaved(at: Entry | null): void {
    this.now = concerts.saved(this.now, at);
  }
  moveStand(x: number): void {
    const before = this.settled.records.get('stand-1') ?? null;
    const diff = new Map([['stand-1', { before, after: aStand({ x }) }]]);
    this.now = concerts.carriedOut(this.now, { ok: true, label: 'move stand 1', diff });
  }
}

interface Answers {
  unsaved: UnsavedChoice;
  conflict: ConflictChoice;
  notSaved: TroubleChoice;
  place: string | null;
}

let shell: FakeShell;
let concert: PlainConcert;
let answers: Answers;
let asked: string[];
let remarks: string[];
let told: string[];
let loadChanged: () => void;
let desk: FileDesk;

const asking = (): Asking => {
  const note = <T>(question: string, answer: T): Promise<T> => {
    asked.push(question);
    return Promise.resolve(answer);
  };
  return {
    unsaved: (name) => note(`unsaved ${name}`, answers.unsaved),
    conflict: () => note('conflict', answers.conflict),
    notSaved: (fault, mayReplace) => note(`notSaved ${fault.code} ${mayReplace}`, answers.notSaved),
    openPlace: () => note('openPlace', answers.place),
    savePlace: (name) =>
      note(`savePlace ${name}`, answers.place === null ? null : { handle: answers.place, replace: false }),
  };
};

beforeEach(() => {
  shell = new FakeShell();
  concert = new PlainConcert();
  answers = { unsaved: null, conflict: null, notSaved: null, place: null };
  asked = [];
  remarks = [];
  told = [];
  let keys = 0;
  desk = new FileDesk({
    host: shell,
    concert,
    ask: asking(),
    news: {
      coming: (arrival) => arrival,
      identity: (_, cause) => told.push(cause),
      saved: (name) => told.push(`saved ${name}`),
      remark: (message, topic) => remarks.push(`${topic}: ${message}`),
      changed: (name, load) => {
        told.push(`changed ${name}`);
        loadChanged = load;
      },
    },
    newKey: () => `key-${++keys}`,
  });
  shell.files.set('trio', writeDocument(aDocument(aPlayer(), aStand())));
});

const onDisk = (handle: string): Document => {
  const reading = readDocument(shell.files.get(handle) ?? '');
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.document;
};

describe('saving', () => {
  it('writes to the file it was opened from and is clean then', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    expect(await desk.save()).toBe(true);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 500 });
    expect(concert.dirty).toBe(false);
    expect(asked).toEqual([]);
  });

  it('asks for a place when it lies in no file, and stays unsaved when none is given', async () => {
    desk.begin(aDocument(), 'Spring', { pristine: false });
    expect(await desk.save()).toBe(false);
    expect(asked).toEqual(['savePlace Spring.standlines']);
    expect(concert.dirty).toBe(true);
    answers.place = 'new';
    expect(await desk.save()).toBe(true);
    expect(desk.identity).toMatchObject({ handle: 'new', name: 'new' });
  });

  it('keeps both versions apart when another program changed the file', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    shell.files.set('trio', writeDocument(aDocument()));
    const theirs = shell.files.get('trio');

    expect(await desk.save()).toBe(false);
    expect(shell.files.get('trio')).toBe(theirs);
    expect(concert.dirty).toBe(true);

    answers.conflict = 'copy';
    answers.place = 'mine';
    expect(await desk.save()).toBe(true);
    expect(shell.files.get('trio')).toBe(theirs);
    expect(onDisk('mine').records.get('stand-1')).toMatchObject({ x: 500 });
  });

  it('loads theirs or overwrites it when told to', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    shell.files.set('trio', writeDocument(aDocument()));
    answers.conflict = 'theirs';
    expect(await desk.save()).toBe(false);
    expect(concert.settled.records.has('stand-1')).toBe(false);
    expect(concert.dirty).toBe(false);

    concert.moveStand(700);
    shell.files.set('trio', writeDocument(aDocument(aPlayer())));
    answers.conflict = 'overwrite';
    expect(await desk.save()).toBe(true);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 700 });
  });

  it.each(['file.exists', 'file.gone', 'file.readOnly'])('offers to replace after %s', async (code) => {
    await desk.open('trio');
    concert.moveStand(500);
    shell.nextFault = { code, message: code };
    answers.notSaved = 'replace';
    expect(await desk.save()).toBe(true);
    expect(asked).toEqual([`notSaved ${code} true`]);
  });

  it('does not offer to replace on a full disk, but another place', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    shell.nextFault = { code: 'disk.full', message: 'full' };
    answers.notSaved = 'elsewhere';
    answers.place = 'stick';
    expect(await desk.save()).toBe(true);
    expect(asked).toEqual(['notSaved disk.full false', 'savePlace trio.standlines']);
    expect(desk.identity.handle).toBe('stick');
  });

  it('stays dirty when the concert was changed while it was being written', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    shell.beforeSave = () => {
      shell.beforeSave = () => Promise.resolve();
      concert.moveStand(600);
      return Promise.resolve();
    };
    expect(await desk.save()).toBe(true);
    expect(concert.dirty).toBe(true);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 500 });
  });

  it('writes one after the other, and the last state wins', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    const first = desk.save();
    concert.moveStand(900);
    const later = [desk.save(), desk.save()];
    expect(await Promise.all([first, ...later])).toEqual([true, true, true]);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 900 });
    expect(concert.dirty).toBe(false);
    expect(asked).toEqual([]);
  });
});

describe('opening', () => {
  it('leaves what is open alone when the file cannot be read', async () => {
    await desk.open('trio');
    const before = concert.settled;
    shell.files.set('broken', '{"format":"standlines","version":99,"records":[]}');
    expect(await desk.open('broken')).toBe(false);
    expect(await desk.open('missing')).toBe(false);
    expect(concert.settled).toBe(before);
    expect(desk.identity.handle).toBe('trio');
    expect(remarks).toHaveLength(2);
  });

  it('asks about unsaved changes before it opens another', async () => {
    await desk.open('trio');
    shell.files.set('duo', writeDocument(aDocument()));
    concert.moveStand(1);
    answers.place = 'duo';
    expect(await desk.chooseAndOpen()).toBe(false);
    expect(desk.identity.handle).toBe('trio');
    answers.unsaved = 'discard';
    expect(await desk.chooseAndOpen()).toBe(true);
    expect(desk.identity.handle).toBe('duo');
  });
});

describe('what is told', () => {
  it('is which file could not be opened, and nothing when it was only tried', async () => {
    shell.files.set('torn', '{');
    expect(await desk.open('torn')).toBe(false);
    expect(await desk.open('gone', { tried: true })).toBe(false);
    expect(remarks).toEqual([expect.stringMatching(/^opening: torn: /)]);
  });

  it('is that a file was of an older version, apart from what has to be looked at', async () => {
    const url = new URL('../../fixtures/old/version-1.standlines', import.meta.url);
    shell.files.set('old', readFileSync(url, 'utf8'));
    expect(await desk.open('old')).toBe(true);
    expect(remarks).toEqual([
      expect.stringMatching(/^version: old: The file was of version 1 and has been brought/),
    ]);
  });

  it('is that a document was opened or saved, so that what was said before can go', async () => {
    await desk.open('trio');
    concert.moveStand(500);
    await desk.save();
    expect(told).toEqual(['opened', 'saved', 'saved trio']);
  });
});

describe('coming back to the window', () => {
  it('tells once that another program has written the file, and loads it when asked to', async () => {
    await desk.open('trio');
    await desk.lookAgain();
    shell.files.set('trio', writeDocument(aDocument(aStand({ x: 77 }))));
    await desk.lookAgain();
    await desk.lookAgain();
    expect(told).toEqual(['opened', 'changed trio']);
    loadChanged();
    await expect.poll(() => concert.settled.records.get('stand-1')).toMatchObject({ x: 77 });
    await desk.lookAgain();
    expect(told).toEqual(['opened', 'changed trio', 'opened']);
  });

  it('leaves it to the save while there are unsaved changes, and asks before they are lost', async () => {
    await desk.open('trio');
    shell.files.set('trio', writeDocument(aDocument(aStand({ x: 77 }))));
    await desk.lookAgain();
    concert.moveStand(500);
    loadChanged();
    await expect.poll(() => asked).toEqual(['unsaved trio']);
    expect(concert.settled.records.get('stand-1')).toMatchObject({ x: 500 });
    told = [];
    shell.files.set('trio', writeDocument(aDocument(aStand({ x: 78 }))));
    await desk.lookAgain();
    expect(told).toEqual([]);
  });

  it('says nothing of a file that is not there, and nothing where there is no file', async () => {
    await desk.lookAgain();
    await desk.open('trio');
    shell.files.delete('trio');
    await desk.lookAgain();
    expect(told).toEqual(['opened']);
    expect(remarks).toEqual([]);
  });
});

/** Work on a file that was kept and never saved, opened again as after a crash. */
async function recoverAfterWorkOn(handle: string): Promise<void> {
  await desk.open(handle);
  concert.moveStand(321);
  const keeper = new WorkKeeper(shell, () => undefined);
  keeper.changed({ document: concert.settled, identity: desk.identity });
  await keeper.flush();
  expect(await desk.recover(desk.identity.key)).toBe(true);
}

describe('recovering', () => {
  it('is unsaved, and the kept work goes only after a save', async () => {
    shell.kept.set('old', writeDocument(aDocument(aStand({ x: 321 }))));
    expect(await desk.recover('old')).toBe(true);
    expect(concert.dirty).toBe(true);
    expect(shell.kept.has('old')).toBe(true);
    answers.place = 'rescued';
    expect(await desk.save()).toBe(true);
    expect(shell.kept.has('old')).toBe(false);
    expect(onDisk('rescued').records.get('stand-1')).toMatchObject({ x: 321 });
  });

  it('saves to its own file without a question while that holds what the work began from', async () => {
    await recoverAfterWorkOn('trio');
    expect(await desk.save()).toBe(true);
    expect(asked).toEqual([]);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 321 });
  });

  it('asks what to do when its file has changed since', async () => {
    await recoverAfterWorkOn('trio');
    shell.files.set('trio', writeDocument(aDocument(aStand({ x: 77 }))));
    expect(await desk.save()).toBe(false);
    expect(asked).toEqual(['conflict']);
    expect(onDisk('trio').records.get('stand-1')).toMatchObject({ x: 77 });
  });
});

describe('withEnding', () => {
  it('adds the ending once', () => {
    expect(withEnding('Trio')).toBe('Trio.standlines');
    expect(withEnding('Trio.Standlines')).toBe('Trio.Standlines');
  });
});
