import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dailyDiffuseShare } from '../../../../src-main/model/sun/daily-diffuse.ts';

const winter = 1.2;
const summer = 1.9;

describe('dailyDiffuseShare()', () => {
  it('is all of a dark sky and never above all', () => {
    expect(dailyDiffuseShare(0, winter)).toBe(1);
    expect(dailyDiffuseShare(0.1, summer)).toBe(1);
  });

  it.each([winter, summer])('never rises much with a clearer sky at sunset angle %d', (sunset) => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.95, noNaN: true }), (clearness) => {
        const share = dailyDiffuseShare(clearness, sunset);
        expect(share).toBeGreaterThanOrEqual(0.14);
        expect(dailyDiffuseShare(clearness + 0.05, sunset)).toBeLessThanOrEqual(share + 1e-9);
      }),
    );
  });
});
