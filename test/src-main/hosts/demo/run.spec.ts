import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Handlers } from '../../../../shared-types/contract.ts';
import { failure, success } from '../../../../shared-types/outcome.ts';
import { terminalDesk } from '../../../../src-main/hosts/demo/file-desk.ts';
import { runDemo } from '../../../../src-main/hosts/demo/run.ts';
import { jobHand } from '../../../../src-main/workbench/jobs.ts';
import { openWorkbench, type Workbench } from '../../../../src-main/workbench/open.ts';
import { fewHistories } from '../../../support/demo-ground.ts';
import { pdfPageCount, pdfSource } from '../../../support/read-pdf.ts';
import { toldCrew } from '../../../support/told-crew.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { smallWorkbench } from '../small-workbench.ts';

interface Changes {
  readonly tourId?: string | null;
  readonly handlers?: Partial<Handlers>;
}

/** Handlers that answer just enough for the demo, and note what was asked of them. */
function setup({ tourId = 'demo-tour', handlers = {} }: Changes = {}) {
  const asked: string[] = [];
  const questions: unknown[] = [];
  const printed: string[] = [];
  const all = {
    ...smallWorkbench().handlers,
    'settings.get': () => success({ tourId }),
    'tours.list': () => success([{ id: 'first-tour' }]),
    'sheet.save': ({ form, ...question }: { form: { as: string } }) => {
      asked.push(form.as);
      questions.push(question);
      return success({ as: 'saved', path: form.as === 'text' ? 'the terminal' : `comparison.${form.as}` });
    },
    ...handlers,
  } as unknown as Handlers;
  return { asked, questions, printed, run: () => runDemo(all, (text) => printed.push(text)) };
}

async function drawFew({ handlers }: Workbench): Promise<void> {
  const settings = await handlers['settings.get']({});
  if (!settings.ok) throw new Error(settings.error.message);
  const { sky } = settings.value;
  await handlers['settings.save']({
    settings: { ...settings.value, sky: { ...sky, histories: fewHistories } },
  });
}

describe('the demo', () => {
  it('fails with the sentence of the failing call', async () => {
    const refuse = () => failure('storage', 'The disk is full.');
    await expect(setup({ handlers: { 'sheet.save': refuse } }).run()).rejects.toThrow('The disk is full.');
    await expect(setup({ handlers: { 'settings.get': refuse } }).run()).rejects.toThrow('The disk is full.');
  });

  it('says so when there is no tour at all', async () => {
    const none = { 'tours.list': () => success([]) };
    await expect(setup({ tourId: null, handlers: none }).run()).rejects.toThrow('holds no tour');
  });

  it('takes the first tour when the settings name none', async () => {
    const { questions, run } = setup({ tourId: null });
    await run();
    expect(questions[0]).toMatchObject({ tourId: 'first-tour', scenarioIds: null });
  });

  it('saves the text before the files, one of each kind, with what would change the answer', async () => {
    const { asked, questions, run } = setup();
    await run();
    expect(asked).toEqual(['text', 'pdf', 'markdown', 'json', 'csv']);
    for (const question of questions)
      expect(question).toEqual({ runId: 'demo', tourId: 'demo-tour', scenarioIds: null, withSwings: true });
  });

  it('prints where the files are, and of the text nothing but itself', async () => {
    const { printed, run } = setup();
    await run();
    expect(printed).toEqual([
      'Written: comparison.pdf',
      'Written: comparison.markdown',
      'Written: comparison.json',
      'Written: comparison.csv',
    ]);
  });

  it('prints and writes the sheet of a fresh catalogue', { timeout: 30_000 }, async () => {
    const folder = temporaryFolder();
    const printed: string[] = [];
    const print = (text: string): void => void printed.push(text);
    const files = terminalDesk(join(folder, 'output'), print);
    const walk = jobHand();
    const workbench = openWorkbench({
      faults: { file: '', report: () => undefined, recent: () => [] },
      dataFolder: join(folder, 'data'),
      host: 'loopback',
      version: '1.2.3',
      files,
      crew: toldCrew({ scenario: (input) => walk({ kind: 'scenario', input }, () => undefined) }).crew,
    });
    await drawFew(workbench);
    await runDemo(workbench.handlers, print);
    workbench.close();
    const [text = '', ...written] = printed;
    expect(text).toMatch(/^Comparison sheet: /u);
    expect(text).toContain('What would change the answer');
    const paths = written.map((line) => line.replace('Written: ', ''));
    expect(paths.map((path) => extname(path))).toEqual(['.pdf', '.md', '.json', '.csv']);
    expect(paths.map((path) => existsSync(path))).toEqual([true, true, true, true]);
    const pdf = readFileSync(paths[0]!);
    expect(pdfSource(pdf).startsWith('%PDF-')).toBe(true);
    expect(pdfPageCount(pdf)).toBeGreaterThanOrEqual(2);
    expect(pdfPageCount(pdf)).toBeLessThanOrEqual(4);
  });
});
