import { describe, expect, it } from 'vitest';
import type { CatalogueChoices, StorageFault } from '../../../../shared-types/catalogue-file.ts';
import {
  choicesFor,
  faultWords,
  mainChoice,
} from '../../../../src-renderer/views/catalogue-trouble/trouble-words.ts';
import { brokenBackup, catalogueBeside, soundBackup } from '../../support/fake-place.ts';

const nothing: CatalogueChoices = { backupFolder: '/data/backups', backups: [], beside: [] };
const all: CatalogueChoices = {
  ...nothing,
  backups: [brokenBackup, soundBackup],
  beside: [catalogueBeside],
};
const faults = Object.keys(faultWords) as StorageFault[];

describe('choicesFor()', () => {
  it.each(faults)('offers every way there is for %s', (fault) => {
    expect([...choicesFor(fault, all)].sort()).toEqual([
      ...['beside', 'open-other', 'restore', 'start-empty', 'try-again'],
    ]);
  });

  it.each(faults)('leaves out what was not found, for %s', (fault) => {
    expect([...choicesFor(fault, nothing)].sort()).toEqual(['open-other', 'start-empty', 'try-again']);
  });

  it('keeps the room of a backup while it is looked for', () => {
    expect(choicesFor('damaged', null)).toEqual(['restore', 'open-other', 'start-empty', 'try-again']);
  });
});

describe('mainChoice()', () => {
  it.each<[StorageFault, string]>([
    ['damaged', 'restore'],
    ['not-a-catalogue', 'restore'],
    ['newer', 'beside'],
    ['not-brought-up', 'try-again'],
    ['locked', 'try-again'],
    ['read-only', 'try-again'],
    ['full', 'try-again'],
    ['missing', 'try-again'],
    ['unreachable', 'try-again'],
    ['disk-fault', 'try-again'],
  ])('for %s is to %s', (fault, choice) => {
    expect(mainChoice(fault, all)).toBe(choice);
  });

  it('is never what can’t be taken', () => {
    const unfit = { ...catalogueBeside, unfit: 'It is damaged too.', holds: null };
    expect(mainChoice('damaged', { ...all, backups: [brokenBackup] })).toBe('beside');
    expect(mainChoice('damaged', { ...all, backups: [brokenBackup], beside: [unfit] })).toBe('open-other');
    expect(mainChoice('damaged', nothing)).toBe('open-other');
  });

  it('is not told before it is known what there is', () => {
    expect([mainChoice('damaged', null), mainChoice('locked', null)]).toEqual([null, 'try-again']);
  });
});

describe('faultWords', () => {
  it.each(['full', 'read-only', 'disk-fault'] as const)(
    'say of %s that a new file in the same place may fail too, and offer another place before it',
    (fault) => {
      const { hindrance, order } = faultWords[fault];
      expect(hindrance).not.toBeNull();
      expect(order.indexOf('open-other')).toBeLessThan(order.indexOf('restore'));
    },
  );
});
