import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { answer } from '../../shared-types/answer.ts';
import type { CallInput, CallName, CallResult, Choosing } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import { crewHere } from './crew-here.ts';
import { fewHistories } from './demo-ground.ts';
import { openWorkbench, type Workbench } from '../../src-main/workbench/open.ts';
import type { FileDesk, MadeFile } from '../../src-main/workbench/file-desk.ts';
import type { Crew } from '../../src-main/workbench/crew.ts';

export interface TestWorkbench {
  readonly call: <N extends CallName>(name: N, input: CallInput<N>) => Promise<Outcome<CallResult<N>>>;
  /** The value of a call that must succeed. */
  readonly value: <N extends CallName>(name: N, input: CallInput<N>) => Promise<CallResult<N>>;
  /** Files the desk was given. */
  readonly saved: MadeFile[];
  readonly folder: string;
  readonly faults: unknown[];
  /** Before the test ends. */
  close(): void;
}

/** A real workbench on a fresh data folder, called as a host calls it; closed and removed when the test ends. */
export function openedWorkbench(
  files: Partial<FileDesk> = {},
  crew: Crew = crewHere(),
  histories = fewHistories,
): TestWorkbench {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-workbench-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return workbenchOn(folder, { files, crew, histories });
}

interface TestOptions {
  readonly files?: Partial<FileDesk>;
  readonly crew?: Crew;
  /** Null leaves the settings as they are stored. */
  readonly histories?: number | null;
}

/** The same on a data folder of the test's own, with what is in it. */
export function workbenchOn(
  folder: string,
  { files = {}, crew = crewHere(), histories = null }: TestOptions = {},
): TestWorkbench {
  const saved: MadeFile[] = [];
  const faults: unknown[] = [];
  const desk: FileDesk = {
    save: (file) => {
      saved.push(file);
      return Promise.resolve({ as: 'saved', path: file.fileName });
    },
    choose: (): Promise<Choosing> => Promise.resolve({ as: 'cancelled' }),
    chooseFolder: () => Promise.resolve({ as: 'cancelled' }),
    ...files,
  };
  const workbench = openWorkbench({
    dataFolder: folder,
    host: 'loopback',
    version: '0.0.0',
    files: desk,
    faults: { file: '', report: (_, fault) => void faults.push(fault), recent: () => [] },
    crew,
  });
  let isOpen = true;
  const close = (): void => {
    if (isOpen) workbench.close();
    isOpen = false;
  };
  onTestFinished(close);
  const ready = histories === null ? Promise.resolve() : drawHistories(workbench, histories);
  const call: TestWorkbench['call'] = async (name, input) => {
    await ready;
    return (await answer(workbench.handlers, name, input, (_, fault) => faults.push(fault))) as Outcome<
      CallResult<typeof name>
    >;
  };
  const value: TestWorkbench['value'] = async (name, input) => {
    const outcome = await call(name, input);
    if (!outcome.ok) throw new Error(`${name}: ${outcome.error.message}`);
    return outcome.value;
  };
  return { call, value, saved, folder, faults, close };
}

async function drawHistories({ handlers }: Workbench, histories: number): Promise<void> {
  const settings = await handlers['settings.get']({});
  if (!settings.ok) throw new Error(settings.error.message);
  const { sky } = settings.value;
  await handlers['settings.save']({
    settings: { ...settings.value, stepMinutes: '60', sky: { ...sky, histories } },
  });
}
