import type { StoreNow } from '../../../shared-types/field-log.ts';
import type { PlaceOnTour } from './place-on-tour.ts';

/** What readings say of a device's use, against the plan. */
export interface OtherUse {
  readonly label: string;
  readonly name: string;
  readonly measured: string;
  readonly planned: string;
}

interface Assumed {
  readonly place: PlaceOnTour;
  readonly stores: readonly StoreNow[];
  readonly otherUses: readonly OtherUse[];
}

/** What an answer on the road took as read. */
export function assumedOnTour({ place, stores, otherUses }: Assumed): readonly string[] {
  const unread = stores.filter(({ isRead, capacityWh }) => !isRead && capacityWh > 0);
  return [
    ...placeWords(place),
    ...(unread.length === 0
      ? []
      : [
          `Today has no reading of ${unread.map(({ label }) => label).join(', ')}: low takes each as empty, usual as half full, good as full.`,
        ]),
    'Lights are ranges: low takes the lower end, usual the middle, good the upper end.',
    'Use is that of the plan, for every device that comes along; nothing is held back.',
    ...otherUses.map(
      ({ label, name, measured, planned }) =>
        `Readings say otherwise of ${label}: ${name.toLowerCase()} is ${measured}, planned ${planned}. Store it below to reckon with it.`,
    ),
    'Sun and hub give what they gave in the drawn courses of weather; low is what 9 of 10 of them do better than, good what 1 of 10 does.',
    'No wall is counted on, and no day stop.',
  ];
}

function placeWords({ day, tourDays, by }: PlaceOnTour): readonly string[] {
  if (by === 'rider') return [];
  return by === 'date'
    ? [`By its date today is day ${day} of ${tourDays}.`]
    : ['Today is not a day of this tour: reckoned as from its first day.'];
}
