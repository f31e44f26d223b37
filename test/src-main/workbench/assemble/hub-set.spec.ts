import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings } from '../../../../db/demo/demo.ts';
import { costOf } from '../../../../src-main/model/judge/cost.ts';
import { frontShares } from '../../../../src-main/model/judge/front-load.ts';
import { hubCostOf } from '../../../../src-main/model/judge/hub-cost.ts';
import { massOf } from '../../../../src-main/model/judge/mass.ts';
import { hubSet } from '../../../../src-main/workbench/assemble/hub-set.ts';
import { carriedItems } from '../../../../src-main/workbench/assemble/kit.ts';
import { pricedLines, weighedLines } from '../../../../src-main/workbench/assemble/money-and-mass.ts';

const linesOf = (method: string) =>
  carriedItems(
    demoScenarios.find((scenario) => scenario.method === method)!,
    demoItems,
  );

const shares = frontShares(demoSettings.frontLoad);

describe('hubSet()', () => {
  it('is nothing for a kit without a hub, whatever its cables', () => {
    expect(hubSet(linesOf('panel'), shares)).toEqual([]);
  });

  it('names hub, what comes off, wheel, converter and its own cable', () => {
    expect(hubSet(linesOf('hub'), shares).map(({ part }) => part)).toEqual([
      '3 W generator hub wheel',
      'Hub that comes off',
      'Rim, net of the old one',
      'Spokes, net of the old ones',
      'Wheel building',
      'Hub to USB converter',
      'Cable from hub to stem',
    ]);
  });

  it('comes to the price and the grams that the whole kit counts for these items', () => {
    const lines = linesOf('hub');
    const ofHub = lines.filter(
      ({ item }) =>
        item.kind === 'generator-hub' ||
        item.kind === 'converter' ||
        (item.kind === 'accessory' && item.forHub),
    );
    const set = hubCostOf(hubSet(lines, shares), 'EUR');
    const mass = massOf(weighedLines(ofHub), shares);
    expect(set.total).toEqual(costOf(pricedLines(ofHub), demoSettings).whole);
    expect(set.netG).toBeCloseTo(mass.carriedG, 9);
    expect(set.frontWheelG).toBeCloseTo(mass.frontWheelG, 9);
  });

  it('counts every piece of a set carried twice', () => {
    const twice = linesOf('hub').map((line) => ({ ...line, carried: 2 }));
    const once = hubCostOf(hubSet(linesOf('hub'), shares), 'EUR');
    expect(hubCostOf(hubSet(twice, shares), 'EUR')).toMatchObject({
      total: { minor: once.total.minor * 2 },
      netG: once.netG * 2,
    });
  });
});
