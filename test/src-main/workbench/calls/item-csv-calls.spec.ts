import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const header = 'kind,label,mass_g,price';
const good = `${header}\naccessory,Frame bag,120,25\naccessory,Strap,20,3\n`;
const faulty = `${header}\naccessory,Frame bag,120,25\naccessory,Anvil,-3,4\naccessory,Strap,20,3\n`;

describe('an inventory CSV on its way in', () => {
  it('stores nothing of a file with a line in error', async () => {
    const { value } = openedWorkbench();
    const { added, problems } = await value('items.addCsv', {
      text: faulty,
      leaveOut: [],
      passOverErrors: false,
    });
    expect(added).toEqual([]);
    expect(problems).toMatchObject([{ line: 3, column: 'mass_g' }]);
    expect(await value('items.list', {})).toHaveLength(demoItems.length);
  });

  it('is looked at without being stored', async () => {
    const { value } = openedWorkbench();
    const { lines, problems } = await value('items.readCsv', { text: faulty });
    expect(lines.map(({ line, item }) => [line, item.label])).toEqual([
      [2, 'Frame bag'],
      [4, 'Strap'],
    ]);
    expect(problems).toMatchObject([{ line: 3 }]);
    expect(await value('items.list', {})).toHaveLength(demoItems.length);
  });

  it('gives its good lines where the rider passes over the others', async () => {
    const { value } = openedWorkbench();
    const { added } = await value('items.addCsv', { text: faulty, leaveOut: [], passOverErrors: true });
    expect(added.map(({ label }) => label)).toEqual(['Frame bag', 'Strap']);
    expect(await value('items.list', {})).toHaveLength(demoItems.length + 2);
  });

  it('is stored without the lines left out', async () => {
    const { value } = openedWorkbench();
    const { added } = await value('items.addCsv', { text: good, leaveOut: [2], passOverErrors: false });
    expect(added.map(({ label }) => label)).toEqual(['Strap']);
  });

  it('has the lines marked that look like something there already', async () => {
    const { value } = openedWorkbench();
    const text = `${header}\naccessory,Strap,20,3\naccessory, STRAP ,25,3\naccessory,Phone,1,1\n`;
    await value('items.addCsv', { text: good, leaveOut: [3], passOverErrors: false });
    const { lines } = await value('items.readCsv', { text: `${text}accessory,frame  bag,1,1\n` });
    expect(lines.map(({ line, twin }) => [line, twin])).toEqual([
      [2, null],
      [3, 'file'],
      [4, null],
      [5, 'inventory'],
    ]);
  });
});

describe('an inventory CSV on its way out', () => {
  it('is refused where none of the items is there', async () => {
    const { call, saved } = openedWorkbench();
    expect(await call('items.saveCsv', { ids: ['gone'] })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    expect(saved).toEqual([]);
  });

  it('holds the items asked for, in their order, and reads back as twins of them', async () => {
    const { value, saved } = openedWorkbench();
    await value('items.saveCsv', { ids: ['demo-phone', 'demo-camera'] });
    const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(saved[0]!.bytes);
    const { lines, problems } = await value('items.readCsv', { text });
    expect(problems).toEqual([]);
    expect(lines.map(({ item, twin }) => [item.label, twin])).toEqual([
      ['Phone', 'inventory'],
      ['Camera', 'inventory'],
    ]);
  });

  it('begins as a template that reads without an error', async () => {
    const { value, saved } = openedWorkbench();
    await value('items.saveCsvTemplate', {});
    const { lines, problems } = await value('items.readCsv', {
      text: new TextDecoder().decode(saved[0]!.bytes),
    });
    expect(problems).toEqual([]);
    expect(new Set(lines.map(({ item }) => item.kind)).size).toBe(7);
  });

  it('comes with a guide to every column', async () => {
    const { value } = openedWorkbench();
    const columns = await value('items.csvColumns', {});
    expect(columns.find(({ name }) => name === 'mass_g')).toMatchObject({
      allowed: 'a number from 0 to 20,000 g',
      whenEmpty: 'must be filled',
    });
  });
});
