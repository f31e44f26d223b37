import { describe, expect, it } from 'vitest';
import { demoScenarios, demoSettings, demoTours } from '../../db/demo/demo.ts';
import type { BreakEvenMap, MapCell } from '../../shared-types/break-even.ts';
import type { Leg, NightKind } from '../../shared-types/tour.ts';
import { scorecard } from '../../src-main/model/judge/scorecard.ts';
import { drawnTours } from '../../src-main/workbench/ground.ts';
import { kitFigures } from '../../src-main/workbench/kit-figures.ts';
import { drawMap } from '../../src-main/workbench/outlook/draw-map.ts';
import { usualMapPlan } from '../../src-main/workbench/outlook/map-grid.ts';
import { writeMap } from '../../src-main/workbench/outlook/write-map.ts';
import { crewHere } from '../support/crew-here.ts';
import { demoGround, withHistories } from '../support/demo-ground.ts';

/*
 * What riders say of banks, panels and hubs: common practice, no source. The kit is the demo's, of the size that is usual: 30 Ah of
 * banks; or a 20 W panel with a 20 Ah bank, the panel flat on the rack while riding; or a hub of 3 W with the same bank. About 25 Wh
 * a day for phone, navigation unit, camera, light and reader. Weights are the demo's, which a new catalogue starts with. Rider 76 kg,
 * bicycle and luggage 37 kg, 105 W, calm. No sockets by day. Each test writes out the rest.
 */

/** A leg without day stops, on the demo's bicycle. */
function leg(changes: Pick<Leg, 'place' | 'terrain' | 'ridingHours'> & Partial<Leg>): Leg {
  return { ...demoTours[0]!.legs[0]!, dayStops: [], ...changes };
}

const flat = { as: 'class', terrainClass: 'flat-paved' } as const;
const rolling = { as: 'class', terrainClass: 'rolling' } as const;

/** Which scenario leads on some tours of a leg; as the workbench draws it, but for the lengths and gaps. */
async function mapOf(startDate: string, on: Leg, days: readonly number[], gapsDays: readonly number[]) {
  const ground = demoGround({ tour: { ...demoTours[0]!, startDate, legs: [on] }, settings: demoSettings });
  const subject = { ground, leg: 0, scenarios: demoScenarios };
  const plan = { ...usualMapPlan, days, gapsDays };
  const mapped = (await drawMap(subject, plan, crewHere(), () => undefined).results)!;
  return { map: writeMap({ subject, plan, mapped }, demoSettings.preferences), mapped };
}

function methodIn({ scenarios }: BreakEvenMap, { leaderId }: MapCell): string | undefined {
  return scenarios.find(({ id }) => id === leaderId)?.method;
}

/** Central Europe in June: 47.5 N, rolling, six hours of riding a day. */
const june = leg({ place: { as: 'station', station: 'Budapest' }, terrain: rolling, ridingHours: 6 });
const juneStart = '2027-06-07';

describe('banks alone', { timeout: 30_000 }, () => {
  it('win overnight and at the weekend, wherever the walls are', async () => {
    // 2 and 3 days; a wall every night, every second, or none on the way.
    const { map } = await mapOf(juneStart, june, [2, 3], [1, 2, 3]);
    expect(map.cells.map((cell) => methodIn(map, cell))).toEqual(new Array(6).fill('banks'));
    expect(map.cells.map(({ carrying }) => carrying)).toEqual(new Array(6).fill('leader'));
  });

  it.each<{ what: string; kinds: NightKind[] }>([
    { what: 'every night', kinds: ['electric-post'] },
    { what: 'every second night', kinds: ['none', 'electric-post'] },
  ])('win a week with a campsite post $what', ({ kinds }) => {
    // One outlet at the post, with the demo's charger of two ports.
    const nights = { ...june.nights, by: 'pattern', kinds, postOutlets: 1 } as const;
    const tour = { ...demoTours[0]!, startDate: juneStart, legs: [{ ...june, days: 7, nights }] };
    const ground = demoGround({ tour, settings: { ...withHistories(60), stepMinutes: '60' } });
    const drawn = drawnTours()(ground);
    const rows = demoScenarios.map((scenario) => {
      const { values } = kitFigures(scenario, drawn, ground, () => undefined);
      return { id: scenario.id, values, airborne: true };
    });
    const [first] = scorecard(rows, demoSettings.preferences, 'EUR');
    expect(first?.id).toBe('demo-banks');
    expect(rows.find(({ id }) => id === 'demo-banks')!.values.margin).toBeGreaterThanOrEqual(0);
  });
});

describe('a panel or a hub', { timeout: 30_000 }, () => {
  it('enters for a month or more away from walls', async () => {
    // 30 and 60 days; a wall every fortnight, or none on the way. Banks do not carry it.
    const { map, mapped } = await mapOf(juneStart, june, [30, 60], [14, 60]);
    for (const cell of map.cells) {
      expect(['panel', 'hub']).toContain(methodIn(map, cell));
      expect(cell.carrying).toBe('leader');
    }
    const banks = mapped.find(({ id }) => id === 'demo-banks')!.figures.flat();
    for (const { values } of banks) expect(values.margin).toBeLessThan(0);
  });
});

describe('a panel where the sun is low', { timeout: 30_000 }, () => {
  it('falls behind: it leads nowhere, and beyond a day has the least margin', async () => {
    // 64 N in November, with 1.4 hours of sunshine a day; rolling, six hours of riding a day; 3 to 30 days, a wall every 2 days to none on the way.
    const winter = leg({ place: { as: 'station', station: 'Reykjavik' }, terrain: rolling, ridingHours: 6 });
    const { map, mapped } = await mapOf('2027-11-01', winter, [3, 7, 30], [2, 4, 14]);
    expect(map.cells.map((cell) => methodIn(map, cell))).not.toContain('panel');
    const marginsOf = (id: string): readonly number[] =>
      mapped
        .find((each) => each.id === id)!
        .figures.flat()
        .map(({ values }) => values.margin);
    const [banks, panel, hub] = ['demo-banks', 'demo-panel', 'demo-hub'].map(marginsOf);
    panel!.forEach((margin, at) => expect(margin).toBeLessThan(Math.min(banks![at]!, hub![at]!)));
  });
});

describe('a generator hub where it is remote, flat and dull', { timeout: 30_000 }, () => {
  // 64 N in September and October, with 4 and 3 hours of sunshine a day; flat and paved, seven hours of riding a day.
  const place = { as: 'station', station: 'Reykjavik' } as const;
  const dull = leg({ place, terrain: flat, ridingHours: 7 });
  const from = '2027-09-01';

  it('leads with a wall once a week; where walls are rarer it comes nearest, and no kit of this size carries the plan', async () => {
    const { map } = await mapOf(from, dull, [30, 45], [7, 14]);
    expect(map.cells.map((cell) => methodIn(map, cell))).toEqual(new Array(4).fill('hub'));
    expect(map.cells.map(({ carrying }) => carrying)).toEqual(['leader', 'none', 'leader', 'none']);
  });
});
