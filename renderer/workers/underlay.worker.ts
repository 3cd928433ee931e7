/** Reads what is to go under a plan beside the window: a hostile file may take as long as it likes here. */

import {
  contentOfDxf,
  contentOfPicture,
  type UnderlayAnswer,
  type UnderlayQuestion,
  type UnderlayReady,
} from './underlay-content.ts';

addEventListener('message', ({ data }: MessageEvent<UnderlayQuestion>) => {
  answered(data).then(
    (answer) => postMessage(answer),
    () => postMessage({ ok: false, problem: 'damaged' } satisfies UnderlayAnswer),
  );
});

postMessage('ready' satisfies UnderlayReady);

async function answered({ kind, bytes, media }: UnderlayQuestion): Promise<UnderlayAnswer> {
  return kind === 'dxf' ? contentOfDxf(bytes) : contentOfPicture(bytes, media);
}
