import fc from 'fast-check';
import type { z } from 'zod';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import { cataloguePath } from '../../../shared-types/catalogue-file.ts';
import { contract } from '../../../shared-types/contract.ts';
import { onTourQuestion } from '../../../shared-types/field-log.ts';
import { id } from '../../../shared-types/field.ts';
import { itemDraft, itemKinds, type ItemDraft, type ItemKind } from '../../../shared-types/item.ts';
import { noLimits } from '../../../shared-types/limits.ts';
import { ownStart } from '../../../shared-types/own-start.ts';
import { readingKinds, readingDraft, readingsOfKind, isRead } from '../../../shared-types/reading.ts';
import { scenarioDraft, type Scenario } from '../../../shared-types/scenario.ts';
import { preferences, settings } from '../../../shared-types/settings.ts';
import { stopSituation } from '../../../shared-types/stop-plan.ts';
import { tourDraft, type TourDraft } from '../../../shared-types/tour.ts';
import { upgradeQuestion } from '../../../shared-types/upgrade.ts';
import {
  arbitraryOf,
  randomItem,
  randomScenario,
  randomSettings,
  randomTour,
  type ByHand,
} from '../../src-main/catalogue/random-drafts.ts';
import { shortTourId } from './start-rows.ts';

/*
 * Parts of inputs that obey rules across fields or name rows that are there, so that more than the schemas is tried.
 */

const itemIds = demoItems.map((item) => item.id);
export const tourIds: readonly string[] = [shortTourId, ...demoTours.map((tour) => tour.id)];

const kinds = Object.keys(itemKinds) as ItemKind[];
export const anyItem: fc.Arbitrary<ItemDraft> = fc.oneof(...kinds.map((kind) => randomItem(kind)));

/** A tour whose legs lie where a station is near and have its sunshine, as often as not. */
export function likelyTour(ids: readonly string[]): fc.Arbitrary<TourDraft> {
  const spot = fc.record({
    as: fc.constant('coordinates' as const),
    latDeg: fc.double({ min: -90, max: 90, noNaN: true }),
    lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    elevationM: fc.integer({ min: 0, max: 5000 }),
  });
  const sunny = fc.tuple(randomTour(ids), spot).map(([tour, place]) => ({
    ...tour,
    legs: tour.legs.map((leg) => ({ ...leg, place, radiation: { as: 'sunshine' as const } })),
  }));
  return fc.oneof({ weight: 1, arbitrary: randomTour(ids) }, { weight: 3, arbitrary: sunny });
}

/** Something that can be read of an item, of which it can be read. */
const likelyReading = fc.oneof(
  ...demoItems.flatMap((item) =>
    isRead(item.kind)
      ? readingsOfKind[item.kind].map((form) =>
          arbitraryOf(readingKinds[form], new Map([[id, fc.constant(item.id)]])),
        )
      : [],
  ),
);

const kitIds = demoItems.filter(({ kind }) => kind !== 'device').map((item) => item.id);
const likelyLines = fc
  .subarray(kitIds, { maxLength: 3 })
  .map((ids) => ids.map((itemId) => ({ itemId, quantity: 1 })));

/** How full every battery and bank is that comes along with the demo's devices and a scenario. */
const likelyStates = fc
  .tuple(fc.constantFrom(...demoScenarios), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([scenario, share]) =>
    piecesOf(scenario).map((piece) => ({ ...piece, state: { as: 'share' as const, share } })),
  );

function piecesOf({ kit }: Scenario): readonly { readonly itemId: string; readonly copy: number }[] {
  const carried = new Map(kit.map(({ itemId, quantity }) => [itemId, quantity]));
  return demoItems.flatMap((item) => {
    const pieces =
      item.kind === 'device' ? item.quantity : item.kind === 'bank' ? (carried.get(item.id) ?? 0) : 0;
    return Array.from({ length: pieces }, (_, copy) => ({ itemId: item.id, copy }));
  });
}

/** Files of either sort, their beginnings, and what is none. */
const someText = fc.oneof(
  fc.constantFrom('kind,label,mass_g\naccessory,Cable,20\n', 'kind;label\n"'),
  fc.constantFrom('{"format":"chargewright-catalogue","formatVersion":1,"items":[{}]}', '{"format":', ''),
  fc.string({ unit: 'binary' }),
);

/** As from the root of a disk: of a catalogue, of folders, of nothing, and such as no system has. */
const somePaths = [
  ...['/catalogue.sqlite3', '/', '/.', '/backups', '/catalogue.sqlite3/below', '/nowhere/at/all'],
  ...['catalogue.sqlite3', '~', '.', '/x\0y', '/former.sqlite3', '/\ud83d'],
  ...[`/${'x'.repeat(300)}`, '/x'.repeat(4000), '/..'.repeat(2)],
];

const firstLegs = fc.constantFrom(0, 0, 0, 1, 99);
const likelyPreferences = fc
  .tuple(randomSettings(tourIds), fc.boolean())
  .map(([{ preferences: random }, isFree]) => (isFree ? { ...random, limits: noLimits } : random));

export const likelyParts: ByHand = new Map<z.core.$ZodType, fc.Arbitrary<unknown>>([
  [itemDraft, anyItem],
  [ownStart.shape.items, fc.tuple(randomItem('device'), anyItem)],
  [tourDraft, likelyTour(itemIds)],
  [scenarioDraft, randomScenario(itemIds)],
  [settings, randomSettings(tourIds)],
  [preferences, likelyPreferences],
  [readingDraft, likelyReading],
  [upgradeQuestion.shape.add, likelyLines],
  [stopSituation.shape.states, likelyStates],
  [onTourQuestion.shape.day, fc.constantFrom(null, 1, 2, 3)],
  [contract['tours.legSun'].input.shape.leg, firstLegs],
  [contract['items.readCsv'].input.shape.text, someText],
  [cataloguePath, fc.oneof(fc.constantFrom(...somePaths), fc.string({ unit: 'binary', minLength: 1 }))],
]);
