import { describe, expect, it } from 'vitest';
import type { Method } from '../../shared-types/scenario.ts';
import type { BankLights, LightRow, StopRules } from '../../shared-types/stop-rules.ts';
import { toldLights, toldSteps } from '../../shared-types/stop-words.ts';

const locale = 'en-GB';

function ruled(id: string, changes: Partial<StopRules>, method: Method = 'banks') {
  return {
    id,
    label: id.toUpperCase(),
    method,
    stopRules: { steps: [], banks: [], mustHaveWhPerDay: 20, leg: 'Coast', ...changes },
  };
}

/** 60 Wh behind four lights: a light is 15 Wh, and 20 Wh a day make three quarters of a day of it. */
function light(lit: number, withSources: LightRow['withSources'] = null): LightRow {
  const [lowWh, highWh] = [(lit - 1) * 15, lit * 15];
  return { lit, of: 4, lowWh, highWh, alone: { lowDays: lowWh / 20, highDays: highWh / 20 }, withSources };
}

function bank(rows: readonly LightRow[]): BankLights {
  return { bank: '20 Ah bank', pieces: 1, fullWh: 60, rows };
}

describe('steps of several scenarios', () => {
  it('are none where there is no scenario', () => {
    expect(toldSteps([])).toEqual({ common: [], own: [] });
  });

  it('tell once what holds in all, and of each only what is its own', () => {
    const one = ruled('one', { steps: ['Devices first.', 'Fill the bank.'] });
    const other = ruled('other', { steps: ['Devices first.'] });
    expect(toldSteps([one, other])).toEqual({
      common: ['Devices first.'],
      own: [{ scenario: one, steps: ['Fill the bank.'] }],
    });
  });
});

describe('what lights mean in several scenarios', () => {
  it('is nothing without a bank', () => {
    expect(toldLights([ruled('one', {})], locale)).toMatchObject({ sunny: [], rows: [] });
  });

  it('is told once of a bank that several carry, with a column for each that has a source', () => {
    const plain = ruled('plain', { banks: [bank([light(2), light(1)])] });
    const carried = { as: 'sources' } as const;
    const lasting = { as: 'days', lowDays: 0, highDays: 1.25 } as const;
    const sunny = ruled('sunny', { banks: [bank([light(2, carried), light(1, lasting)])] }, 'panel');
    const told = toldLights([plain, sunny], locale);
    expect(told.sunny).toEqual([sunny]);
    expect(told.rows).toEqual([
      {
        ...{ bank: '20 Ah bank', fullWh: '60', lights: '2 of 4', wh: '15 to 30', alone: '0.8 to 1.5' },
        withSources: ['sources carry it'],
      },
      {
        ...{ bank: '20 Ah bank', fullWh: '60', lights: '1 of 4', wh: '0 to 15', alone: '0.0 to 0.8' },
        withSources: ['0.0 to 1.3'],
      },
    ]);
  });

  it('is told apart of the same bank where it gives less', () => {
    const full = ruled('full', { banks: [bank([light(4)])] });
    const old = ruled('old', { banks: [{ ...bank([light(3)]), fullWh: 45 }] });
    expect(toldLights([full, old], locale).rows.map(({ fullWh, lights }) => `${lights}: ${fullWh}`)).toEqual([
      '4 of 4: 60',
      '3 of 4: 45',
    ]);
  });

  it('has no days where the must-haves use nothing', () => {
    const idle = { ...light(1), alone: null };
    expect(toldLights([ruled('one', { banks: [bank([idle])] })], locale).rows[0]?.alone).toBe('–');
  });

  it('says what the days are reckoned with', () => {
    const one = ruled('one', { banks: [bank([light(1)])] });
    expect(toldLights([one], locale).basis).toMatch(/20\u00a0Wh a day as on Coast, where they use most\./u);
  });
});
