import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import { settings } from '../../../shared-types/settings.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { randomSettings } from './random-drafts.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

describe('readSettings()', () => {
  it('is null before any were saved', () => {
    expect(readSettings(opened().read)).toBeNull();
  });
});

describe('saveSettings()', () => {
  it('refuses a tour that is missing, and stores nothing', () => {
    const { read, write } = opened();
    expect(saveSettings(write, { ...demoSettings, tourId: 'gone' })).toMatchObject({
      ok: false,
      error: { code: 'not-found', fields: [{ path: 'settings.tourId', got: '"gone"' }] },
    });
    expect(readSettings(read)).toBeNull();
  });

  it('keeps the old settings when a scale is turned', () => {
    const { read, write } = openedDemo();
    const turned = { weight: 0.5, satisfied: -0.1, unacceptable: 0.5 };
    const preferences = { ...demoSettings.preferences, margin: turned };
    expect(() => saveSettings(write, { ...demoSettings, currency: 'CHF', preferences })).toThrow(
      /bounds_in_order/,
    );
    expect(readSettings(read)).toEqual(demoSettings);
  });

  it('replaces the one row there is', () => {
    const { read, write } = openedDemo();
    const changed = {
      ...demoSettings,
      currency: 'JPY',
      theme: 'dark',
      units: 'imperial',
      numberFormat: 'de-CH',
      letterKeys: false,
      paper: 'letter',
      stepMinutes: '60',
      tourId: null,
    } as const;
    saveSettings(write, changed);
    expect(readSettings(read)).toEqual(changed);
    expect(read.prepare('SELECT count(*) FROM settings').pluck().get()).toBe(1);
  });

  it('gives any settings back exactly as they were saved', () => {
    const { read, write } = openedDemo();
    fc.assert(
      fc.property(randomSettings(['demo-tour']), (random) => {
        expect(settings.safeParse(random).success).toBe(true);
        expect(saveSettings(write, random)).toEqual({ ok: true, value: random });
        expect(readSettings(read)).toEqual(random);
      }),
      { numRuns: 100 },
    );
  });
});
