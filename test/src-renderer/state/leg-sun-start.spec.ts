import { describe, expect, it } from 'vitest';
import {
  firstDateOf,
  startingBy,
  startingLying,
  stillThere,
} from '../../../src-renderer/state/leg-sun-start.ts';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';

describe('startingBy()', () => {
  it.each([
    [1, 'day'],
    [62, 'day'],
    [63, 'month'],
    [366, 'month'],
  ])('shows a leg of %d days by %s', (days, by) => {
    expect(startingBy(days)).toBe(by);
  });
});

describe('startingLying()', () => {
  it('lies flat when no scenario carries a panel', () => {
    expect(startingLying([], demoItems)).toEqual({ as: 'flat' });
    expect(startingLying(demoScenarios, [])).toEqual({ as: 'flat' });
  });

  it('lies as the first scenario that carries a panel', () => {
    const { id } = demoScenarios.find(({ method }) => method === 'panel')!;
    expect(startingLying(demoScenarios, demoItems)).toEqual({ as: 'scenario', scenarioId: id });
  });
});

describe('stillThere()', () => {
  it('misses a scenario that was removed', () => {
    expect(stillThere({ as: 'scenario', scenarioId: 'gone' }, demoScenarios)).toBe(false);
    expect(stillThere({ as: 'scenario', scenarioId: demoScenarios[0]!.id }, demoScenarios)).toBe(true);
  });

  it('needs no scenario for flat or aimed panels', () => {
    expect([stillThere({ as: 'flat' }, []), stillThere({ as: 'aimed' }, [])]).toEqual([true, true]);
  });
});

describe('firstDateOf()', () => {
  const { legs } = demoTours[0]!;
  const tour = { startDate: '2027-12-30', legs: legs.map((leg) => ({ ...leg, days: 3 })) };

  it('begins the first leg with the tour', () => {
    expect(firstDateOf(tour, 0)).toBe('2027-12-30');
  });

  it('goes on over new year after the legs before', () => {
    expect(firstDateOf(tour, 1)).toBe('2028-01-02');
    expect(firstDateOf(tour, 2)).toBe('2028-01-05');
  });
});
