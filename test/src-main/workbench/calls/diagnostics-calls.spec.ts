import { describe, expect, it } from 'vitest';
import { diagnosticsCalls } from '../../../../src-main/workbench/calls/diagnostics-calls.ts';
import { demoItems } from '../../../../db/demo/demo.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

describe('diagnostics', () => {
  it('name the program, its parts, its files and its faults', async () => {
    const { value, folder } = openedWorkbench();
    const found = await value('diagnostics.get', {});
    expect(found).toMatchObject({ version: '0.0.0', host: 'loopback', dataFolder: folder, faults: [] });
    expect(found.catalogue.step).toBe(230);
    expect(found.catalogue.bytes).toBeGreaterThan(4096);
    expect(found.parts.map(({ name }) => name)).toEqual(['Node.js', 'SQLite', 'System']);
  });

  it('hold nothing of what the rider stored', async () => {
    const { value } = openedWorkbench();
    const { id: _, ...item } = demoItems[0]!;
    await value('items.save', { item: { ...item, label: 'My secret lamp' } });
    expect(JSON.stringify(await value('diagnostics.get', {}))).not.toContain('secret');
  });

  it('take faults of the page into the log, but not without end', async () => {
    const written: string[] = [];
    const calls = diagnosticsCalls({
      version: '1.2.3',
      host: 'loopback',
      dataFolder: '',
      faults: {
        file: '',
        report: (where, fault) => void written.push(`${where}: ${String(fault)}`),
        recent: () => [],
      },
      catalogue: () => ({ file: '', step: null }),
    });
    const report = () => calls['diagnostics.report']({ where: 'tours', what: 'Broken.' });
    expect(await report()).toEqual({ ok: true, value: { logged: true } });
    for (let more = 0; more < 200; more += 1) await report();
    expect(await report()).toEqual({ ok: true, value: { logged: false } });
    expect(written).toHaveLength(100);
    expect(written[0]).toBe('page, tours: Broken.');
  });
});
