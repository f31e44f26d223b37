import { describe, expect, it } from 'vitest';
import { FileFault } from '../../../../src-main/workbench/file-fault.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';
import { pdfSource } from '../../../support/read-pdf.ts';
import { toldCrew } from '../../../support/told-crew.ts';

const two = {
  runId: 'a-sheet',
  tourId: 'demo-tour',
  scenarioIds: ['demo-banks', 'demo-hub'],
  withSwings: false,
};
const csv = { as: 'csv', table: 'scenarios' } as const;
const pdf = { as: 'pdf', paper: 'letter' } as const;

describe('sheet.save', () => {
  it('passes on why a file was not written', async () => {
    const message = 'sheet.csv was not saved: the disk is full. Nothing was changed; choose another place.';
    const save = () => Promise.reject(new FileFault('storage', message));
    const { call, faults } = openedWorkbench({ save }, toldCrew().crew);
    expect(await call('sheet.save', { ...two, form: csv })).toEqual({
      ok: false,
      error: { code: 'storage', message, fields: [] },
    });
    expect(faults).toEqual([]);
  });

  it('refuses a tour that is not there, and writes nothing', async () => {
    const { call, saved } = openedWorkbench({}, toldCrew().crew);
    expect(await call('sheet.save', { ...two, tourId: 'gone', form: pdf })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    expect(saved).toEqual([]);
  });

  it('says what is allowed where the form is none', async () => {
    const { call, saved } = openedWorkbench({}, toldCrew().crew);
    const form = { as: 'csv', table: 'everything' } as unknown as typeof csv;
    expect(await call('sheet.save', { ...two, form })).toMatchObject({
      ok: false,
      error: { code: 'bad-input' },
    });
    expect(saved).toEqual([]);
  });

  it('answers `cancelled` when it is stopped while it looks for what would change the answer, and writes nothing', async () => {
    const told = toldCrew();
    told.hold('figures');
    const { call, value, saved } = openedWorkbench({}, told.crew);
    const answer = call('sheet.save', { ...two, withSwings: true, form: pdf });
    await expect.poll(() => told.started).toContain('figures');
    expect(await value('runs.cancel', { runId: two.runId })).toEqual({ cancelled: true });
    expect(await answer).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(saved).toEqual([]);
  });

  it('hands the desk the same figures the comparison shows, without a second walk', async () => {
    const { crew, started } = toldCrew();
    const { value, saved } = openedWorkbench({}, crew);
    const { scenarioIds, tourId } = two;
    const { scenarios } = await value('comparison.run', { tourId, scenarioIds, runId: 'a-comparison' });
    await value('sheet.save', { ...two, form: csv });
    const text = new TextDecoder().decode(saved[0]!.bytes);
    for (const { label, values } of scenarios) {
      expect(text).toContain(label);
      expect(text).toContain(String(values.grams));
    }
    expect(started).toEqual(['scenario']);
  });

  it('looks for what would change the answer for the table of it, and for no other table', async () => {
    const { crew, started } = toldCrew();
    const { value, saved } = openedWorkbench({}, crew);
    await value('sheet.save', { ...two, withSwings: true, form: csv });
    expect(started).toEqual(['scenario']);
    await value('sheet.save', { ...two, withSwings: false, form: { as: 'csv', table: 'swings' } });
    expect(started).toContain('figures');
    expect(saved.map(({ fileName }) => fileName)).toEqual([
      expect.stringMatching(/^chargewright-comparison-scenarios-[\d-]+\.csv$/u),
      expect.stringMatching(/^chargewright-comparison-swings-[\d-]+\.csv$/u),
    ]);
  });

  it('makes a PDF on the paper asked for', async () => {
    const { value, saved } = openedWorkbench({}, toldCrew().crew);
    await value('sheet.save', { ...two, form: pdf });
    const [{ mediaType, bytes } = { mediaType: '', bytes: new Uint8Array() }] = saved;
    expect(mediaType).toBe('application/pdf');
    expect(pdfSource(bytes).startsWith('%PDF-')).toBe(true);
    // ANSI/ASME Y14.1: Letter is 8.5 by 11 inches of 72 pt.
    expect(pdfSource(bytes)).toContain('/MediaBox [0 0 612 792]');
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
