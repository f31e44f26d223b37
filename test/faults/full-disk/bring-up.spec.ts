import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { readContent, type CatalogueContent } from '../../../src-main/catalogue/exchange/content.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { dumpOf } from '../catalogue-dump.ts';
import { layOlder } from '../older-folder.ts';
import { halfMadeFiles, unsoundBackups } from '../sound-file.ts';
import { expectTrouble } from '../ways-on.ts';
import { hasSmallDisks, smallDisk, whyNoSmallDisk } from './small-disk.ts';

const diskBytes = 12_000_000;
/** From a full disk on, so much more room at each start. */
const moreBytes = cases(400_000, 50_000);

function contentOf(file: string): CatalogueContent {
  const catalogue = openCatalogue(file);
  try {
    return readContent(catalogue.read);
  } finally {
    catalogue.close();
  }
}

describe.skipIf(!hasSmallDisks)(
  `an older catalogue on a disk that fills at its start${whyNoSmallDisk}`,
  () => {
    it.each([40, 100])('stays at step %d until there is room, and then has all it held', async (step) => {
      const disk = smallDisk(diskBytes);
      const file = layOlder(disk.folder, step);
      const before = dumpOf(file);
      let refused = 0;
      for (let free = 0; ; free += moreBytes) {
        disk.fill(free);
        const workbench = workbenchOn(disk.folder);
        const { trouble } = await workbench.value('catalogue.state', {});
        if (trouble !== null) await expectTrouble(workbench, ['full']);
        workbench.close();
        disk.clear();
        expect([unsoundBackups(disk.folder), halfMadeFiles(disk.folder)]).toEqual([[], []]);
        if (trouble === null) break;
        refused += 1;
        expect(dumpOf(file)).toEqual(before);
        // Each start copies it first: the next is to have as much room as it says.
        rmSync(join(disk.folder, 'backups'), { recursive: true, force: true });
      }
      expect(refused).toBeGreaterThan(2);
      expect(contentOf(file)).toEqual(contentOf(layOlder(temporaryFolder(), step)));
    });
  },
);
