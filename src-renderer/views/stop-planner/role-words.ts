import type { StoreRole } from '../../../shared-types/stop-plan.ts';

export const roleWords: Readonly<Record<StoreRole, string>> = {
  'must-have': 'Must-have',
  'nice-to-have': 'Nice-to-have',
  bank: 'Bank',
};
