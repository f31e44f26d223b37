import type { Placement } from '../../shared-types/scenario.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { change, insertRow, selectAll, selectOwned } from './statements.ts';

/** Replaces where the panel lies in a scenario; its stops go with the old row. */
export function writePlacement(
  write: WriteDb,
  scenarioId: string,
  { onlyAtStops, ...placement }: Placement,
): void {
  change(write, 'DELETE FROM scenario_placements WHERE scenario_id = ?', scenarioId);
  insertRow(write, 'scenario_placements', {
    scenario_id: scenarioId,
    while_riding: placement.whileRiding,
    at_stops: placement.atStops,
    in_camp: placement.inCamp,
    rack_factor: placement.rackFactor,
    rack_tilt_deg: placement.rackTiltDeg,
    rest_tilt_deg: placement.restTiltDeg,
    facing_deg: placement.facingDeg,
    camp_from_h: placement.campFromH,
    camp_to_h: placement.campToH,
  });
  onlyAtStops.forEach((label, position) =>
    insertRow(write, 'scenario_placement_stops', { scenario_id: scenarioId, position, label }),
  );
}

export function readPlacement(read: ReadDb, scenarioId: string): Placement {
  const placement = selectOwned(
    read,
    'SELECT while_riding AS whileRiding, at_stops AS atStops, in_camp AS inCamp, rack_factor AS rackFactor,' +
      ' rack_tilt_deg AS rackTiltDeg, rest_tilt_deg AS restTiltDeg, facing_deg AS facingDeg,' +
      ' camp_from_h AS campFromH, camp_to_h AS campToH FROM scenario_placements WHERE scenario_id = ?',
    scenarioId,
  ) as Omit<Placement, 'onlyAtStops'>;
  return { ...placement, onlyAtStops: readStops(read, scenarioId) };
}

function readStops(read: ReadDb, scenarioId: string): string[] {
  const rows = selectAll(
    read,
    'SELECT label FROM scenario_placement_stops WHERE scenario_id = ? ORDER BY position',
    scenarioId,
  ) as { label: string }[];
  return rows.map((row) => row.label);
}
