import { z } from 'zod';
import { quantity, share } from './field.ts';

const places = {
  fork: 'Fork or front rack',
  handlebar: 'Handlebar',
  frame: 'Frame',
  rearRack: 'Rear rack',
  body: 'On the rider',
} as const;

/** A place on the bicycle whose part on the front wheel is to be known; what is in the wheel counts whole. */
export type LoadPlace = keyof typeof places;
export const loadPlaces = Object.keys(places) as LoadPlace[];

type OfEach<Field> = { readonly [Place in LoadPlace]: Field };

function eachPlace<Field>(field: (label: string) => Field): OfEach<Field> {
  const { fork, handlebar, frame, rearRack, body } = places;
  return {
    fork: field(fork),
    handlebar: field(handlebar),
    frame: field(frame),
    rearRack: field(rearRack),
    body: field(body),
  };
}

/** How far ahead of the rear axle a load lies, m, level; below 0 behind it. */
const ahead = z.strictObject(
  eachPlace((label) => quantity({ label, unit: 'm', min: -0.5, max: 1.6, step: 0.01 })),
);

/** Part of a load that the rider found on the front wheel; below 0 a load behind the rear axle lifts it. */
const ownShare = z.strictObject(eachPlace((label) => z.nullable(share({ label }, -0.5, 1.5))));

/** What the moment balance of the bicycle rests on, and the shares that the rider knows better. */
export const frontLoad = z.strictObject({
  wheelbaseM: quantity({
    label: 'Wheelbase',
    unit: 'm',
    min: 0.8,
    max: 1.4,
    step: 0.01,
    hint: 'From axle to axle; 1.05 to 1.1 on most touring bicycles.',
  }),
  ahead,
  ownShare,
});
export type FrontLoad = z.infer<typeof frontLoad>;

/** A touring bicycle with a lowrider (common practice, no source). */
export const usualFrontLoad: FrontLoad = {
  wheelbaseM: 1.08,
  ahead: { fork: 1.03, handlebar: 0.86, frame: 0.54, rearRack: 0.05, body: 0.45 },
  ownShare: { fork: null, handlebar: null, frame: null, rearRack: null, body: null },
};

/**
 * Part of a load that the front wheel carries on level ground, by the balance of moments about the rear axle: its distance
 * ahead of that axle over the wheelbase (statics of a beam on two supports). It does not depend on how high the load lies.
 *
 * @param aheadM distance ahead of the rear axle, m; below 0 behind it, where it lifts the front wheel
 * @param wheelbaseM from axle to axle, m, above 0
 */
export function balancedShare(aheadM: number, wheelbaseM: number): number {
  return aheadM / wheelbaseM;
}
