import type { Rules } from '../../shared-types/scenario.ts';

/** The rules in the row of their scenario. */
export interface RuleColumns {
  readonly at_wall: Rules['atWall'];
  readonly unsteady_source: Rules['unsteadySource'];
  readonly at_post: Rules['atPost'];
  readonly when_short: Rules['whenShort'];
  readonly cells_sleep: Rules['cellsSleep'];
}

export function ruleColumns(rules: Rules): RuleColumns {
  return {
    at_wall: rules.atWall,
    unsteady_source: rules.unsteadySource,
    at_post: rules.atPost,
    when_short: rules.whenShort,
    cells_sleep: rules.cellsSleep,
  };
}

export function rulesOf(row: RuleColumns): Rules {
  return {
    atWall: row.at_wall,
    unsteadySource: row.unsteady_source,
    atPost: row.at_post,
    whenShort: row.when_short,
    cellsSleep: row.cells_sleep,
  };
}
