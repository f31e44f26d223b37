import fc from 'fast-check';
import { z } from 'zod';
import { hubPower } from '../../../shared-types/hub-item.ts';
import { itemKinds, type ItemDraft, type ItemKind } from '../../../shared-types/item.ts';
import { limits } from '../../../shared-types/limits.ts';
import { placement, scenarioDraft, type ScenarioDraft } from '../../../shared-types/scenario.ts';
import {
  criteria,
  criterionNames,
  preferences,
  settings,
  type Criterion,
  type CriterionScale,
  type Settings,
} from '../../../shared-types/settings.ts';
import { tourDraft, type TourDraft } from '../../../shared-types/tour.ts';
import { trackProfile, type TrackProfile } from '../../../shared-types/track.ts';

/*
 * Random drafts made from the schemas themselves: whatever a schema allows, up to its limits, comes out sooner or later.
 * Rules across fields (rising speeds, days in all) are not in the parts of a schema; those parts are given by hand.
 */

export type ByHand = ReadonlyMap<z.core.$ZodType, fc.Arbitrary<unknown>>;

/** Lists are kept short: a repository treats the fifth element as the fiftieth. */
const longestList = 5;
const byNothing: ByHand = new Map();

const text = fc.string({ unit: 'binary', maxLength: 30 });
const calendarDate = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const currency = fc.string({ unit: fc.constantFrom('A', 'B', 'M', 'Z'), minLength: 3, maxLength: 3 });
const label = text.map((value) => value.replace(/\p{Cc}/gu, '').trim()).filter((value) => value !== '');

/** SQLite keeps no minus before a zero, and no figure here means anything by it. */
const number = (schema: z.ZodNumber): fc.Arbitrary<number> => {
  const [min, max] = [schema.minValue ?? NaN, schema.maxValue ?? NaN];
  if (schema.format === 'safeint') return fc.integer({ min, max });
  return fc
    .oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max))
    .map((value) => (value === 0 ? 0 : value));
};

const string = (schema: z.core.$ZodString): fc.Arbitrary<string> => {
  const takes = (sample: string): boolean => z.safeParse(schema, sample).success;
  if (takes('2026-01-31') && !takes('words')) return calendarDate;
  if (takes('EUR') && !takes('words')) return currency;
  return takes('') ? text : label;
};

/** A list of a set length says so when it is given none. */
function lengthsOf(schema: z.ZodArray): { readonly minLength: number; readonly maxLength: number } {
  const issue = schema.safeParse([]).error?.issues[0];
  if (issue === undefined) return { minLength: 0, maxLength: longestList };
  const least = issue.code === 'too_small' ? Number(issue.minimum) : 1;
  const exact = issue.code === 'too_small' && issue.exact === true;
  return { minLength: least, maxLength: exact ? least : longestList };
}

export function arbitraryOf(schema: z.core.$ZodType, byHand: ByHand = byNothing): fc.Arbitrary<unknown> {
  const given = byHand.get(schema);
  if (given !== undefined) return given;
  if (schema instanceof z.ZodNumber) return number(schema);
  if (schema instanceof z.ZodString) return string(schema);
  if (schema instanceof z.ZodBoolean) return fc.boolean();
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodLiteral) return fc.constantFrom(...schema.values);
  if (schema instanceof z.ZodNullable) return fc.option(arbitraryOf(schema.unwrap(), byHand));
  if (schema instanceof z.ZodOptional)
    return fc.option(arbitraryOf(schema.unwrap(), byHand), { nil: undefined });
  if (schema instanceof z.ZodDiscriminatedUnion)
    return fc.oneof(...schema.options.map((option) => arbitraryOf(option, byHand)));
  if (schema instanceof z.ZodArray)
    return fc.array(arbitraryOf(schema.element, byHand), {
      ...lengthsOf(schema),
    });
  if (schema instanceof z.ZodObject) {
    const shape: Record<string, z.core.$ZodType> = schema.shape;
    return fc.record(
      Object.fromEntries(Object.entries(shape).map(([key, part]) => [key, arbitraryOf(part, byHand)])),
    );
  }
  throw new Error(`No random values are known for ${schema.constructor.name}.`);
}

