import fc from 'fast-check';
import type { z } from 'zod';
import { id, isoDate } from '../../shared-types/field.ts';
import { keptEstimate, measure, type KeptEstimate, type Measure } from '../../shared-types/field-log.ts';
import { itemKinds, type Item, type ItemKind } from '../../shared-types/item.ts';
import { readingDraft, type Reading, type ReadingDraft } from '../../shared-types/reading.ts';
import type { CatalogueContent } from '../../src-main/catalogue/exchange/content.ts';
import {
  arbitraryOf,
  randomItem,
  randomScenario,
  randomSettings,
  randomTour,
} from '../src-main/catalogue/random-drafts.ts';

/* Whole catalogues of whatever the schemas allow. What they hold need make no sense: the exchange has to keep it all the same. */

const kindNames = Object.keys(itemKinds) as ItemKind[];
const itemIds = kindNames.map((kind) => `an-${kind}`);
const tourIds = ['tour-of-spring', 'tour-of-autumn'];
const measures: Readonly<Partial<Record<ItemKind, readonly Measure[]>>> = {
  bank: measure.options.filter((name) => name.startsWith('bank-')),
  device: measure.options.filter((name) => name.startsWith('device-')),
  panel: measure.options.filter((name) => name.startsWith('panel-')),
  'generator-hub': measure.options.filter((name) => name.startsWith('hub-')),
};

/** One item of every kind. */
const items: fc.Arbitrary<Item[]> = fc.tuple(
  ...kindNames.map((kind) => randomItem(kind).map((draft): Item => ({ ...draft, id: `an-${kind}` }))),
);

function withIds<Draft>(
  drafts: fc.Arbitrary<Draft>,
  ids: readonly string[],
): fc.Arbitrary<(Draft & { readonly id: string })[]> {
  return fc.tuple(...ids.map((name) => drafts.map((draft) => ({ ...draft, id: name }))));
}

const ofSomeItem = new Map<z.core.$ZodType, fc.Arbitrary<unknown>>([[id, fc.constantFrom(...itemIds)]]);
/** A reading of each form, and some on one day, whose order must last. */
const readings: fc.Arbitrary<Reading[]> = fc
  .tuple(
    ...readingDraft.options.map((form) =>
      fc.array(arbitraryOf(form, ofSomeItem), { minLength: 1, maxLength: 2 }),
    ),
  )
  .chain((forms) => fc.shuffledSubarray(forms.flat() as ReadingDraft[], { minLength: 1 }))
  .map((drafts) =>
    drafts.map((draft, place): Reading => ({
      ...draft,
      on: place % 2 === 0 ? '2027-05-01' : draft.on,
      id: `reading-${(place * 7) % 10}${place}`,
    })),
  );

const someDay = arbitraryOf(isoDate({ label: 'Stored on' })) as fc.Arbitrary<string>;
const counted = arbitraryOf(keptEstimate.shape.readings) as fc.Arbitrary<number>;
const figures = fc
  .tuple(...[0, 1, 2].map(() => arbitraryOf(keptEstimate.shape.value) as fc.Arbitrary<number>))
  .map((some) => some.toSorted((one, other) => one - other));

function randomEstimate(itemId: string, name: Measure): fc.Arbitrary<KeptEstimate> {
  return fc.tuple(figures, someDay, counted).map(([[low = 0, value = 0, high = 0], on, count]) => ({
    ...{ itemId, measure: name, low, value, high },
    ...{ readings: count, on },
  }));
}

const estimates: fc.Arbitrary<KeptEstimate[]> = fc
  .subarray(kindNames.flatMap((kind) => (measures[kind] ?? []).map((name) => [`an-${kind}`, name] as const)))
  .chain((chosen) => fc.tuple(...chosen.map(([itemId, name]) => randomEstimate(itemId, name))));

/** A catalogue with something in every list, all of whose references lead somewhere. */
export const randomCatalogue: fc.Arbitrary<CatalogueContent> = fc.record({
  items,
  tours: withIds(randomTour(itemIds), tourIds),
  scenarios: withIds(randomScenario(itemIds), ['scenario-1', 'scenario-2', 'scenario-3']),
  readings,
  estimates,
  settings: randomSettings(tourIds),
});
