/** The one name under which the window's calls travel through Electron. */
export const BRIDGE = 'standlines:call';

/** What the preload script gives the window as `window.standlines`. */
export const EXPOSED_AS = 'standlines';
