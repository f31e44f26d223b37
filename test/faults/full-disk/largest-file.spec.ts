import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { usualCatalogue } from '../../../src-main/catalogue/in-use.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { openedHost } from '../built-host.ts';
import { unsoundParts } from '../sound-file.ts';
import { expectWorks } from '../ways-on.ts';

/** In units of 512 bytes, as POSIX has it for `ulimit -f`: 1 MB, some way beyond a new catalogue. */
const mostBlocks = 2000;
const { id: _, ...thing } = demoItems[0]!;

/* What a full disk does to one file, without a disk of one's own: so it is tried where none may be mounted too. */
describe.skipIf(process.platform === 'win32')('where no file may grow beyond a size', () => {
  it('refuses the save that would, keeps those before, and goes on once that is lifted', async () => {
    const folder = temporaryFolder();
    const through = ['sh', '-c', `ulimit -f ${mostBlocks} && exec "$0" "$@"`];
    const bounded = await openedHost(folder, { through });
    const item = { ...thing, notes: 'n'.repeat(2000) };
    let saved = 0;
    let outcome = await bounded.call('items.save', { item });
    for (; outcome.ok; saved += 1) outcome = await bounded.call('items.save', { item });
    expect(outcome.error).toMatchObject({ code: 'storage', fields: [] });
    expect(await bounded.value('items.list', {})).toHaveLength(demoItems.length + saved);
    await bounded.kill();
    expect(unsoundParts(join(folder, usualCatalogue))).toEqual([]);
    const host = await openedHost(folder);
    expect(await host.value('items.list', {})).toHaveLength(demoItems.length + saved);
    await expectWorks(host);
  });
});
