import { describe, expect, it } from 'vitest';
import { uprightDragAreaM2, type RideModel } from '../../../../src-main/model/ride/power-balance.ts';
import { rideLeg } from '../../../../src-main/model/ride/ride-leg.ts';
import { terrainClasses } from '../../../../src-main/model/ride/terrain.ts';
import { expectNear } from '../../../support/near.ts';

const ride: RideModel = {
  massKg: 115,
  dragAreaM2: uprightDragAreaM2,
  rollingCoefficient: 0.0077,
  airDensityKgM3: 1.2,
  drivetrainEfficiency: 0.976,
};
const wheel = {
  hub: {
    power: { as: 'rating', ratedW: 3 },
    wheelCircumferenceM: 2.155,
    idleDragW10: 0.5,
    idleDragW30: 2.5,
  },
  converter: { efficiency: 0.8, startSpeedKmh: 10, outputW: 5 },
} as const;
const on = (name: keyof typeof terrainClasses, with_: Parameters<typeof rideLeg>[3]) =>
  rideLeg(
    110,
    terrainClasses[name],
    { ...ride, rollingCoefficient: terrainClasses[name].rollingCoefficient },
    with_,
  );

describe('rideLeg()', () => {
  it('gives no hub power and no loss on a plain wheel', () => {
    expect(on('rolling', null)).toMatchObject({ hubPlugW: 0, dragTimeShare: 0 });
  });

  it('loses time but gives nothing through a hub without converter', () => {
    const bare = on('rolling', { hub: wheel.hub, converter: null });
    expect(bare.hubPlugW).toBe(0);
    expect(bare.dragTimeShare).toBeGreaterThan(0);
  });

  it('pays on flat paved roads and drops off in hills and on tracks', () => {
    // Common practice, no source.
    const watts = (['flat-paved', 'rolling', 'hilly', 'mountain'] as const).map(
      (name) => on(name, wheel).hubPlugW,
    );
    expect(watts).toEqual([...watts].sort((a, b) => b - a));
    expect(on('rough-track', wheel).hubPlugW).toBeLessThan(on('rolling', wheel).hubPlugW);
  });

  it('costs the few per cent of time that its watts cost', () => {
    // About 5 W of 110 W at 20 km/h: the published fixture loses 2.6 % of speed to 5 W at 100 W.
    expectNear(on('flat-paved', wheel).dragTimeShare, 0.026, 0.012, 'share of time');
  });
});

describe('terrainClasses', () => {
  it.each(Object.entries(terrainClasses))(
    '%s shares out the whole distance, as much up as down',
    (_, terrain) => {
      const whole = terrain.grades.reduce((sum, { share }) => sum + share, 0);
      const net = terrain.grades.reduce((sum, { share, gradePct }) => sum + share * gradePct, 0);
      expectNear(whole, 1, 1e-9, 'shares');
      expectNear(net, 0, 1e-9, 'net climb');
    },
  );
});
