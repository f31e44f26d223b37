import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { inMemory } from '../../../src-main/catalogue/connection.ts';
import { loadDemoIfEmpty } from '../../../src-main/catalogue/demo.ts';
import { openCatalogue, type OpenedCatalogue } from '../../../src-main/catalogue/open.ts';

/** A folder of this test's own, gone when the test ends. */
export function temporaryFolder(within = tmpdir()): string {
  const folder = mkdtempSync(join(within, 'chargewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A path for a catalogue that is not there yet. */
export function temporaryFile(): string {
  return join(temporaryFolder(), 'catalogue.sqlite');
}

/** An open catalogue, in a file of its own unless told otherwise; closed when the test ends. */
export function opened(file = temporaryFile()): OpenedCatalogue {
  const catalogue = openCatalogue(file);
  onTestFinished(() => catalogue.close());
  return catalogue;
}

/** An open catalogue with the demo in it, in memory. */
export function openedDemo(): OpenedCatalogue {
  const catalogue = opened(inMemory);
  loadDemoIfEmpty(catalogue.write);
  return catalogue;
}

/** The demo with every track taken out of its legs. */
export function openedTrackless(): OpenedCatalogue {
  const catalogue = openedDemo();
  catalogue.write.exec('DELETE FROM leg_tracks');
  return catalogue;
}

/** What `work` throws; undefined when it throws nothing. */
export function thrownBy(work: () => unknown): unknown {
  try {
    work();
  } catch (thrown) {
    return thrown;
  }
  return undefined;
}