const curve = hubPower.options[1];
const risingPoints = fc
  .uniqueArray(arbitraryOf(curve.shape.points.element) as fc.Arbitrary<{ speedKmh: number }>, {
    selector: (point) => point.speedKmh,
    minLength: 2,
    maxLength: longestList,
  })
  .map((points) => points.toSorted((a, b) => a.speedKmh - b.speedKmh));

export function randomItem(kind: ItemKind): fc.Arbitrary<ItemDraft> {
  const byHand: ByHand = new Map([[curve.shape.points, risingPoints]]);
  return arbitraryOf(itemKinds[kind], byHand) as fc.Arbitrary<ItemDraft>;
}

/** A track whose shares and pieces add up. */
const randomTrack = (arbitraryOf(trackProfile) as fc.Arbitrary<TrackProfile>).map((random) => {
  const distanceKm = random.distanceKm / random.pieces.length;
  const pieces = random.pieces.map(({ stretches }) => ({
    distanceKm,
    stretches: stretches.map((stretch) => ({ ...stretch, share: 1 / stretches.length })),
  }));
  return { ...random, pieces };
});

/** Tours that leave some of these items at home. */
export function randomTour(itemIds: readonly string[]): fc.Arbitrary<TourDraft> {
  const leg = tourDraft.shape.legs.element;
  const byHand: ByHand = new Map<z.core.$ZodType, fc.Arbitrary<unknown>>([
    // Five legs of 70 days stay below the longest tour, and five stops of 20 minutes fit beside 12 h of riding.
    [leg.shape.days, fc.integer({ min: 1, max: 70 })],
    [leg.shape.dayStops.element.shape.minutes, fc.integer({ min: 5, max: 20 })],
    [trackProfile, randomTrack],
    [tourDraft.shape.leftAtHome, fc.array(fc.constantFrom(...itemIds), { maxLength: longestList })],
  ]);
  return arbitraryOf(tourDraft, byHand) as fc.Arbitrary<TourDraft>;
}

/** Placements whose hours in camp are in their order, which is a rule across two fields. */
const randomPlacement = arbitraryOf(placement).filter((random) => placement.safeParse(random).success);

/** Scenarios that carry some of these items. */
export function randomScenario(itemIds: readonly string[]): fc.Arbitrary<ScenarioDraft> {
  const byHand: ByHand = new Map<z.core.$ZodType, fc.Arbitrary<unknown>>([
    [
      scenarioDraft.shape.kit,
      fc.subarray([...itemIds]).chain((ids) => fc.tuple(...ids.map((itemId) => kitLine(itemId)))),
    ],
    [placement, randomPlacement],
  ]);
  return arbitraryOf(scenarioDraft, byHand) as fc.Arbitrary<ScenarioDraft>;
}

function kitLine(itemId: string): fc.Arbitrary<unknown> {
  return fc.record({ itemId: fc.constant(itemId), quantity: fc.integer({ min: 1, max: 99 }) });
}

/** Settings of one of these tours or of none. */
export function randomSettings(tourIds: readonly string[]): fc.Arbitrary<Settings> {
  const scales = criterionNames.map((name) => [name, randomScale(name)] as const);
  const parts = { ...Object.fromEntries(scales), limits: arbitraryOf(limits) };
  const byHand: ByHand = new Map<z.core.$ZodType, fc.Arbitrary<unknown>>([
    [settings.shape.tourId, fc.option(fc.constantFrom(...tourIds))],
    [preferences, fc.record(parts)],
  ]);
  return arbitraryOf(settings, byHand) as fc.Arbitrary<Settings>;
}

/** The two bounds in the order that the criterion asks for, and a weight above 0, which one of those that count must have. */
function randomScale(name: Criterion): fc.Arbitrary<CriterionScale> {
  const bound = fc.integer({ min: -1_000_000, max: 1_000_000 });
  const bounds = fc.uniqueArray(bound, { minLength: 2, maxLength: 2 });
  const weight = fc.double({ min: 0.001, max: 1, noNaN: true });
  return fc.tuple(weight, bounds, fc.boolean()).map(([weightOfOne, pair, counted]) => {
    const [low, high] = [Math.min(...pair), Math.max(...pair)];
    const [satisfied, unacceptable] = criteria[name].better === 'lower' ? [low, high] : [high, low];
    const scale = { weight: weightOfOne, satisfied, unacceptable };
    return criteria[name].extra ? { ...scale, counted } : scale;
  });
}
