import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import type { StopPlan, StopSituation, StopStoreAnswer } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';

export function stopStore(change: Partial<StopStoreAnswer> = {}): StopStoreAnswer {
  return {
    itemId: 'demo-phone',
    copy: 0,
    label: 'Phone',
    role: 'must-have',
    capacityWh: 15,
    beforeWh: 3,
    afterWh: 12,
    needWh: 10,
    shortWh: 0,
    ...change,
  };
}

/** An hour at a charger with one port: the phone, then the bank. */
export function stopAnswer(change: Partial<StopPlan> = {}): StopPlan {
  return {
    minutes: 60,
    hoursToWall: 24,
    slotMinutes: 5,
    bestOfMinutes: 5,
    lanes: [
      {
        charger: 'Cube',
        port: 1,
        portW: 15,
        spans: [
          { store: 0, fromMinute: 0, toMinute: 35, startW: 15 },
          { store: 1, fromMinute: 35, toMinute: 60, startW: 10 },
        ],
      },
    ],
    stores: [
      stopStore(),
      stopStore({ itemId: 'demo-bank-20', label: 'Bank', role: 'bank', capacityWh: 70, needWh: 0 }),
    ],
    mustHaves: { needWh: 10, servedWh: 10 },
    niceToHaves: { needWh: 4, servedWh: 1 },
    without: { mustHavesWh: 3, niceToHavesWh: 0 },
    steps: [
      { minute: 0, text: 'Plug ‘Phone’ into port 1.' },
      { minute: 35, text: 'On port 1 swap ‘Phone’ for ‘Bank’.' },
    ],
    notes: ['Compared with all others.'],
    cautions: ['Carry a reserve.'],
    ...change,
  };
}

/** Answers with the minutes asked about, so that a test can tell which question was answered. */
export function fakeStops(held: { readonly tours: readonly Tour[] }): Pick<Handlers, 'stops.plan'> {
  return {
    'stops.plan': ({ tourId, minutes, hoursToWall }: StopSituation) =>
      held.tours.some(({ id }) => id === tourId)
        ? success(stopAnswer({ minutes, hoursToWall }))
        : failure('not-found', 'There is no such tour.'),
  };
}
