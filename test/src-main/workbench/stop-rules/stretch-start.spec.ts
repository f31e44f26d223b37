import { describe, expect, it } from 'vitest';
import { longestStretch } from '../../../../src-main/workbench/stop-rules/stretch.ts';
import { keptByCold, stretchStart } from '../../../../src-main/workbench/stop-rules/stretch-start.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';
import { bankLine, chargerLine, delivering, groundOf, panelLine } from './rules-ground.ts';

/** 20 Wh full, and 1 W: 78 Wh from the wall before four days to the wall after them, of which a plug must give 1.25 times. */
const phone = deviceOf();

type Parts = NonNullable<Parameters<typeof groundOf>[0]>;

function startOf(lines: Parts['lines'], parts: Parts = {}) {
  const ground = groundOf({ devices: [phone], lines: [chargerLine(), ...lines!], ...parts });
  return stretchStart(longestStretch(ground), ground);
}

describe('stretchStart()', () => {
  it('needs no bank where the own battery is enough: 6 Wh of a single day', () => {
    expect(startOf([bankLine()], { legs: [{ kinds: ['wall'] }] })).toEqual({ as: 'must-haves' });
  });

  it('falls short by all that the own battery lacks without a bank', () => {
    // Full is 0.98 of 20 Wh: (78 − 19.6) x 1.25 = 73 Wh at the plug.
    const start = startOf([]);
    expect(start.as).toBe('short');
    if (start.as === 'short') expectNear(start.lackingWh, 73, 1e-9, 'lacking, Wh at the plug');
  });

  it('falls short by what a full bank does not give: 73 less 0.98 of 60 Wh', () => {
    const start = startOf([bankLine(delivering(60))]);
    if (start.as !== 'short') throw new Error(`starts with ${start.as}`);
    expectNear(start.lackingWh, 14.2, 1e-9, 'lacking, Wh at the plug');
  });

  it('asks for full banks where no light says so much: 73 of 75 Wh', () => {
    expect(startOf([bankLine(delivering(75))])).toEqual({ as: 'all-full' });
  });

  it('asks for full banks where they have no lights', () => {
    expect(startOf([bankLine({ lights: 0, ...delivering(200) })])).toEqual({ as: 'all-full' });
  });

  it('takes the low end of a light: 73 of 140 Wh are more than the half that three lights are sure of', () => {
    expect(startOf([bankLine(delivering(140))])).toMatchObject({ as: 'lights', banks: [{ lit: 4, of: 4 }] });
    expect(startOf([bankLine(delivering(150))])).toMatchObject({ as: 'lights', banks: [{ lit: 3, of: 4 }] });
  });

  it('fills all banks alike, each by its own lights', () => {
    // 73 of 2 x 60 + 30 Wh is a share of 0.487: half is sure by 3 of 4 lights, and by 6 of 10.
    const start = startOf([
      bankLine(delivering(60), 2),
      bankLine({ label: 'Small', lights: 10, ...delivering(30) }),
    ]);
    expect(start).toEqual({
      as: 'lights',
      banks: [
        { bank: 'Bank', pieces: 2, lit: 3, of: 4 },
        { bank: 'Small', pieces: 1, lit: 6, of: 10 },
      ],
    });
  });

  it('counts what panel and hub bring through the bank', () => {
    // Four days of 20 Wh, of which 0.92 x 0.85 come out: 62.56 of 73 Wh; the rest is 10.44 of 60, a quarter is sure by 2 lights.
    expect(startOf([bankLine(), panelLine], { legs: [{ panelWh: 20 }] })).toMatchObject({
      ...{ as: 'lights', banks: [{ lit: 2, of: 4 }] },
    });
  });

  it('counts nothing of a panel that no bank takes in', () => {
    expect(startOf([panelLine], { legs: [{ panelWh: 200 }] })).toMatchObject({ as: 'short' });
  });

  it('lets no must-have have what another holds, nor a nice-to-have ask for anything', () => {
    const idle = deviceOf({ key: 'idle', capacityWh: 500, useW: [0, 0, 0, 0] });
    const luxury = deviceOf({ key: 'luxury', mustHave: false, useW: [9, 9, 9, 9] });
    expect(startOf([bankLine(delivering(75))], { devices: [phone, idle, luxury] })).toEqual({
      as: 'all-full',
    });
  });
});

describe('a cold tour', () => {
  // At night the cells lie in the tent: −3 °C outside are 0 °C in it; by day they are at −3 °C.
  const cold = groundOf({ devices: [phone], lines: [bankLine(delivering(150)), chargerLine()], airDegC: -3 });

  it('keeps back what the cells do not give in its coldest hour', () => {
    // Kollmeyer 2018: 0.884 at 0 °C and 0.838 at −10 °C; on the straight line 0.8702 at −3 °C.
    expectNear(keptByCold(bankLine(), cold), 1 - 0.8702, 1e-9, 'kept by the cold');
    expect(keptByCold(bankLine(), groundOf())).toBe(0);
  });

  it('asks for more lights', () => {
    expect(stretchStart(longestStretch(cold), cold)).toMatchObject({ as: 'lights', banks: [{ lit: 4 }] });
  });
});
