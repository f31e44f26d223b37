import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../db/demo/demo.ts';
import { itemDraft } from '../../shared-types/item.ts';
import { scenarioDraft } from '../../shared-types/scenario.ts';
import { tourDays, tourDraft } from '../../shared-types/tour.ts';

const draftOf = ({ id: _, ...draft }: { readonly id: string }): object => draft;

describe('the invented demo', () => {
  it('passes every schema', () => {
    for (const item of demoItems) expect(itemDraft.safeParse(draftOf(item)).error).toBeUndefined();
    for (const tour of demoTours) expect(tourDraft.safeParse(draftOf(tour)).error).toBeUndefined();
    for (const scenario of demoScenarios)
      expect(scenarioDraft.safeParse(draftOf(scenario)).error).toBeUndefined();
  });

  it('is a tour of 20-odd days over several climates and says that it is invented', () => {
    const [tour] = demoTours;
    expect(tourDays(tour!)).toBeGreaterThanOrEqual(20);
    expect(new Set(tour!.legs.map(({ place }) => JSON.stringify(place))).size).toBeGreaterThanOrEqual(3);
    expect(tour!.label).toMatch(/invented/i);
    for (const { notes } of [...demoItems, ...demoScenarios]) expect(notes).toMatch(/invented/i);
  });

  it('has two must-haves, three nice-to-haves, and kit owned and considered', () => {
    const devices = demoItems.filter((item) => item.kind === 'device');
    expect(devices.filter(({ importance }) => importance === 'must-have')).toHaveLength(2);
    expect(devices.filter(({ importance }) => importance === 'nice-to-have')).toHaveLength(3);
    expect(new Set(demoItems.map(({ state }) => state))).toEqual(new Set(['owned', 'considering']));
    expect(demoScenarios.map(({ method }) => method)).toEqual(['banks', 'panel', 'hub']);
  });
});
