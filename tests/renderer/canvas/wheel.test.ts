import { describe, expect, it } from 'vitest';
import { isNotched } from '../../../renderer/canvas/wheel.ts';

// What browsers send is from memory: Chromium 100 to 120 px and 120 of its own units a notch, Firefox lines.
describe('isNotched', () => {
  it('knows the wheel of a mouse by its steps', () => {
    expect(isNotched({ deltaX: 0, deltaY: 100, deltaMode: 0, wheelDeltaY: -120 })).toBe(true);
    expect(isNotched({ deltaX: 0, deltaY: -240, deltaMode: 0, wheelDeltaY: 240 })).toBe(true);
    expect(isNotched({ deltaX: 0, deltaY: 3, deltaMode: 1 })).toBe(true);
  });

  it('takes small steps and slanting ones for two fingers', () => {
    expect(isNotched({ deltaX: 0, deltaY: 4, deltaMode: 0, wheelDeltaY: -12 })).toBe(false);
    expect(isNotched({ deltaX: 0, deltaY: 40, deltaMode: 0, wheelDeltaY: -120 })).toBe(false);
    expect(isNotched({ deltaX: 3, deltaY: 120, deltaMode: 0, wheelDeltaY: -360 })).toBe(false);
    expect(isNotched({ deltaX: 0, deltaY: 71, deltaMode: 0, wheelDeltaY: -213 })).toBe(false);
  });
});
