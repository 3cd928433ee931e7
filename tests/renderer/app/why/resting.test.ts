import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PACE, Resting } from '../../../../renderer/app/why/resting.ts';

describe('words about what is pointed at', () => {
  const shown: (string | null)[] = [];
  let resting: Resting<string>;

  beforeEach(() => {
    vi.useFakeTimers();
    shown.length = 0;
    resting = new Resting<string>((on) => shown.push(on));
  });
  afterEach(() => void vi.useRealTimers());

  const wait = (ms: number) => vi.advanceTimersByTime(ms);

  it('wait until the pointer rests', () => {
    resting.over('lip');
    wait(PACE.rest - 1);
    resting.over('tilt');
    wait(PACE.rest - 1);
    expect(shown).toEqual([]);
    wait(1);
    expect(shown).toEqual(['tilt']);
  });

  it('come at once where others are shown', () => {
    resting.over('lip');
    wait(PACE.rest);
    resting.over('tilt');
    expect(shown).toEqual(['lip', 'tilt']);
  });

  it('stay while the pointer goes over to them and rests on them', () => {
    resting.over('lip');
    wait(PACE.rest);
    resting.over(null);
    wait(PACE.leave - 1);
    resting.stay();
    wait(60_000);
    expect(shown).toEqual(['lip']);
    resting.over(null);
    wait(PACE.leave);
    expect(shown).toEqual(['lip', null]);
  });

  it('do not come back over what was used or put away, until something else was pointed at', () => {
    resting.over('lip');
    wait(PACE.rest);
    resting.gone();
    resting.over('lip');
    wait(60_000);
    expect(shown).toEqual(['lip', null]);
    resting.over(null);
    resting.over('lip');
    wait(PACE.rest);
    expect(shown).toEqual(['lip', null, 'lip']);
  });

  it('do not come at all over what is used before', () => {
    resting.over('lip');
    resting.gone();
    wait(60_000);
    expect(shown).toEqual([]);
  });
});
