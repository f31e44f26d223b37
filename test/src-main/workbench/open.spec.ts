import { describe, expect, it } from 'vitest';
import { FolderTakenError } from '../../../src-main/workbench/open.ts';
import { openedWorkbench, workbenchOn } from '../../support/open-workbench.ts';

describe('openWorkbench()', () => {
  it('refuses a data folder that another has open, and says which', () => {
    const { folder } = openedWorkbench();
    expect(() => workbenchOn(folder)).toThrow(FolderTakenError);
    expect(() => workbenchOn(folder)).toThrow(`(in a browser, process ${process.pid})`);
  });

  it('leaves the folder to the next once it is closed', async () => {
    const first = openedWorkbench();
    const { file } = await first.value('catalogue.state', {});
    first.close();
    expect(await workbenchOn(first.folder).value('catalogue.state', {})).toMatchObject({
      file,
      trouble: null,
    });
  });
});
