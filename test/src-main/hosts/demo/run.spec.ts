import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Handlers } from '../../../../shared-types/contract.ts';
import { failure, success } from '../../../../shared-types/outcome.ts';
import { terminalDesk } from '../../../../src-main/hosts/demo/file-desk.ts';
import { runDemo } from '../../../../src-main/hosts/demo/run.ts';
import { openWorkbench } from '../../../../src-main/workbench/open.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { smallWorkbench } from '../small-workbench.ts';

interface Changes {
  readonly tourId?: string | null;
  readonly handlers?: Partial<Handlers>;
}

/** Handlers that answer just enough for the demo, and note what was asked of them. */
function setup({ tourId = 'demo-tour', handlers = {} }: Changes = {}) {
  const asked: string[] = [];
  const printed: string[] = [];
  const all = {
    ...smallWorkbench().handlers,
    'settings.get': () => success({ tourId }),
    'tours.list': () => success([{ id: 'first-tour' }]),
    'comparison.run': (input: unknown) => {
      asked.push(`run ${JSON.stringify(input)}`);
      return success({});
    },
    'sheet.save': ({ tourId: of, format }: { tourId: string; format: string }) => {
      asked.push(`save ${of} as ${format}`);
      return success({ as: 'saved', path: `comparison.${format}` });
    },
    ...handlers,
  } as unknown as Handlers;
  return { asked, printed, run: () => runDemo(all, (text) => printed.push(text)) };
}

describe('the demo', () => {
  it('fails with the sentence of the failing call', async () => {
    const refuse = () => failure('storage', 'The disk is full.');
    await expect(setup({ handlers: { 'sheet.save': refuse } }).run()).rejects.toThrow('The disk is full.');
    await expect(setup({ handlers: { 'comparison.run': refuse } }).run()).rejects.toThrow(
      'The disk is full.',
    );
  });

  it('says so when there is no tour at all', async () => {
    const none = { 'tours.list': () => success([]) };
    await expect(setup({ tourId: null, handlers: none }).run()).rejects.toThrow('holds no tour');
  });

  it('takes the first tour when the settings name none', async () => {
    const { asked, run } = setup({ tourId: null });
    await run();
    expect(asked).toContain('run {"tourId":"first-tour","scenarioIds":null,"runId":"demo"}');
  });

  it('compares, then saves the text before the files', async () => {
    const { asked, run } = setup();
    await run();
    expect(asked).toEqual([
      'run {"tourId":"demo-tour","scenarioIds":null,"runId":"demo"}',
      'save demo-tour as text',
      'save demo-tour as pdf',
      'save demo-tour as csv',
    ]);
  });

  it('prints where the files are', async () => {
    const { printed, run } = setup();
    await run();
    expect(printed).toEqual(['Written: comparison.pdf', 'Written: comparison.csv']);
  });

  it('prints and writes the sheet of a fresh catalogue', { timeout: 30_000 }, async () => {
    const folder = temporaryFolder();
    const printed: string[] = [];
    const print = (text: string): void => void printed.push(text);
    const files = terminalDesk(join(folder, 'output'), print);
    const workbench = openWorkbench({
      dataFolder: join(folder, 'data'),
      host: 'loopback',
      version: '1.2.3',
      files,
      crew: crewHere(),
    });
    await runDemo(workbench.handlers, print);
    workbench.close();
    const [table = '', ...written] = printed;
    expect(table).toMatch(/Rank +Scenario/);
    const paths = written.map((line) => line.replace('Written: ', ''));
    expect(paths.map((path) => existsSync(path))).toEqual([true, true]);
    expect(
      readFileSync(paths[0] ?? '')
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });
});
