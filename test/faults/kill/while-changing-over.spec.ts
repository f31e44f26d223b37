import { setTimeout as wait } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { openedHost, type BuiltHost } from '../built-host.ts';
import { diceOf } from '../dice.ts';
import { goodCatalogue, layCatalogue } from '../good-catalogue.ts';
import { halfMadeFiles, unsoundBackups, unsoundParts } from '../sound-file.ts';
import { expectWorks } from '../ways-on.ts';

const kills = cases(4, 40);
const latestKillMs = 120;
const seed = 20_270_507;

const changes: readonly ((host: BuiltHost) => Promise<unknown>)[] = [
  (host) => host.call('catalogue.restore', { name: null }),
  (host) => host.call('catalogue.startEmpty', {}),
  (host) => host.call('catalogue.backUp', {}),
];

it(`uses one whole catalogue or the other after ${kills} kills while one takes the place of another`, async () => {
  const folder = temporaryFolder();
  layCatalogue(folder, goodCatalogue());
  const dice = diceOf(seed);
  const used = new Set<string>();
  let host = await openedHost(folder);
  for (let kill = 0; kill < kills; kill += 1) {
    const changing = changes[kill % changes.length]!(host).catch(() => null);
    await wait(dice.below(latestKillMs));
    await host.kill();
    await changing;
    host = await openedHost(folder);
    const { file } = await host.value('catalogue.state', {});
    await expectWorks(host);
    expect([unsoundParts(file), unsoundBackups(folder)]).toEqual([[], []]);
    used.add(file);
  }
  await host.stop();
  console.log(
    `${kills} kills while one catalogue took the place of another: ${used.size} of them used, all sound.`,
  );
  expect(halfMadeFiles(folder)).toEqual([]);
});
