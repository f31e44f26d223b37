import type { Screen } from './route.svelte.ts';

/** What each screen is called in links to it. */
export const screenNames: Readonly<Record<Screen, string>> = {
  start: 'Start my own',
  inventory: 'Inventory',
  'field-log': 'Field log',
  tours: 'Tours',
  scenarios: 'Scenarios',
  'trade-offs': 'Trade-offs',
  'kit-search': 'Kit search',
  'upgrade-check': 'Upgrade check',
  'stop-planner': 'Stop planner',
  sheet: 'Comparison sheet',
  assumptions: 'Assumptions',
  about: 'About',
};
