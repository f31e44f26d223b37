import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../db/demo/demo.ts';
import { withValueAt } from '../../../src-renderer/state/form.svelte.ts';
import { editWords, settingsWords } from '../../../src-renderer/state/edit-words.ts';

const item = demoItems.find(({ id }) => id === 'demo-phone')!;
const tour = demoTours[0]!;
const scenario = demoScenarios[0]!;
const changed = <T>(row: T, path: string, value: unknown): T => withValueAt(row, path.split('.'), value) as T;

describe('editWords()', () => {
  it('has none for what says the same', () => {
    expect(editWords('items', item, structuredClone(item))).toBeNull();
  });

  it.each([
    ['massG', 12, 'Changed ‘Mass of one’ of Phone'],
    ['price.minor', 12, 'Changed ‘Price of one’ of Phone'],
    ['label', 'Telephone', 'Changed ‘Label’ of Phone'],
  ])('names the field of an item at %s', (path, value, words) => {
    expect(editWords('items', item, changed(item, path, value))).toEqual({ words, field: path });
  });

  it('names the item alone where several fields changed', () => {
    const after = { ...item, massG: 1, notes: 'weighed' };
    expect(editWords('items', item, after)).toEqual({ words: 'Changed Phone', field: null });
  });

  it('names the leg in which a field lies', () => {
    const words = editWords('tours', tour, changed(tour, 'legs.0.days', 9))?.words;
    expect(words).toBe(`Changed ‘Days’ of ${tour.legs[0]!.label}, ${tour.label}`);
  });

  it.each([
    ['Removed from', tour.legs.slice(1)],
    ['Added to', [...tour.legs, tour.legs[0]!]],
  ])('tells what was %s a list, as no one field', (verb, legs) => {
    const words = `${verb} ‘Legs’ of ${tour.label}`;
    expect(editWords('tours', tour, { ...tour, legs: [...legs] })).toEqual({ words, field: null });
  });

  it('names a field of a scenario', () => {
    const after = changed(scenario, 'method', scenario.method === 'hub' ? 'banks' : 'hub');
    expect(editWords('scenarios', scenario, after)?.words).toMatch(/^Changed ‘.+’ of /);
  });
});

describe('settingsWords()', () => {
  it.each([
    ['preferences.cost.weight', 0.9, 'Changed the weight of ‘To buy’'],
    ['preferences.cost.satisfied', 9, 'Changed the scale of ‘To buy’'],
    ['preferences.limits.grams', 900, 'Changed what no scenario may pass'],
    ['sky.seed', 7, 'Changed ‘Seed’ in the settings'],
    ['tourId', null, 'Chose the tour to compare on'],
  ])('names what changed at %s', (path, value, words) => {
    expect(settingsWords(demoSettings, changed(demoSettings, path, value))).toEqual({ words, field: path });
  });

  it('has none for settings that say the same', () => {
    expect(settingsWords(demoSettings, structuredClone(demoSettings))).toBeNull();
  });
});
