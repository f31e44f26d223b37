import { describe, expect, it } from 'vitest';
import { roadSection } from '../../../../src-main/sheet/content/road.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { listsOf } from '../../../support/sheet-section.ts';

function road(...changes: Parameters<typeof comparisonFixture>): readonly string[] {
  return listsOf(roadSection(comparisonFixture(...changes))).flatMap(({ items }) => items);
}

describe('roadSection', () => {
  it('has nothing to say when nothing was compared', () => {
    expect(road({ scenarios: [] })).toEqual([]);
  });

  it('goes from the minutes of each scenario to the hub’s cost to the notes on the legs', () => {
    const { legs } = scenarioFixture('hub');
    const noted = legs.map((leg) => ({ ...leg, notes: ['The station is far.'] }));
    const scenarios = [scenarioFixture('hub', { legs: noted }), scenarioFixture('banks')];
    // By hand from the fixture, a mean of 14 and 10 days that are alike: 1.2 min by grams, 3.4 and 0.9 by the hub.
    expect(road({ scenarios })).toEqual([
      expect.stringMatching(
        /^Generator hub: 1\.2 min a day later by its grams, 3\.4 by .* \(0\.9 switched off\)/u,
      ),
      'Two banks: 1.2 min a day later by its grams.',
      expect.stringMatching(/^Generator hub: the hub really costs 264\u00a0EUR and 396\u00a0g/u),
      'Coast, Passes: The station is far.',
    ]);
  });

  it('says a note of the legs once, though every scenario has it', () => {
    const legs = scenarioFixture('hub').legs.map((leg) => ({ ...leg, notes: [`Mind the ${leg.leg}.`] }));
    const scenarios = (['panel', 'banks'] as const).map((method) => scenarioFixture(method, { legs }));
    expect(road({ scenarios }).filter((text) => text.includes('Mind'))).toEqual([
      'Coast: Mind the Coast.',
      'Passes: Mind the Passes.',
    ]);
  });
});
