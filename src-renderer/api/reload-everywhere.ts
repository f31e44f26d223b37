const channelName = 'chargewright catalogue';

/** What of a window is used here. */
interface Page {
  readonly location: Pick<Location, 'reload'>;
  readonly BroadcastChannel: typeof BroadcastChannel;
}

/**
 * Loads this page anew, and every other that shows the same catalogue: what they show is of the one that was replaced, and an
 * edit made there would go into the other.
 */
export function reloadEverywhere(page: Page): () => void {
  const others = new page.BroadcastChannel(channelName);
  others.addEventListener('message', () => page.location.reload());
  return () => {
    others.postMessage('replaced');
    page.location.reload();
  };
}
