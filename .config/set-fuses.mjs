/** Turns off in the packaged program what Electron leaves on for development (docs/tutorial/fuses.md). */

import { join } from 'node:path';
import { flipFuses, FuseV1Options, FuseVersion } from '@electron/fuses';

export const FUSES = {
  [FuseV1Options.RunAsNode]: false,
  [FuseV1Options.EnableCookieEncryption]: false,
  [FuseV1Options.EnableNodeOptionsEnvironmentVariable]: false,
  [FuseV1Options.EnableNodeCliInspectArguments]: false,
  [FuseV1Options.EnableEmbeddedAsarIntegrityValidation]: true,
  [FuseV1Options.OnlyLoadAppFromAsar]: true,
  [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: false,
  [FuseV1Options.GrantFileProtocolExtraPrivileges]: false,
};

/**
 * @param {string} program
 * @param {boolean} sign a changed program must be signed anew on macOS
 */
export async function setFuses(program, sign) {
  await flipFuses(program, { version: FuseVersion.V1, resetAdHocDarwinSignature: sign, ...FUSES });
}

/**
 * Called by electron-builder for each packed program.
 * @param {{ appOutDir: string, electronPlatformName: string, packager: { appInfo: { productFilename: string }, executableName?: string } }} context
 */
export default async function afterPack({ appOutDir, electronPlatformName, packager }) {
  const name = packager.appInfo.productFilename;
  const programs = {
    darwin: `${name}.app/Contents/MacOS/${name}`,
    win32: `${name}.exe`,
    linux: packager.executableName ?? name,
  };
  const program = programs[/** @type {keyof typeof programs} */ (electronPlatformName)];
  await setFuses(join(appOutDir, program), electronPlatformName === 'darwin');
}
