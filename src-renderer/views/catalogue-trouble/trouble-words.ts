import type { CatalogueChoices, StorageFault } from '../../../shared-types/catalogue-file.ts';
import { newestSound } from '../catalogue-place/place-words.ts';

/** A way on from a catalogue that does not open. */
export type Choice = 'try-again' | 'restore' | 'beside' | 'open-other' | 'start-empty';

interface FaultWords {
  readonly heading: string;
  /** When trying again would help. */
  readonly again: string;
  /** What hinders a new file in the same folder too; null where nothing does. */
  readonly hindrance: string | null;
  /** The likeliest to help first. */
  readonly order: readonly Choice[];
}

const waitFirst: readonly Choice[] = ['try-again', 'beside', 'open-other', 'restore', 'start-empty'];
const copyFirst: readonly Choice[] = ['restore', 'beside', 'open-other', 'start-empty', 'try-again'];
const elsewhereFirst: readonly Choice[] = ['try-again', 'open-other', 'beside', 'restore', 'start-empty'];

export const faultWords: Readonly<Record<StorageFault, FaultWords>> = {
  locked: {
    heading: 'Another program is using the catalogue',
    again: 'As soon as the other program is done with the file or closed.',
    hindrance: null,
    order: waitFirst,
  },
  'read-only': {
    heading: 'Chargewright may not write to the catalogue',
    again: 'Once your user may write to the file and its folder, and the disk is not write-protected.',
    hindrance: 'That writes to the same folder, so it helps only where the file alone is read-only.',
    order: elsewhereFirst,
  },
  full: {
    heading: 'The disk of the catalogue is full',
    again: 'Once something else on that disk was removed.',
    hindrance: 'That needs room on the same disk, so free some first.',
    order: elsewhereFirst,
  },
  damaged: {
    heading: 'A part of the catalogue is damaged',
    again: 'Once you have put a sound copy of your own in the place of the file.',
    hindrance: null,
    order: copyFirst,
  },
  newer: {
    heading: 'The catalogue is of a newer Chargewright',
    again: 'It will open in the newer Chargewright; this one can only go on with another.',
    hindrance: null,
    order: ['beside', 'open-other', 'restore', 'start-empty', 'try-again'],
  },
  'not-a-catalogue': {
    heading: 'The file in the place of the catalogue is something else',
    again: 'Once you have put the catalogue back in its place.',
    hindrance: null,
    order: copyFirst,
  },
  'not-brought-up': {
    heading: 'The catalogue could not be brought up to this version',
    again: 'What went wrong may have passed, such as a disk that was full.',
    hindrance: 'A backup is brought up in the same way, and may meet the same fault.',
    order: ['try-again', 'restore', 'beside', 'open-other', 'start-empty'],
  },
  missing: {
    heading: 'The catalogue is not where it was',
    again: 'Once its disk is connected, or the file is back in its place.',
    hindrance: 'That needs its folder to be there.',
    order: waitFirst,
  },
  unreachable: {
    heading: 'The catalogue can’t be reached',
    again: 'Once its folder is there, is a folder, and may be read.',
    hindrance: 'That needs its folder to be there.',
    order: elsewhereFirst,
  },
  'disk-fault': {
    heading: 'The disk of the catalogue reports a fault',
    again: 'A loose cable or a disk that was asleep may be all it is.',
    hindrance: 'That goes to the same disk: one of another disk is safer.',
    order: elsewhereFirst,
  },
};

/** The choices there are, the likeliest to help first: those of which something was found, or is still looked for. */
export function choicesFor(fault: StorageFault, found: CatalogueChoices | null): readonly Choice[] {
  return faultWords[fault].order.filter((choice) => {
    if (choice === 'restore') return found === null || found.backups.length > 0;
    return choice !== 'beside' || (found?.beside.length ?? 0) > 0;
  });
}

/** The one to offer as the main way: the first that can be taken; null while it is not known what was found. */
export function mainChoice(fault: StorageFault, found: CatalogueChoices | null): Choice | null {
  const takeable = (choice: Choice): boolean => {
    if (choice === 'restore') return newestSound(found?.backups ?? []) !== undefined;
    if (choice === 'beside') return found?.beside.some(({ unfit }) => unfit === null) === true;
    return true;
  };
  const first = faultWords[fault].order[0];
  if (found === null) return first === 'try-again' ? first : null;
  return choicesFor(fault, found).find(takeable) ?? null;
}
