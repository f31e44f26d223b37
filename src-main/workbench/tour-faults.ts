import type { Station } from '../../shared-types/climate.ts';
import { formatNumber, wordsLocale } from '../../shared-types/figures.ts';
import { failure, type FieldError, type Outcome } from '../../shared-types/outcome.ts';
import type { Leg, TourDraft } from '../../shared-types/tour.ts';
import { extraterrestrialOfMonthKWhM2 } from '../model/sun/monthly-clearness.ts';
import { spotOf } from './assemble/place.ts';

/** What a schema can't see in a tour: a station that is not in the list, more radiation than the sun sends. */
export function tourFaults(tour: TourDraft, stations: readonly Station[]): Outcome<never> | null {
  const unknown = tour.legs.flatMap((leg, index) => unknownStation(leg, index, stations));
  const tooBright = tour.legs.flatMap((leg, index) => tooMuchRadiation(leg, index, stations));
  const [firstUnknown] = unknown;
  if (firstUnknown !== undefined)
    return failure('bad-input', `There is no climate station ${firstUnknown.got}; choose one of the list.`, [
      ...unknown,
      ...tooBright,
    ]);
  return tooBright.length === 0
    ? null
    : failure('bad-input', 'A month has more radiation than the sun sends to the top of the air.', tooBright);
}

function unknownStation({ place }: Leg, leg: number, stations: readonly Station[]): FieldError[] {
  if (place.as !== 'station' || stations.some((station) => station.place === place.station)) return [];
  return [
    {
      path: `tour.legs.${leg}.place.station`,
      allowed: 'the name of a climate station in the list',
      got: JSON.stringify(place.station),
    },
  ];
}

const digits = 2;

function tooMuchRadiation(
  { place, radiation }: Leg,
  leg: number,
  stations: readonly Station[],
): FieldError[] {
  const spot = spotOf(place, stations);
  if (radiation.as !== 'own' || spot === undefined) return [];
  return radiation.kWhM2ADay.flatMap((given, month) => {
    const most = Math.floor(extraterrestrialOfMonthKWhM2(spot.latDeg, month) * 10 ** digits) / 10 ** digits;
    if (given <= most) return [];
    const figure = formatNumber(most, { digits, locale: wordsLocale });
    return [
      {
        path: `tour.legs.${leg}.radiation.kWhM2ADay.${month}`,
        allowed: `at most ${figure} kWh/m² a day, what the sun sends to the top of the air at this latitude`,
        got: String(given),
      },
    ];
  });
}
