import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { openedHost } from '../built-host.ts';
import { diceOf } from '../dice.ts';
import { halfMadeFiles, unsoundBackups, unsoundParts } from '../sound-file.ts';
import { Ledger } from './ledger.ts';
import { logWrites } from './log-writes.ts';
import { roadWrites } from './road-writes.ts';
import { storedRows } from './stored-rows.ts';
import { thingsWrites } from './things-writes.ts';
import { writeUntilGone } from './writer.ts';

const killsEach = cases(7, 100);
/** From the first save on. */
const latestKillMs = cases(150, 600);
const seed = 20_270_503;

/** A disk is slow to flush, so that most kills fall into the flush; memory is quick, so that many saves come before. */
const places = [
  { words: 'on a disk', within: tmpdir() },
  { words: 'in memory', within: '/dev/shm' },
].filter(({ within }) => existsSync(within));

/*
 * The process is killed, not the computer: what it had handed to the system is written all the same. That a power cut loses
 * no acknowledged save either rests on `synchronous = FULL`, which waits for the disk; no test on one computer shows it.
 */
it.each(places)(
  'keeps every acknowledged save through kills, and every other whole or not at all: $words',
  async ({ words, within }) => {
    const folder = temporaryFolder(within);
    const dice = diceOf(seed);
    const faults: string[] = [];
    let host = await openedHost(folder);
    const ledger = new Ledger(await storedRows(host));
    for (let kill = 0; kill < killsEach; kill += 1) {
      const writing = [thingsWrites, roadWrites, logWrites].map((writes) =>
        writeUntilGone({ host, ledger, dice }, writes),
      );
      await wait(dice.below(latestKillMs));
      await host.kill();
      faults.push(...(await Promise.all(writing)).flat());
      faults.push(...unsoundParts(join(folder, 'catalogue.sqlite3')), ...unsoundBackups(folder));
      host = await openedHost(folder);
      faults.push(...ledger.settle(await storedRows(host)));
    }
    await host.stop();
    const { acknowledged, acknowledgedRows, whole, absent } = ledger.count;
    console.log(
      `${killsEach} kills while saving ${words}: ${acknowledged} saves acknowledged (${acknowledgedRows} rows), ${faults.length} lost or ` +
        `damaged; of ${whole + absent} under way ${whole} whole, ${absent} not at all.`,
    );
    expect(faults).toEqual([]);
    expect(acknowledged).toBeGreaterThan(killsEach);
    expect(halfMadeFiles(folder)).toEqual([]);
    expect(existsSync(join(folder, 'faults.log'))).toBe(false);
  },
);
