import { describe, expect, it } from 'vitest';
import { fillingSteps } from '../../../../src-main/workbench/stop-rules/filling-steps.ts';
import { deviceOf, pd } from '../../../support/flow-step.ts';
import { bankLine, chargerLine, groundOf } from './rules-ground.ts';
import { plain } from './steps.ts';

const stepsOf = (parts: Parameters<typeof groundOf>[0]) => plain(fillingSteps(groundOf(parts)));

/*
 * Time by hand: 0.8 of the capacity at full power P into the cells, then the tenfold shrinking of the room left, from 0.2 to 0.02 of it:
 * (0.8 + 0.2 ln 10) C / P = 1.2605 C / P.
 */
const phone = deviceOf({ label: 'Phone' });

describe('fillingSteps()', () => {
  it('say nothing without a charger', () =>
    expect(stepsOf({ devices: [phone], lines: [bankLine()] })).toEqual([]));

  it('name the ports, and no time where there is nothing to fill', () => {
    const load = deviceOf({ capacityWh: 0 });
    expect(stepsOf({ devices: [load], lines: [chargerLine()] })).toEqual([
      '‘Charger’ has 2 ports: 30 W and 7.5 W, 30 W together.',
    ]);
  });

  it('name a single port, and several chargers alike once', () => {
    const onePort = { outputs: [{ standard: 'pd' as const, powerW: 20 }], totalW: 20 };
    expect(stepsOf({ lines: [chargerLine(onePort)] })).toEqual(['‘Charger’ has one port: 20 W.']);
    expect(stepsOf({ lines: [chargerLine(onePort, 2)] })).toEqual([
      'Each of 2 × ‘Charger’ has one port: 20 W.',
    ]);
  });

  it('give the time of a must-have: 1.2605 x 20 Wh at 8 W are 3.2 h', () => {
    const camera = deviceOf({ key: 'camera', label: 'Camera', mustHave: false });
    expect(stepsOf({ devices: [phone, camera], lines: [chargerLine()] })[1]).toBe(
      'Must-haves from empty to full, each alone on its best port: ‘Phone’ about 3.2 h (30 W port).',
    );
  });

  it('give the time of a bank: 1.2605 x 60 / 0.85 Wh at 18 x 0.92 W are 5.4 h, those alike once', () => {
    expect(stepsOf({ lines: [bankLine({}, 2), chargerLine()] }).at(-1)).toBe(
      'Banks from empty to full, each alone on its best port: ‘Bank’ about 5.4 h (30 W port).',
    );
  });

  it('take the port that gives most, of equals the weaker, and no more than the charger has', () => {
    const fed = (takesW: number, totalW: number) =>
      stepsOf({ devices: [{ ...phone, input: pd(takesW) }], lines: [chargerLine({ totalW })] })[1];
    // 5 W from either port: 1.2605 x 20 / 4 = 6.3 h.
    expect(fed(5, 30)).toMatch(/about 6\.3 h \(7\.5 W port\)\.$/);
    // Of 30 W asked for the charger gives 12: 9.6 W into the cells. The taper of a source at 0.4 of the limit begins at 20 − 0.4 x 4 =
    // 18.4 Wh: 18.4 / 9.6 h and, by a limit of 24 W, 4 / 24 x ln(1.6 / 0.4) h, together 2.15 h.
    expect(fed(30, 12)).toMatch(/about 2\.1 h \(30 W port\)\.$/);
  });
});
