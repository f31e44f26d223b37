import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings } from '../../db/demo/demo.ts';
import { usualBicycle, type TerrainClass } from '../../shared-types/tour.ts';
import { airDensityKgM3 } from '../../src-main/model/ride/air-density.ts';
import { courseOfClass, type Surroundings } from '../../src-main/model/ride/course.ts';
import { generatorWheel } from '../../src-main/model/ride/hub.ts';
import { rideCourse, type RiddenCourse } from '../../src-main/model/ride/ride-course.ts';
import { terrainClasses } from '../../src-main/model/ride/terrain.ts';
import { windsOf } from '../../src-main/model/ride/winds.ts';
import { frontShares } from '../../src-main/model/judge/front-load.ts';
import { hubCostOf } from '../../src-main/model/judge/hub-cost.ts';
import { hubSet } from '../../src-main/workbench/assemble/hub-set.ts';
import { carriedItems } from '../../src-main/workbench/assemble/kit.ts';
import { expectNear } from '../support/near.ts';

/*
 * What riders say of hub generators: common practice, no source. Each test writes out the conditions under which the model
 * agrees, and some under which it does not.
 */

/** 115 kg in all on the usual bicycle, calm air of 20 degC at sea level. */
const tourer = { ...usualBicycle, massKg: 115, airDensityKgM3: airDensityKgM3(0, 20) };
const ridingHours = 6;

/** A hub of 3 W in the wheel it is rated for, of middling drag; a converter that keeps 0.8 and starts at 10 km/h. */
function wheel(load: 'rated' | 'tracking') {
  const hub = {
    power: { as: 'rating', ratedW: 3 },
    wheelCircumferenceM: 2.155,
    ratedCircumferenceM: 2.155,
    idleDragW10: 0.5,
    idleDragW30: 2.5,
  } as const;
  return generatorWheel(hub, {
    efficiency: 0.8,
    startSpeedKmh: 10,
    outputW: 5,
    load,
    seriesCapacitorUF: 0,
  });
}

/** Ridden on the slopes of a class; on its own ground unless another is given. */
function ridden(
  name: TerrainClass,
  riderW: number,
  load: 'rated' | 'tracking' = 'rated',
  surfaces: Surroundings['surfaces'] = terrainClasses[name].surfaces,
): RiddenCourse {
  const around = { pavedRolling: usualBicycle.pavedRolling, surfaces, winds: windsOf({ as: 'calm' }) };
  const course = courseOfClass(terrainClasses[name].grades, around);
  return rideCourse(course, { riderW, bare: tourer, loaded: tourer, wheel: wheel(load) }, 1);
}

describe.each(['rated', 'tracking'] as const)('a hub under a %s load, the rider at 110 W', (load) => {
  const whADay = (name: TerrainClass): number => ridden(name, 110, load).plugW * ridingHours;

  it('pays on flat paved roads and drops off in hills', () => {
    expect(whADay('flat-paved')).toBeGreaterThan(whADay('rolling'));
    expect(whADay('rolling')).toBeGreaterThan(whADay('hilly'));
    expect(whADay('hilly')).toBeGreaterThan(whADay('mountain'));
  });
  it('gives twice as much on the flat as in mountains', () => {
    expect(whADay('flat-paved')).toBeGreaterThan(2 * whADay('mountain'));
  });
  it('drops off on rough ground: below rolling roads', () => {
    expect(whADay('rough-track')).toBeLessThan(0.9 * whADay('rolling'));
  });
  it('drops off on rough ground: below the same slopes paved', () => {
    const paved = ridden('rough-track', 110, load, terrainClasses['flat-paved'].surfaces);
    expect(whADay('rough-track')).toBeLessThan(0.9 * paved.plugW * ridingHours);
  });
  it('does not give least on rough track, which climbs half as much as mountains', () => {
    // Where it does not hold: a steep paved road is slower than a rough one of half the climb.
    expect(whADay('rough-track')).toBeGreaterThan(whADay('mountain'));
  });
  it('costs no more minutes a Wh in mountains than on the flat', () => {
    // Where it does not hold: a slow wheel drags less, so what drops off is the yield, not the yield for the time lost.
    const minutesAWh = (name: TerrainClass): number => {
      const { on, plugW } = ridden(name, 110, load);
      return (60 * on!.laterShare) / plugW;
    };
    expect(minutesAWh('mountain')).toBeLessThanOrEqual(minutesAWh('flat-paved'));
  });
});

describe('a rider of about 100 W, all day', () => {
  it.each([80, 100, 120])('rides loaded at 15 to 22 km/h on the flat, at %d W', (riderW) => {
    // The flat class, calm, the hub charging; 100 W is what a healthy person can be relied on for, give or take a fifth.
    expectNear(ridden('flat-paved', riderW).on!.speedKmh, 18.5, 3.5, 'mean speed, km/h');
  });
});

describe('the hub of the demo kit with all that belongs to it', () => {
  const scenario = demoScenarios.find(({ method }) => method === 'hub')!;
  const cost = hubCostOf(
    hubSet(carriedItems(scenario, demoItems), frontShares(demoSettings.frontLoad)),
    'EUR',
  );
  const hub = demoItems.find(({ kind }) => kind === 'generator-hub')!;

  it('adds 500 to 1000 g', () => expectNear(cost.netG, 750, 250, 'net, g'));
  it('carries nearly all of it on the front wheel', () => {
    // "Nearly all" is taken as nine tenths.
    expect(cost.frontWheelG).toBeGreaterThanOrEqual(0.9 * cost.netG);
    expect(cost.frontWheelG).toBeLessThanOrEqual(cost.netG);
  });
  it('is about a third of the total price', () => {
    // "About" is taken as 5 of 100.
    expectNear(hub.price.minor / cost.total.minor, 1 / 3, 0.05, 'share of the price');
    expect(cost.notConverted).toEqual([]);
  });
});
