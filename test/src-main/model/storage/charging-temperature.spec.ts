import { describe, expect, it } from 'vitest';
import { noChargeHours } from '../../../../src-main/model/storage/charging-temperature.ts';

describe('noChargeHours()', () => {
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

  it('takes no steps at all', () => {
    expect(noChargeHours(new Float64Array(0), 1)).toEqual({ tooColdH: 0, tooHotH: 0 });
  });
});
