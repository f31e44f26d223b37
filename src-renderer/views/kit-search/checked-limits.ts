import { kitSearchRequest } from '../../../shared-types/kit-search.ts';
import type { Limits } from '../../../shared-types/limits.ts';
import { badInput, success, type Outcome } from '../../../shared-types/outcome.ts';

const request = kitSearchRequest.pick({ limits: true });

/** The limits as the search takes them, or which of them it would refuse, at once rather than after a search. */
export function checkedLimits(limits: Limits): Outcome<Limits> {
  const parsed = request.safeParse({ limits });
  return parsed.success ? success(limits) : badInput(parsed.error, { limits });
}
