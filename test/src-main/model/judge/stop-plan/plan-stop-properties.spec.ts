import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkW } from '../../../../../src-main/model/storage/port-power.ts';
import { planStop, type PlannedStop } from '../../../../../src-main/model/judge/stop-plan/plan-stop.ts';
import { search } from '../../../../../src-main/model/judge/stop-plan/search.ts';
import type { StopSituation } from '../../../../../src-main/model/judge/stop-plan/situation.ts';
import { anyStop, evenGrid, stopProblem } from '../../../../support/stop-fixture.ts';

const run = { seed: 8, numRuns: 30, endOnFailure: true };
const anyKit = fc.tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 1, max: 3 }));
const anySituation = anyKit.chain(([stores, ports]) => anyStop(stores, ports));
/** What a plan may be short of the best, Wh stored. */
const negligible = 0.1;

const worthOn = (situation: StopSituation, slots: number): number =>
  search(stopProblem(situation, evenGrid(slots, 10))).worth;

interface Use {
  readonly store: number;
  readonly charger: number;
  readonly port: number;
  readonly fromMinute: number;
  readonly toMinute: number;
}

const usesOf = ({ lanes }: PlannedStop): readonly Use[] =>
  lanes.flatMap(({ charger, port, spans }) => spans.map((span) => ({ ...span, charger, port })));

const overlap = (a: Use, b: Use): boolean => a.fromMinute < b.toMinute && b.fromMinute < a.toMinute;

describe('a plan of any stop', () => {
  it('is worth no less with more minutes', () => {
    fc.assert(
      fc.property(anySituation, fc.integer({ min: 1, max: 5 }), (situation, slots) => {
        expect(worthOn(situation, slots + 1)).toBeGreaterThanOrEqual(worthOn(situation, slots) - negligible);
      }),
      run,
    );
  });

  it('is worth no less with more outlets', () => {
    fc.assert(
      fc.property(anySituation, (situation) => {
        const more = { ...situation, outlets: situation.outlets + 1 };
        expect(worthOn(more, 4)).toBeGreaterThanOrEqual(worthOn(situation, 4) - negligible);
      }),
      run,
    );
  });

  it('has each store on one port, each port with one store, and no more chargers in the wall than outlets', () => {
    fc.assert(
      fc.property(anySituation, (situation) => {
        const plan = planStop(situation);
        const uses = usesOf(plan);
        for (const use of uses) {
          expect(use.fromMinute).toBeGreaterThanOrEqual(0);
          expect(use.toMinute).toBeGreaterThan(use.fromMinute);
          expect(use.toMinute).toBeLessThanOrEqual(situation.minutes);
          const meanwhile = uses.filter((other) => overlap(use, other));
          expect(meanwhile.filter(({ store }) => store === use.store)).toHaveLength(1);
          expect(
            meanwhile.filter(({ charger, port }) => charger === use.charger && port === use.port),
          ).toHaveLength(1);
          const begun = uses.filter((other) => overlap({ ...use, toMinute: use.fromMinute + 1 }, other));
          expect(new Set(begun.map(({ charger }) => charger)).size).toBeLessThanOrEqual(situation.outlets);
        }
      }),
      run,
    );
  });

  it('stores no more than ports and chargers give, less the losses', () => {
    fc.assert(
      fc.property(anySituation, (drawn) => {
        const plan = planStop(drawn);
        const { stores, chargers, minutes, outlets } = plan.situation;
        const drawnWh = stores.map((store, place) => {
          const addedWh = plan.afterWh[place]! - store.storedWh;
          expect(addedWh).toBeGreaterThanOrEqual(0);
          expect(plan.afterWh[place]!).toBeLessThanOrEqual(store.capacityWh);
          const offeredWh = usesOf(plan)
            .filter((use) => use.store === place)
            .reduce((sum, { charger, port, fromMinute, toMinute }) => {
              const powerW = linkW(chargers[charger]!.outputs[port]!, store.input);
              return sum + (powerW * (toMinute - fromMinute)) / 60;
            }, 0);
          expect(addedWh).toBeLessThanOrEqual(offeredWh * store.efficiencyIn + 1e-9);
          return addedWh / store.efficiencyIn;
        });
        const strongest = chargers.map(({ totalW }) => totalW).sort((a, b) => b - a);
        const mostW = strongest.slice(0, outlets).reduce((sum, totalW) => sum + totalW, 0);
        const takenWh = drawnWh.reduce((sum, wh) => sum + wh, 0);
        expect(takenWh).toBeLessThanOrEqual((mostW * minutes) / 60 + 1e-9);
      }),
      run,
    );
  });

  it('does not hang on the order of the lists', () => {
    fc.assert(
      fc.property(anySituation, (situation) => {
        const turned = {
          ...situation,
          stores: [...situation.stores].reverse(),
          chargers: [...situation.chargers].reverse(),
        };
        expect(planStop(turned)).toEqual(planStop(situation));
      }),
      { ...run, numRuns: 10 },
    );
  });

  it('leaves the need that is served as good as the search found it', () => {
    fc.assert(
      fc.property(anySituation, (situation) => {
        const plan = planStop(situation);
        const served = (rank: string): number =>
          plan.served
            .filter(({ store }) => plan.situation.stores[store]!.rank === rank)
            .reduce((sum, { ownWh, fromBanksWh }) => sum + ownWh + fromBanksWh, 0);
        expect(served('must-have')).toBeCloseTo(plan.worth.mustHaveWh, 9);
        expect(served('nice-to-have')).toBeCloseTo(plan.worth.niceToHaveWh, 9);
      }),
      run,
    );
  });
});
