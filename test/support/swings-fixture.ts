import type { Swing, Swings } from '../../shared-types/swings.ts';

/** An assumption that turns nothing; `changes` replace whole fields. */
export function swingFixture(changes: Partial<Swing> = {}): Swing {
  return {
    id: 'sun',
    name: 'Sun',
    scale: 'factor',
    source: 'common practice, no source',
    base: 1,
    low: { value: 0.85, leadPoints: 16, leaderId: 'demo-panel' },
    high: { value: 1.15, leadPoints: 30, leaderId: 'demo-panel' },
    widthPoints: 14,
    changesSign: false,
    flips: [],
    ...changes,
  };
}

/** Walls that come often enough give the first place to the banks. */
export const wallsFixture = swingFixture({
  id: 'days-between-walls',
  name: 'Days between walls',
  scale: 'days',
  base: null,
  low: { value: 1, leadPoints: -9, leaderId: 'demo-banks' },
  high: { value: 14, leadPoints: 70, leaderId: 'demo-panel' },
  widthPoints: 79,
  changesSign: true,
  flips: [{ side: 'below', value: 2, leaderId: 'demo-banks', because: null }],
});

/** The demo's three scenarios with two assumptions, invented in size. */
export function swingsFixture(changes: Partial<Swings> = {}): Swings {
  return {
    tourId: 'demo-tour',
    scenarios: [
      { id: 'demo-banks', label: 'Banks only', method: 'banks' },
      { id: 'demo-panel', label: 'Panel + buffer bank', method: 'panel' },
      { id: 'demo-hub', label: 'Generator hub', method: 'hub' },
    ],
    firstId: 'demo-panel',
    secondId: 'demo-hub',
    leadPoints: 30,
    level: false,
    swings: [wallsFixture, swingFixture()],
    leftOut: [],
    histories: 200,
    ...changes,
  };
}
