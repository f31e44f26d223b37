import { dirname } from 'node:path';
import { expect } from 'vitest';
import { demoItems } from '../../db/demo/demo.ts';
import type { CatalogueTrouble, StorageFault } from '../../shared-types/catalogue-file.ts';
import type { ErrorCode } from '../../shared-types/outcome.ts';
import type { TestWorkbench } from '../support/open-workbench.ts';

/** A workbench in this process, or a host in one of its own. */
export type Called = Pick<TestWorkbench, 'call' | 'value'>;

/** Calls that read all there is. */
const readingCalls = [
  'items.list',
  'tours.list',
  'scenarios.list',
  'settings.get',
  'readings.log',
  'stations.list',
  'exchange.save',
] as const;

export type Answers = Readonly<Record<string, 'ok' | ErrorCode>>;

/** What each call that reads answers: `ok`, or the code of its error. */
export async function readingAnswers({ call }: Called): Promise<Answers> {
  const answers: [string, 'ok' | ErrorCode][] = [];
  for (const name of readingCalls) {
    const outcome = await call(name, {});
    answers.push([name, outcome.ok ? 'ok' : outcome.error.code]);
  }
  return Object.fromEntries(answers);
}

function allAnswer(code: 'ok' | ErrorCode): Answers {
  return Object.fromEntries(readingCalls.map((name) => [name, code]));
}

const { id: _, ...thing } = demoItems[0]!;

/** What is wrong, once every call about content has answered it. */
export async function expectTrouble(
  called: Called,
  allowed: readonly StorageFault[],
): Promise<CatalogueTrouble> {
  const { trouble, file } = await called.value('catalogue.state', {});
  if (trouble === null) throw new Error(`${file} was opened.`);
  expect(allowed).toContain(trouble.fault);
  expect(trouble.message).toContain(dirname(file));
  expect(await readingAnswers(called)).toEqual(allAnswer('storage'));
  const refusal = { ok: false, error: { code: 'storage', message: trouble.message } };
  expect(await called.call('items.save', { item: thing })).toMatchObject(refusal);
  for (const name of ['about', 'diagnostics.get', 'catalogue.choices'] as const)
    expect(await called.call(name, {})).toMatchObject({ ok: true });
  return trouble;
}

/** Works, and will do so at the next start. */
export async function expectWorks(called: Called): Promise<void> {
  expect(await called.value('catalogue.state', {})).toMatchObject({ trouble: null, notKept: null });
  await expectReadsAndSaves(called);
}

/** Reads everything, and saves something that is there afterwards. */
export async function expectReadsAndSaves(called: Called): Promise<void> {
  expect(await readingAnswers(called)).toEqual(allAnswer('ok'));
  const saved = await called.value('items.save', { item: thing });
  expect(await called.value('items.list', {})).toContainEqual(saved);
}

export interface WaysOn {
  /** The catalogue that could not be opened; null where the path can't be asked for, as it is a folder. */
  readonly damaged: string | null;
  /** A data folder with another catalogue, which is sound. */
  readonly otherFolder: string;
  /** How many things the newest backup holds. */
  readonly thingsBackedUp: number;
}

/** Goes every way on there is from a catalogue that could not be opened. */
export async function expectWaysOn(
  called: Called,
  { damaged, otherFolder, thingsBackedUp }: WaysOn,
): Promise<void> {
  expect(await called.call('catalogue.restore', { name: null })).toMatchObject({ ok: true });
  expect(await called.value('items.list', {})).toHaveLength(thingsBackedUp);
  await expectWorks(called);
  if (damaged !== null) {
    const refusal = { ok: false, error: { code: 'storage' } };
    expect(await called.call('catalogue.openOther', { path: damaged })).toMatchObject(refusal);
    await expectWorks(called);
  }
  expect(await called.call('catalogue.startEmpty', {})).toMatchObject({ ok: true });
  await expectWorks(called);
  const opened = await called.value('catalogue.openOther', { path: otherFolder });
  expect(opened).toMatchObject({ as: 'opened', state: { trouble: null } });
  await expectWorks(called);
}
