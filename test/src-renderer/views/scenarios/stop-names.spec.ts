import { describe, expect, it } from 'vitest';
import { namedStops, stopsText, withStop } from '../../../../src-renderer/views/scenarios/stop-names.ts';
import { demoTours } from '../../../../db/demo/demo.ts';

const leg = demoTours[0]!.legs[0]!;
const tourWith = (...stops: readonly string[]) => ({
  legs: [
    { ...leg, dayStops: stops.map((label) => ({ label, minutes: 60, outlets: 0, chance: 1 })) },
    { ...leg, dayStops: [] },
  ],
});

describe('namedStops()', () => {
  it('finds none where no tour has a stop', () => {
    expect(namedStops([], [])).toEqual([]);
    expect(namedStops([tourWith()], [])).toEqual([]);
  });

  it('keeps a chosen name that no tour has any more', () => {
    expect(namedStops([tourWith('Lunch')], ['Swim'])).toEqual([
      { name: 'Lunch', onATour: true },
      { name: 'Swim', onATour: false },
    ]);
  });

  it('names a stop once, however many tours have it', () => {
    const names = namedStops([tourWith('Lunch', 'Tea'), tourWith('Lunch', 'Lunch')], ['Tea']);
    expect(names.map(({ name }) => name)).toEqual(['Lunch', 'Tea']);
  });
});

describe('withStop()', () => {
  it('ticks a stop once, however often it is ticked', () => {
    expect(withStop(['Lunch', 'Tea'], 'Lunch', true)).toEqual(['Tea', 'Lunch']);
  });

  it('leaves the others when one is no longer wanted', () => {
    expect(withStop(['Lunch', 'Tea'], 'Lunch', false)).toEqual(['Tea']);
    expect(withStop(['Tea'], 'Lunch', false)).toEqual(['Tea']);
  });
});

describe('stopsText()', () => {
  it('says that nothing ticked means every stop', () => {
    expect(stopsText([])).toContain('every stop');
    expect(stopsText(['Lunch'])).not.toContain('every stop');
  });
});
