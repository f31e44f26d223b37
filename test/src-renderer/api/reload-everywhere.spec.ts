import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { reloadEverywhere } from '../../../src-renderer/api/reload-everywhere.ts';

/** A page that counts how often it was loaded anew. */
function page() {
  const reload = vi.fn();
  const channels: BroadcastChannel[] = [];
  class Channel extends BroadcastChannel {
    constructor(name: string) {
      super(name);
      channels.push(this);
    }
  }
  onTestFinished(() => channels.forEach((channel) => channel.close()));
  return { reload, everywhere: reloadEverywhere({ location: { reload }, BroadcastChannel: Channel }) };
}

describe('reloadEverywhere()', () => {
  it('loads each page of the program anew, and each once', async () => {
    const [first, second, third] = [page(), page(), page()];
    first.everywhere();
    await vi.waitFor(() => {
      for (const { reload } of [first, second, third]) expect(reload).toHaveBeenCalledTimes(1);
    });
  });
});
