import { describe, expect, it } from 'vitest';
import type { SunPeriod } from '../../../../../shared-types/leg-sun.ts';
import { sunFacts } from '../../../../../src-renderer/views/tours/leg-sun/facts.ts';
import { legSun, sunPeriod } from '../../../support/fake-leg-sun.ts';

const two = [
  sunPeriod('2027-05-03', { minDegC: -4, maxDegC: 12 }),
  sunPeriod('2027-05-08', { sun: { as: 'rises', riseH: 5, setH: 19.1 }, minDegC: 3, maxDegC: 23.4 }),
];

function facts(periods: readonly SunPeriod[], change: { own?: boolean; from?: string; by?: 'month' } = {}) {
  const sun = legSun();
  const station = { ...sun.station, temperaturesFrom: change.from ?? null };
  const ridden = { periods, by: change.by ?? ('day' as const), ownRadiation: change.own ?? false };
  return Object.fromEntries(
    sunFacts({ ...sun, station }, ridden, 'en-GB').map(({ name, value }) => [
      name,
      value.replaceAll('\u00a0', ' '),
    ]),
  );
}

const daylight = 'Sunrise to sunset, local mean solar time';
const air = 'Air, mean lowest to mean highest of the day';

describe('sunFacts()', () => {
  it('says what the sun does where it never sets', () => {
    const up = two.map((period) => ({ ...period, sun: { as: 'up' } as const }));
    expect(facts(up)[daylight]).toBe('the sun stays up on 3 May; the sun stays up on 8 May');
  });

  it('keeps to the station where no period is ridden', () => {
    expect(facts([])).toEqual({
      'Climate station': 'Riga, Latvia, 12 km away, 212 m higher than the leg',
    });
  });

  it('gives the clock of the first and last day', () => {
    expect(facts(two)[daylight]).toBe('05:12 to 18:54 on 3 May; 05:00 to 19:06 on 8 May');
  });

  it('gives a leg of one day its clock once', () => {
    expect(facts(two.slice(0, 1))[daylight]).toBe('05:12 to 18:54 on 3 May');
  });

  it('names months where the figures are monthly', () => {
    expect(facts(two.slice(0, 1), { by: 'month' })[daylight]).toBe('05:12 to 18:54 in May');
  });

  it('gives the air from its lowest to its highest', () => {
    expect(facts(two)[air]).toBe('−4 to 23 °C');
  });

  it('says which figures come from elsewhere', () => {
    expect(facts(two)).not.toHaveProperty('Temperatures from');
    expect(facts(two)).not.toHaveProperty('Light');
    expect(facts(two, { from: 'Tartu', own: true })).toMatchObject({
      'Temperatures from': 'Tartu',
      Light: 'your own monthly figures',
    });
  });
});
