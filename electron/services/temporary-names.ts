/** Names of the files that a save leaves beside a document: its step on the way, and the version before. */

const LONGEST_NAME = 255;
const TEMPORARY = /^\..*\.(\d{1,10})-[0-9a-f]{12}\.standlines-tmp$/su;

/** `.NAME.PID-RANDOM.standlines-tmp`, with NAME cut so that the whole is a legal file name. */
export function temporaryName(name: string, pid: number, random: string): string {
  const ending = `.${pid}-${random}.standlines-tmp`;
  return `.${cutToBytes(name, LONGEST_NAME - 1 - ending.length)}${ending}`;
}

/** The process that made a temporary file, or null for any other name. */
export function makerOf(name: string): number | null {
  const match = TEMPORARY.exec(name);
  return match ? Number(match[1]) : null;
}

export function backupName(name: string): string {
  return `${cutToBytes(name, LONGEST_NAME - 4)}.bak`;
}

/** Never cuts through a character. */
function cutToBytes(text: string, most: number): string {
  let kept = '';
  let bytes = 0;
  for (const character of text) {
    bytes += Buffer.byteLength(character);
    if (bytes > most) break;
    kept += character;
  }
  return kept;
}
