import type { Rules } from '../../../shared-types/scenario.ts';
import { ofKind, type CarriedItem } from './kit.ts';
import { reachesDevices } from './plug-need.ts';

/** What keeps the hub of a kit from giving what it could. */
export function hubNotes(lines: readonly CarriedItem[], rules: Rules): readonly string[] {
  const hubs = count(lines, 'generator-hub');
  const converters = count(lines, 'converter');
  if (hubs === 0)
    return converters === 0 ? [] : ['This kit has a converter and no generator hub: it gives nothing.'];
  return [
    ...(converters === 0 ? ['This kit has no converter: the hub turns and gives nothing.'] : []),
    ...(converters > 0 && reachesDevices(rules, lines) === 0
      ? ['The hub may feed a bank only, and this kit has none: what it gives is spilled.']
      : []),
    ...(hubs > 1 || converters > 1
      ? [
          'A bicycle has one front wheel: the first hub and the first converter work, all are paid for and carried.',
        ]
      : []),
  ];
}

function count(lines: readonly CarriedItem[], kind: 'generator-hub' | 'converter'): number {
  return ofKind(lines, kind).reduce((sum, { carried }) => sum + carried, 0);
}
