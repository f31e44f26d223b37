import { describe, expect, it } from 'vitest';
import { FileFault } from '../../../../src-main/workbench/file-fault.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const all = { tourId: 'demo-tour', scenarioIds: null } as const;

describe('sheet.save', { timeout: 60_000 }, () => {
  it('passes on why a file could not be written', async () => {
    const { call } = openedWorkbench({
      save: () => Promise.reject(new FileFault('storage', 'The disk is full.')),
    });
    expect(await call('sheet.save', { ...all, format: 'csv' })).toEqual({
      ok: false,
      error: { code: 'storage', message: 'The disk is full.', fields: [] },
    });
  });

  it('refuses a tour that is not there, and writes nothing', async () => {
    const { call, saved } = openedWorkbench();
    expect(await call('sheet.save', { ...all, tourId: 'gone', format: 'pdf' })).toMatchObject({ ok: false });
    expect(saved).toEqual([]);
  });

  it('hands the desk the same figures the comparison shows', async () => {
    const { value, saved } = openedWorkbench();
    const { scenarios } = await value('comparison.run', { ...all, runId: 'spec' });
    await value('sheet.save', { ...all, format: 'csv' });
    const csv = new TextDecoder().decode(saved[0]!.bytes);
    for (const { label, values } of scenarios) {
      expect(csv).toContain(label);
      expect(csv).toContain(String(values.grams));
    }
  });

  it('makes a PDF of two pages of the demo', async () => {
    const { value, saved } = openedWorkbench();
    await value('sheet.save', { ...all, format: 'pdf' });
    expect(saved[0]).toMatchObject({ mediaType: 'application/pdf' });
    expect(new TextDecoder('latin1').decode(saved[0]!.bytes.subarray(0, 5))).toBe('%PDF-');
    expect(new TextDecoder('latin1').decode(saved[0]!.bytes).match(/\/Type \/Page\b/g)).toHaveLength(2);
  });
});

describe('files.choose', () => {
  it('passes the desk’s answer on, and its fault', async () => {
    const { value } = openedWorkbench({
      choose: () => Promise.resolve({ as: 'chosen', name: 'kit.csv', text: 'kind,label' }),
    });
    expect(await value('files.choose', { purpose: 'inventory-csv' })).toMatchObject({ as: 'chosen' });
    const { call } = openedWorkbench({
      choose: () => Promise.reject(new FileFault('too-large', 'Over 20 MB.')),
    });
    expect(await call('files.choose', { purpose: 'inventory-csv' })).toMatchObject({
      error: { code: 'too-large' },
    });
  });
});
