import { z } from 'zod';
import { choice, count, id, quantity, share } from './field.ts';

/** Until a wall further off than this nobody plans a stop, h. */
export const furthestWallH = 720;
const mostStores = 500;
const mostCopies = 99;

/** One piece of an item: which of those carried, counted from 0. */
const piece = { itemId: id, copy: count({ label: 'Piece', min: 0, max: mostCopies - 1 }) };

/** How full a battery or bank is: a share, or how many of its lights are lit. */
export const storeState = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('share'), share: share({ label: 'Full to' }) }),
    z.strictObject({ as: z.literal('lights'), lit: count({ label: 'Lights lit', min: 0, max: 100 }) }),
  ],
  { error: 'a share, or a number of lights lit' },
);
export type StoreState = z.infer<typeof storeState>;

/** What is used until the next expected wall: the planned use of a mean day of a leg, or the rider's own figures. */
export const comingUse = z.discriminatedUnion(
  'as',
  [
    z.strictObject({
      as: z.literal('leg'),
      leg: z.int({ error: 'the number of a leg' }).min(0, { error: 'the number of a leg' }),
    }),
    z.strictObject({
      as: z.literal('own'),
      /** Devices that are not named are not used. */
      needs: z
        .array(
          z.strictObject({
            ...piece,
            needWh: quantity({ label: 'Use until then', unit: 'Wh', min: 0, max: 10_000 }),
          }),
        )
        .max(mostStores, { error: `at most ${mostStores} devices` }),
    }),
  ],
  { error: 'the use of a leg, or figures of your own' },
);

/** A stop at a wall as the rider finds it. */
export const stopSituation = z.strictObject({
  tourId: id,
  scenarioId: id,
  minutes: count({ label: 'Time at the wall', unit: 'min', min: 5, max: 600, step: 5 }),
  outlets: count({ label: 'Free outlets', min: 0, max: 6 }),
  hoursToWall: quantity({
    label: 'Until the next expected wall',
    unit: 'h',
    min: 0,
    max: furthestWallH,
    hint: 'From the end of this stop.',
  }),
  /** Of every battery and bank that comes along. */
  states: z
    .array(z.strictObject({ ...piece, state: storeState }))
    .max(mostStores, { error: `at most ${mostStores} devices and banks` }),
  use: comingUse,
});
export type StopSituation = z.infer<typeof stopSituation>;

export const storeRole = choice(
  { 'must-have': 'Must-have', 'nice-to-have': 'Nice-to-have', bank: 'Bank' },
  { label: 'Role' },
);
export type StoreRole = z.infer<typeof storeRole>;

/** A device or bank before and after the stop. Energy is counted inside the cells. */
export interface StopStoreAnswer {
  readonly itemId: string;
  readonly copy: number;
  readonly label: string;
  readonly role: StoreRole;
  /** 0 for a direct load. */
  readonly capacityWh: number;
  readonly beforeWh: number;
  readonly afterWh: number;
  /** Until the next expected wall; 0 for a bank. */
  readonly needWh: number;
  /** What of that neither its own battery nor a bank serves. */
  readonly shortWh: number;
}

/** A device or bank on a port for a while. */
export interface PluggedSpan {
  readonly fromMinute: number;
  readonly toMinute: number;
  /** Place in the list of stores. */
  readonly store: number;
  /** Drawn at its start, W. */
  readonly startW: number;
}

/** One port of a charger through the stop. */
export interface PortLane {
  readonly charger: string;
  /** Counted from 1 within its charger. */
  readonly port: number;
  readonly portW: number;
  readonly spans: readonly PluggedSpan[];
}

/** Something to do, as a sentence. */
export interface StopStep {
  readonly minute: number;
  readonly text: string;
}

export interface ServedNeed {
  readonly needWh: number;
  readonly servedWh: number;
}

/** What to plug in when, so that must-haves, then nice-to-haves, have the most until the next expected wall. */
export interface StopPlan {
  readonly minutes: number;
  readonly hoursToWall: number;
  /** The plan moves plugs after whole slots of this length, min. */
  readonly slotMinutes: number;
  /** No plan that moves plugs after whole slots of this length is better, min. */
  readonly bestOfMinutes: number;
  /** Ports that are used, by charger. */
  readonly lanes: readonly PortLane[];
  readonly stores: readonly StopStoreAnswer[];
  readonly mustHaves: ServedNeed;
  readonly niceToHaves: ServedNeed;
  /** What must-haves and nice-to-haves would have without this stop, Wh. */
  readonly without: { readonly mustHavesWh: number; readonly niceToHavesWh: number };
  /** In order; empty when there is nothing to plug in. */
  readonly steps: readonly StopStep[];
  /** Why nothing is plugged in, or what the plan rests on. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

/** Pieces of one item are told apart by their number, as the rider counts. */
export function pieceLabel(label: string, copy: number, pieces: number): string {
  return pieces === 1 ? label : `${label} (${copy + 1} of ${pieces})`;
}

/** The share of its capacity that lit lights mean: from the light before the last lit one to that one. */
export function shareOfLights(lit: number, lights: number): { readonly low: number; readonly high: number } {
  return { low: Math.max(0, lit - 1) / lights, high: lit / lights };
}
