import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../../db/demo/demo.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const map = { runId: 'a', tourId: 'demo-tour', leg: 0, scenarioIds: null };

describe('the calls of the break-even map', () => {
  it.each([
    { what: 'a leg that is no number', input: { ...map, leg: -1 }, path: 'leg' },
    { what: 'no scenario at all', input: { ...map, scenarioIds: [] }, path: 'scenarioIds' },
  ])('refuse $what', async ({ input, path }) => {
    const { call } = openedWorkbench();
    expect(await call('outlook.map', input)).toMatchObject({
      ...{ ok: false, error: { code: 'bad-input', fields: [{ path }] } },
    });
  });

  it('refuse weights that are all 0', async () => {
    const { call } = openedWorkbench();
    const { cost, grams, frontWheelGrams, margin, ...rest } = demoSettings.preferences;
    const preferences = {
      ...rest,
      cost: { ...cost, weight: 0 },
      grams: { ...grams, weight: 0 },
      frontWheelGrams: { ...frontWheelGrams, weight: 0 },
      margin: { ...margin, weight: 0 },
    };
    expect(await call('outlook.rankMap', { tourId: 'demo-tour', leg: 0, preferences })).toMatchObject({
      ...{ ok: false, error: { code: 'bad-input' } },
    });
  });

  it('rank no map before one is drawn', async () => {
    const { call } = openedWorkbench();
    const { preferences } = demoSettings;
    expect(await call('outlook.rankMap', { tourId: 'demo-tour', leg: 0, preferences })).toMatchObject({
      ...{ ok: false, error: { code: 'not-found' } },
    });
  });

  it('stop a map by the name of its run', async () => {
    const { call, value } = openedWorkbench();
    const drawing = call('outlook.map', map);
    expect(await value('runs.cancel', { runId: 'a' })).toEqual({ cancelled: true });
    expect(await drawing).toMatchObject({ ok: false, error: { code: 'cancelled' } });
  });
});
