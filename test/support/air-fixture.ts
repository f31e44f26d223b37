import type { AirCheck } from '../../shared-types/air-check.ts';

/** A bank and a phone, both under every limit; `changes` replace whole fields. Its rules are shortened, its source invented. */
export function airFixture(changes: Partial<AirCheck> = {}): AirCheck {
  return {
    lines: [
      {
        label: '20 Ah bank, 18 W in',
        kind: 'power-bank',
        count: 1,
        labelWh: 74,
        class: 'within',
        toDo: 'Cabin only.',
      },
      {
        label: 'Phone',
        kind: 'in-device',
        count: 1,
        labelWh: 17.325,
        class: 'within',
        toDo: 'Best in the cabin.',
      },
    ],
    tallies: [
      { what: 'power banks', carried: 1, most: 2, beyond: 'stays-home' },
      { what: 'devices', carried: 1, most: 15, beyond: 'approval' },
    ],
    verdict: { class: 'within', text: 'Nothing here is over the limits listed.' },
    defer: 'Rules change, and airlines and states may be stricter: ask them.',
    rules: [
      { text: 'At most two power banks a person.', since: '2026-03-27', source: 'an invented rule book' },
      { text: 'Up to 100 Wh without approval.', since: null, source: 'an invented rule book' },
    ],
    ...changes,
  };
}
