/** How the script engine of the window is set, whichever shell opens it. */

/**
 * Every worker has an engine of its own, and each would let its rubbish grow to some 50 MB before it collects; with nurseries of
 * 4 MB the seven of a large hall together hold half as much, and no pause was longer for it (`tests/bench/README.md`).
 */
export const ENGINE_FLAGS = '--max-semi-space-size=4 --semi-space-growth-factor=1';
