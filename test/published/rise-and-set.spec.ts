import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { noonOf } from '../../src-main/model/sun/calendar.ts';
import { hourAngleRadOf, sunOfDay } from '../../src-main/model/sun/position.ts';
import { riseAndSet } from '../../src-main/model/sun/rise-and-set.ts';
import { expectNear } from '../support/near.ts';
import { algorithmDays, observatoryDays, type PublishedDay } from './tables/rise-and-set.ts';

const secondsPerHour = 3600;
const msPerHour = 3_600_000;

/** Seconds of local mean solar time from a printed clock time. */
function meanSolarS(clock: string, { zoneH, lon }: PublishedDay): number {
  const [hours, minutes, seconds] = clock.split(':').map(Number);
  return (hours! - zoneH + lon / 15) * secondsPerHour + minutes! * 60 + seconds!;
}

function expectDay(day: PublishedDay, toleranceS: number): void {
  const found = riseAndSet(noonOf(day.date), day.lat, day.lon);
  if (found.as !== 'rises') throw new Error(`the sun rises and sets: ${day.name}`);
  const { riseH, setH } = found;
  if (day.rise !== undefined)
    expectNear(riseH * secondsPerHour, meanSolarS(day.rise, day), toleranceS, 'rise, s after midnight');
  if (day.set !== undefined)
    expectNear(setH * secondsPerHour, meanSolarS(day.set, day), toleranceS, 'set, s after midnight');
}

describe('sunrise and sunset, upper limb at 0.8333 degrees below', () => {
  // Two ephemerides and their delta T: 10 s, less than the refraction of any real morning.
  it.each(algorithmDays)('follow the NREL solar position algorithm: $name', (day) => expectDay(day, 10));
  // Printed to the minute, from tables that round.
  it.each(observatoryDays)('follow the US Naval Observatory tables: $name', (day) => expectDay(day, 60));
});

describe('the highest sun of the day', () => {
  it.each(algorithmDays.filter(({ transit }) => transit !== undefined))(
    'passes when the solar position algorithm says: $name',
    (day) => {
      const noon = sunOfDay(noonOf(day.date) - (day.lon / 15) * msPerHour);
      const clock = meanSolarS(day.transit!, day) / secondsPerHour;
      const lateS = (hourAngleRadOf(clock, noon) / radPerDeg / 15) * secondsPerHour;
      expectNear(lateS, 0, 10, 'hour angle at the printed transit, s');
    },
  );
});
