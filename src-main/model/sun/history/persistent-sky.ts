import { standardNormal } from '../../random.ts';
import { clearnessAt, distributionOf } from './clearness-distribution.ts';
import { normalShareBelow } from './normal.ts';
import type { DrawSky, ExpectedDay } from './sky-law.ts';

/**
 * Days of the Bendt distribution that follow on each other by a Gaussian first-order autoregression: z' = r z + sqrt(1 - r2) e
 * (the marginal stays standard normal, so each day keeps its distribution and its month its mean). Across a change of month or
 * leg the weather goes on.
 *
 * @param persistence r, 0..0.9; the clearness itself then correlates a few hundredths less
 */
export function persistentSky(days: readonly ExpectedDay[], persistence: number): DrawSky {
  const distributions = days.map(({ mean, most }) => distributionOf(mean, most));
  const fresh = Math.sqrt(1 - persistence ** 2);
  return (stream, out, at) => {
    let z = standardNormal(stream);
    for (let day = 0; day < distributions.length; day += 1) {
      if (day > 0) z = persistence * z + fresh * standardNormal(stream);
      out[at + day] = clearnessAt(distributions[day]!, normalShareBelow(z));
    }
  };
}
