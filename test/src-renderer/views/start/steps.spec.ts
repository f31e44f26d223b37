import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../../db/demo/demo.ts';
import type { OwnStart } from '../../../../shared-types/own-start.ts';
import { faultsOf, refusedStep, steps } from '../../../../src-renderer/views/start/steps.ts';
import { firstItems, usualDevices, usualKit } from '../../../../src-renderer/views/start/usual-kit.ts';
import { draftOf } from '../../../../src-renderer/state/draft-of.ts';

const begun = (change: Partial<OwnStart> = {}): OwnStart => ({
  items: [...firstItems('EUR')],
  tour: draftOf(demoTours[0]!),
  putDemoAway: true,
  ...change,
});

const pathsOf = (draft: OwnStart): readonly (readonly string[])[] =>
  steps.map(({ name }) => faultsOf(name, draft).map(({ path }) => path));

describe('the steps of a start', () => {
  it('has nothing to find fault with where nothing was changed', () => {
    expect(pathsOf(begun())).toEqual([[], [], [], [], []]);
  });

  it('asks for the price of what is considered, on the step of the kit', () => {
    const items = [...usualDevices, ...usualKit].map(({ item }) => item('EUR'));
    const place = items.findIndex(({ kind }) => kind === 'panel');
    const [devices, kit, ...rest] = pathsOf(begun({ items }));
    expect([devices, ...rest]).toEqual([[], [], [], []]);
    expect(kit).toContain(`own.items.${place}.price.minor`);
  });

  it('finds each fault on the step that asks for it', () => {
    const own = begun();
    const [leg] = own.tour.legs;
    const phone = { ...own.items[0]!, label: '' };
    expect(pathsOf(begun({ items: [phone, ...own.items.slice(1)] }))[0]).toEqual(['own.items.0.label']);
    expect(pathsOf(begun({ items: [] }))[0]).toEqual(['own.items']);
    const long = { ...own.tour, legs: [{ ...leg!, days: 0 }] };
    expect(pathsOf(begun({ tour: long }))[2]).toEqual(['own.tour.legs.0.days']);
    const awake = { ...own.tour, legs: [{ ...leg!, nights: { ...leg!.nights, kinds: [] } }] };
    expect(pathsOf(begun({ tour: awake }))[3]).toEqual(['own.tour.legs.0.nights.kinds']);
  });

  it('leads back to the first step on which the catalogue refused something', () => {
    const at = (...paths: readonly string[]) =>
      refusedStep(
        paths.map((path) => ({ path, allowed: 'another', got: '' })),
        begun(),
      );
    expect(at('own.tour.legs.0.place.station')).toBe(2);
    expect(at('own.tour.legs.0.nights.kinds', 'own.items.0.label')).toBe(0);
    expect(at()).toBe(4);
  });
});
