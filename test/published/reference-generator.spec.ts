import { describe, expect, it } from 'vitest';
import {
  alternatorOutput,
  bestLoadOhm,
  drawnW,
  electricalRadPerS,
  fittedAlternator,
  type Alternator,
} from '../../src-main/model/ride/alternator.ts';
import { expectNear } from '../support/near.ts';
import { referenceGenerator } from './tables/reference-generator.ts';

const circumferenceM = 2.155;
const reference: Alternator = { polePairs: 13, emfVsPerRad: 0.09, inductanceH: 0.15, windingOhm: 3 };
const ratedOhm = 12;
const radPerS = (kmh: number): number => electricalRadPerS(kmh, circumferenceM, reference);

/** The table prints four or five digits. */
const share = 1e-3;

describe('the reference generator', () => {
  it('is the one fitted to 3 W in a wheel of 2.155 m', () => {
    expect(fittedAlternator(3, circumferenceM)).toEqual(reference);
  });
  it('turns 37.903 rad/s for each m/s', () =>
    expectNear(radPerS(3.6), 37.90320603, 1e-7, 'angular speed, rad/s'));

  it.each(referenceGenerator)('turns and pushes as tabled at $kmh km/h', (row) => {
    const turning = radPerS(row.kmh);
    expectNear(turning, row.radPerS, share * row.radPerS, 'angular speed, rad/s');
    expectNear(turning / (2 * Math.PI), row.hertz, share * row.hertz, 'frequency, Hz');
    // A load of a gigaohm is as good as none.
    expectNear(alternatorOutput(turning, 1e9, reference).voltageV, row.openV, share * row.openV, 'open, V');
    const reactance = Math.sqrt(bestLoadOhm(turning, reference) ** 2 - reference.windingOhm ** 2);
    expectNear(reactance, row.reactanceOhm, share * row.reactanceOhm, 'reactance, ohm');
  });
  it.each(referenceGenerator)('gives what is tabled into 12 ohm at $kmh km/h', (row) => {
    const out = alternatorOutput(radPerS(row.kmh), ratedOhm, reference);
    expectNear(out.currentA, row.ampere, share * row.ampere, 'current, A');
    expectNear(out.voltageV, row.volt, share * row.volt, 'voltage, V');
    expectNear(out.powerW, row.watts, share * row.watts, 'power, W');
    expectNear(out.copperW, row.copperW, share * row.copperW, 'lost in copper, W');
  });
  it.each(referenceGenerator)('gives what is tabled into its best load at $kmh km/h', (row) => {
    const best = bestLoadOhm(radPerS(row.kmh), reference);
    const out = alternatorOutput(radPerS(row.kmh), best, reference);
    expectNear(best, row.bestOhm, share * row.bestOhm, 'best load, ohm');
    expectNear(out.powerW, row.mostW, share * row.mostW, 'most power, W');
    expectNear(out.voltageV, row.mostV, share * row.mostV, 'voltage there, V');
  });
  it.each(referenceGenerator)('gives less into any other load at $kmh km/h', ({ kmh }) => {
    const best = bestLoadOhm(radPerS(kmh), reference);
    const most = alternatorOutput(radPerS(kmh), best, reference).powerW;
    for (const factor of [0.1, 0.5, 0.8, 0.95, 1.05, 1.25, 2, 10]) {
      expect(alternatorOutput(radPerS(kmh), factor * best, reference).powerW).toBeLessThan(most);
    }
  });
  it('tends to a constant current of 0.6 A', () => {
    // K / L; 0.1 % left at 10,000 km/h.
    expectNear(alternatorOutput(radPerS(10_000), ratedOhm, reference).currentA, 0.6, 6e-4, 'current, A');
  });
});

/** The speed at which a capacitor cancels the reactance: there the best load is least, the winding alone. */
function resonanceKmh(seriesF: number): number {
  let [low, high] = [1, 60];
  while (high - low > 1e-6) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    const leftIsLess =
      bestLoadOhm(radPerS(left), reference, seriesF) < bestLoadOhm(radPerS(right), reference, seriesF);
    if (leftIsLess) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

describe('a capacitor in series with the reference generator', () => {
  // Constructed: 1 / sqrt(L C) reckoned outside the project (Kusmierz's extension of the model, in Schultz's monograph).
  it.each([
    { microfarad: 100, kmh: 24.523 },
    { microfarad: 220, kmh: 16.534 },
    { microfarad: 330, kmh: 13.5 },
    { microfarad: 470, kmh: 11.312 },
  ])('of $microfarad uF cancels the reactance at $kmh km/h', ({ microfarad, kmh }) => {
    const found = resonanceKmh(microfarad * 1e-6);
    expectNear(found, kmh, share * kmh, 'resonance, km/h');
    expectNear(bestLoadOhm(radPerS(found), reference, microfarad * 1e-6), 3, 1e-3, 'best load there, ohm');
  });

  const drawn = (kmh: number, load: 'rated' | 'tracking', seriesF: number): number =>
    drawnW(radPerS(kmh), load, ratedOhm, reference, seriesF).electricalW;
  const tuned = 220e-6;
  // A charger with 220 uF in series raises the output at middling speed: Fahrradzukunft 22, Steckdose unterwegs 5.
  it.each([14, 16, 18, 20])('of 220 uF raises what a rated load draws at %d km/h', (kmh) => {
    expect(drawn(kmh, 'rated', tuned)).toBeGreaterThan(1.1 * drawn(kmh, 'rated', 0));
  });
  it('of 220 uF lowers what a rated load draws at 6 km/h', () => {
    expect(drawn(6, 'rated', tuned)).toBeLessThan(drawn(6, 'rated', 0));
  });
  it('is never credited more than the best load alone', () => {
    // Ideal resonance would give 14.2 V squared over 4 x 3 ohm, 17 W, at 15 km/h: no iron does.
    for (let kmh = 1; kmh <= 60; kmh += 0.5) {
      for (const seriesF of [100e-6, tuned, 330e-6, 470e-6]) {
        for (const load of ['rated', 'tracking'] as const) {
          expect(drawn(kmh, load, seriesF)).toBeLessThanOrEqual(drawn(kmh, 'tracking', 0) * (1 + 1e-12));
        }
      }
    }
  });
});
