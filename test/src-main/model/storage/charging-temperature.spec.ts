import { describe, expect, it } from 'vitest';
import { mayCharge, noChargeHours } from '../../../../src-main/model/storage/charging-temperature.ts';

describe('mayCharge()', () => {
  it.each([-20, -0.001, 45.001, 60])('is refused at %d degC', (degC) => expect(mayCharge(degC)).toBe(false));
  it('is refused where the temperature is not known', () => expect(mayCharge(NaN)).toBe(false));
  it.each([0, 20, 45])('is allowed at %d degC', (degC) => expect(mayCharge(degC)).toBe(true));
});

describe('noChargeHours()', () => {
  it('takes no steps at all', () => {
    expect(noChargeHours(new Float64Array(0), 1)).toEqual({ tooColdH: 0, tooHotH: 0 });
  });

  it('counts nothing at the limits themselves and between', () => {
    // US Fire Administration after NFPA: charge between 0 and 40 degC.
    expect(noChargeHours(Float64Array.of(0, 20, 40), 1)).toEqual({ tooColdH: 0, tooHotH: 0 });
  });

  it('counts steps below freezing and above 40 degC apart', () => {
    expect(noChargeHours(Float64Array.of(-5, -0.1, 10, 40.5), 0.25)).toEqual({
      tooColdH: 0.5,
      tooHotH: 0.25,
    });
  });
});
