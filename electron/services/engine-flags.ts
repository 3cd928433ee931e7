/** How the script engine of the window is set, whichever shell opens it. */

/**
 * Every worker has an engine of its own, and each would let its rubbish grow to some 50 MB before it collects. With small nurseries
 * and little growth the six of a large hall together hold half as much, and no pause was seen to be longer for it
 * (`tests/bench/README.md`).
 */
export const ENGINE_FLAGS = '--max-semi-space-size=2 --semi-space-growth-factor=1 --heap-growing-percent=20';
