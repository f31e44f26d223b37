import { randomUUID } from 'node:crypto';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Method, Scenario, ScenarioDraft } from '../../shared-types/scenario.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import { missingItem } from './missing-row.ts';
import { readPlacement, writePlacement } from './placements.ts';
import { ruleColumns, rulesOf, type RuleColumns } from './rule-columns.ts';
import { change, insertRow, putRow, selectAll, selectOne } from './statements.ts';

interface ScenarioRow extends RuleColumns {
  readonly id: string;
  readonly label: string;
  readonly method: Method;
  readonly notes: string;
}

/** All scenarios, by label. */
export function listScenarios(read: ReadDb): Scenario[] {
  const rows = selectAll(read, 'SELECT * FROM scenarios ORDER BY label COLLATE NOCASE, id') as ScenarioRow[];
  return rows.map((row) => scenarioOf(read, row));
}

export function findScenario(read: ReadDb, id: string): Scenario | null {
  const row = selectOne(read, 'SELECT * FROM scenarios WHERE id = ?', id) as ScenarioRow | undefined;
  return row === undefined ? null : scenarioOf(read, row);
}

/** With an id replaces that scenario, or puts it back; without one adds it. Fails when its kit has an unknown item. */
export function saveScenario(
  write: WriteDb,
  draft: ScenarioDraft,
  id: string = randomUUID(),
): Outcome<Scenario> {
  return inTransaction(write, () => {
    const itemIds = draft.kit.map((line) => line.itemId);
    const missing = missingItem(write, itemIds, (index) => `scenario.kit.${index}.itemId`);
    if (missing !== null) return missing;
    putRow(write, 'scenarios', 'id', { ...rowOf(id, draft) });
    replaceKit(write, id, draft.kit);
    writePlacement(write, id, draft.placement);
    return success({ ...draft, id });
  });
}

/** The scenario that was removed, for putting it back, or null when there is none of that id. */
export function removeScenario(write: WriteDb, id: string): Scenario | null {
  return inTransaction(write, () => {
    const scenario = findScenario(write, id);
    change(write, 'DELETE FROM scenarios WHERE id = ?', id);
    return scenario;
  });
}

function replaceKit(write: WriteDb, id: string, kit: ScenarioDraft['kit']): void {
  change(write, 'DELETE FROM scenario_kit WHERE scenario_id = ?', id);
  kit.forEach(({ itemId, quantity }, position) =>
    insertRow(write, 'scenario_kit', { scenario_id: id, position, item_id: itemId, quantity }),
  );
}

function rowOf(id: string, { rules, ...draft }: ScenarioDraft): ScenarioRow {
  return {
    id,
    label: draft.label,
    method: draft.method,
    ...ruleColumns(rules),
    notes: draft.notes,
  };
}

function scenarioOf(read: ReadDb, row: ScenarioRow): Scenario {
  return {
    id: row.id,
    label: row.label,
    method: row.method,
    kit: readKit(read, row.id),
    placement: readPlacement(read, row.id),
    rules: rulesOf(row),
    notes: row.notes,
  };
}

function readKit(read: ReadDb, scenarioId: string): Scenario['kit'] {
  return selectAll(
    read,
    'SELECT item_id AS itemId, quantity FROM scenario_kit WHERE scenario_id = ? ORDER BY position',
    scenarioId,
  ) as Scenario['kit'];
}
