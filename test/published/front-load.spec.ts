import { describe, it } from 'vitest';
import { balancedShare } from '../../shared-types/front-load.ts';
import { expectNear } from '../support/near.ts';

/*
 * The benchmark bicycle of Meijaard, Papadopoulos, Ruina & Schwab 2007, Proc. R. Soc. A 463:1955-1982, Table 1: masses, kg, and
 * how far ahead of the rear contact and how high they lie, m. The paper's x axis points ahead and its z axis down.
 */
const wheelbaseM = 1.02;
const trailM = 0.08;
const steerTiltRad = Math.PI / 10;
const rearWheel = { massKg: 2, aheadM: 0 };
const rearBody = { massKg: 85, aheadM: 0.3 };
const frontFrame = { massKg: 4, aheadM: 0.9, downM: -0.7 };
const frontWheel = { massKg: 3, aheadM: wheelbaseM, downM: -0.35 };

/** Masses the front wheel carries, kg: what is checked here. */
const onFrontWheelKg = [rearWheel, rearBody, frontFrame, frontWheel].reduce(
  (sum, { massKg, aheadM }) => sum + massKg * balancedShare(aheadM, wheelbaseM),
  0,
);

describe('the benchmark bicycle with its rider', () => {
  /*
   * The paper prints no load of the wheels, but its gravity stiffness of lean against steer holds it (Appendix A): it is -S_A, with
   * S_A = m_A u_A + (c/w) cos(lambda) m_T x_T, and m_T x_T / w is the mass on the front wheel. Printed in section 5: -2.59951685249872.
   */
  it('has the load on its front wheel that the printed gravity stiffness holds', () => {
    const steeredKg = frontFrame.massKg + frontWheel.massKg;
    const moment = (lever: 'aheadM' | 'downM'): number =>
      frontFrame.massKg * frontFrame[lever] + frontWheel.massKg * frontWheel[lever];
    const offAxisKgM =
      (moment('aheadM') - steeredKg * (wheelbaseM + trailM)) * Math.cos(steerTiltRad) -
      moment('downM') * Math.sin(steerTiltRad);
    const printed = 2.59951685249872;
    const fromPaperKg = (printed - offAxisKgM) / (trailM * Math.cos(steerTiltRad));
    // Printed with 14 decimals, of which the division leaves about 12.
    expectNear(onFrontWheelKg, fromPaperKg, 1e-11, 'on the front wheel, kg');
  });

  it('carries about a third of its mass in front: (85 x 0.3 + 4 x 0.9 + 3 x 1.02) / 1.02 = 31.529 kg of 94', () => {
    expectNear(onFrontWheelKg, 31.529, 1e-3, 'on the front wheel, kg');
  });
});
