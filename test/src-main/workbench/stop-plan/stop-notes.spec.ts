import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../../db/demo/demo.ts';
import { planStop, type PlannedStop } from '../../../../src-main/model/judge/stop-plan/plan-stop.ts';
import { stopKit } from '../../../../src-main/workbench/stop-plan/stop-kit.ts';
import { stopNotes, type StopGround } from '../../../../src-main/workbench/stop-plan/stop-notes.ts';
import { stopSituation } from '../../../support/stop-fixture.ts';

const [tour] = demoTours;

function groundOf(scenarioId: string): StopGround {
  const scenario = demoScenarios.find(({ id }) => id === scenarioId)!;
  return {
    asked: {
      tourId: tour!.id,
      scenarioId,
      minutes: 20,
      outlets: 1,
      hoursToWall: 12.5,
      states: [],
      use: { as: 'own', needs: [] },
    },
    tour: tour!,
    kit: stopKit(tour!, scenario, demoItems),
  };
}

const planned = planStop(stopSituation({ minutes: 20 }));

function notesOn(change: Partial<PlannedStop>, ground = groundOf('demo-banks')): readonly string[] {
  return stopNotes(ground, { ...planned, ...change });
}

describe('the notes on a stop', () => {
  it('say that all plans were compared, where they were', () => {
    expect(notesOn({})).toEqual([
      'The plan was compared with all others: of those that move plugs after whole slots of 5 min, none is better.',
    ]);
  });

  it('say so where slots were widened, and where the plan is finer than what was compared', () => {
    expect(notesOn({ slotMinutes: 10, bestOfMinutes: 10, finestMinutes: 5 })[0]).toMatch(
      /^There are too many plans with slots of 5 min to compare them all; .* 10 min, none is better\.$/,
    );
    expect(notesOn({ slotMinutes: 5, bestOfMinutes: 10, finestMinutes: 5 })[0]).toMatch(
      /This one has slots of 5 min\.$/,
    );
  });

  it('name what was left out of the plan', () => {
    expect(notesOn({ leftOut: [0], isNarrowed: true }).at(-1)).toMatch(/left out of the plan: Phone\.$/);
    expect(notesOn({ isNarrowed: true }).at(-1)).toMatch(/best free ports/);
  });

  it('say that panel and hub are not counted, where the kit has one', () => {
    expect(notesOn({}, groundOf('demo-hub')).join()).toContain('What panel or hub will give');
  });

  it('give no reason for an empty plan but the true one', () => {
    const [none] = notesOn({ lanes: [] });
    expect(none).toBe('Nothing here would gain by being plugged in.');
    const ground = groundOf('demo-banks');
    expect(notesOn({ lanes: [] }, { ...ground, kit: { ...ground.kit, chargers: [] } })[0]).toMatch(
      /no wall charger/,
    );
  });

  it('tell whose use was taken', () => {
    const ground = groundOf('demo-banks');
    const asked = { ...ground.asked, use: { as: 'leg', leg: 0 } as const };
    const needy = {
      ...planned.situation,
      stores: planned.situation.stores.map((s) => ({ ...s, needWh: 7 })),
    };
    expect(notesOn({ situation: needy }, { ...ground, asked })[0]).toBe(
      `Use until the next wall is that of a mean day of ${tour!.legs[0]!.label}, for 12.5 h: 7\u00a0Wh in all.`,
    );
  });
});
