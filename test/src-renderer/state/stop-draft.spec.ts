import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import type { Leg, NightKind } from '../../../shared-types/tour.ts';
import { startingDraft, stopOnLeg } from '../../../src-renderer/state/stop-draft.ts';
import { piecesOf } from '../../../src-renderer/state/stop-pieces.ts';

const [leg] = demoTours[0]!.legs;
const withNights = (...kinds: NightKind[]): Leg => ({
  ...leg!,
  days: 6,
  nights: { ...leg!.nights, by: 'pattern', kinds },
});

describe('a stop on a leg', () => {
  it('is an hour at one outlet where the leg has no stop with a wall', () => {
    expect(stopOnLeg({ ...leg!, dayStops: [] }, 2)).toMatchObject({ minutes: 60, outlets: 1, leg: 2 });
  });

  it('is some hours from the wall of the evening, and a day more for each night without', () => {
    expect(stopOnLeg(withNights('wall'), 0).hoursToWall).toBe(6);
    expect(stopOnLeg(withNights('none', 'none', 'wall'), 0).hoursToWall).toBe(54);
  });

  it('stays within what a question takes on a tour of wild nights', () => {
    expect(startingDraft({ ...withNights('none'), days: 366 }).hoursToWall).toBeLessThanOrEqual(720);
  });
});

describe('what stands beside the wall', () => {
  const [tour] = demoTours;
  const banksOnly = demoScenarios.find(({ id }) => id === 'demo-banks')!;

  it('are owned devices that come along, and the banks of the kit', () => {
    const pieces = piecesOf({ leftAtHome: ['demo-camera'] }, banksOnly, demoItems);
    const keys = pieces.map(({ key }) => key);
    expect(keys).toContain('demo-phone#0');
    expect(keys).not.toContain('demo-camera#0');
    expect(keys).toContain('demo-bank-20#0');
    expect(keys).not.toContain('demo-charger-30#0');
  });

  it('are told apart where there are several', () => {
    const kit = [{ itemId: 'demo-bank-20', quantity: 2 }];
    const banks = piecesOf(tour!, { kit }, demoItems).filter(({ role }) => role === 'bank');
    expect(banks.map(({ key }) => key)).toEqual(['demo-bank-20#0', 'demo-bank-20#1']);
    expect(banks.map(({ label }) => label)).toEqual([
      expect.stringMatching(/1 of 2/),
      expect.stringMatching(/2 of 2/),
    ]);
  });

  it('count lights, but not those that are a percentage', () => {
    const items = demoItems.map((item) =>
      item.kind === 'bank' ? { ...item, lights: item.id === 'demo-bank-20' ? 100 : 4 } : item,
    );
    const banks = piecesOf(tour!, banksOnly, items).filter(({ role }) => role === 'bank');
    expect(banks.map(({ itemId, lights }) => [itemId, lights])).toEqual(
      expect.arrayContaining([
        ['demo-bank-20', 0],
        ['demo-bank-10', 4],
      ]),
    );
  });
});
