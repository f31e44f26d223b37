/** Work done away from the thread that answers calls. `onShare` is told now and then how far it is, 0..1. */
export type Job<Input, Output> = (input: Input, onShare: (share: number) => void) => Output;

/** Walks between two reports: often enough for a bar that moves, seldom enough to cost nothing. */
const walksAReport = 25;
/** A job cannot be nearly done for longer than this share of its bar. */
const mostBeforeDone = 0.99;

/** Counts walks through histories, and tells the share of those expected. */
export function shareOfWalks(expected: number, onShare: (share: number) => void): () => void {
  let walks = 0;
  return () => {
    walks += 1;
    if (walks % walksAReport === 0) onShare(Math.min(mostBeforeDone, walks / expected));
  };
}
