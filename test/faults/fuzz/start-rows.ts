import { demoTours } from '../../../db/demo/demo.ts';
import type { ReadingDraft } from '../../../shared-types/reading.ts';
import type { TourDraft } from '../../../shared-types/tour.ts';
import { someReadings } from '../../src-main/catalogue/some-readings.ts';
import type { TestWorkbench } from '../../support/open-workbench.ts';

/* What stands in the catalogue beside the demo before each case. */

export const shortTourId = 'a-short-tour';

/** The demo's first leg for two days: whatever walks it is soon done. */
export function shortTour(): TourDraft {
  const { id: _, ...tour } = demoTours[0]!;
  return { ...tour, label: 'Two days', legs: [{ ...tour.legs[0]!, days: 2 }] };
}

/** So many readings give a value to store. */
const enough = [48, 51.5, 55];
const delivery = someReadings.find(({ as }) => as === 'delivery') as Extract<
  ReadingDraft,
  { as: 'delivery' }
>;
const full = { as: 'share', share: 1 } as const;
const flat = { as: 'share', share: 0 } as const;

/** A day that is over on any machine. */
const on = '2024-05-03';
const readings: readonly ReadingDraft[] = [
  ...someReadings,
  ...enough.map((wh) => ({
    ...delivery,
    energy: { as: 'meter-wh' as const, wh },
    before: full,
    after: flat,
  })),
].map((reading) => ({ ...reading, on }));

const idOf = (place: number): string => `reading-${place}`;
export const readingIds = readings.map((_, place) => idOf(place));

export async function layStartRows({ value }: Pick<TestWorkbench, 'value'>): Promise<void> {
  await value('tours.save', { id: shortTourId, tour: shortTour() });
  for (const [place, reading] of readings.entries())
    await value('readings.save', { id: idOf(place), reading });
}
