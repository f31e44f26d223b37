import { describe, expect, it } from 'vitest';
import { success } from '../../../../shared-types/outcome.ts';
import type { TourDraft } from '../../../../shared-types/tour.ts';
import { Form } from '../../../../src-renderer/state/form.svelte.ts';
import { startingTour } from '../../../../src-renderer/views/tours/new-tour.ts';
import { putTerrainBack } from '../../../../src-renderer/views/tours/terrain-back.ts';

const hilly = { as: 'class', terrainClass: 'hilly' } as const;

/** A tour of rolling legs with these labels. */
function formOf(...labels: readonly string[]): Form<TourDraft> {
  const tour = startingTour('2027-05-03');
  const legs = labels.map((label) => ({ ...tour.legs[0]!, label }));
  const store = () => Promise.resolve(success(null));
  return new Form<TourDraft>({ ...tour, legs }, { root: 'tour', live: true, store });
}

const classes = (form: Form<TourDraft>) => form.draft.legs.map(({ terrain }) => terrain.terrainClass);

describe('putTerrainBack()', () => {
  it('does nothing once the leg is gone', () => {
    const form = formOf('Hills', 'Steppe');
    expect(putTerrainBack(form, { place: 1, label: 'Coast', terrain: hilly })).toBe(false);
    expect(classes(form)).toEqual(['rolling', 'rolling']);
  });

  it('follows a leg that was moved', () => {
    const form = formOf('Steppe', 'Hills');
    expect(putTerrainBack(form, { place: 0, label: 'Hills', terrain: hilly })).toBe(true);
    expect(classes(form)).toEqual(['rolling', 'hilly']);
  });

  it('keeps to its place among legs of one name', () => {
    const form = formOf('Leg', 'Leg');
    putTerrainBack(form, { place: 1, label: 'Leg', terrain: hilly });
    expect(classes(form)).toEqual(['rolling', 'hilly']);
  });
});
