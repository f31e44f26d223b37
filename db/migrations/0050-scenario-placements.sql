-- Where the panel lies outgrew the columns of scenarios: it has a row of its own. The ranges are those of
-- shared-types/scenario.ts; what an older scenario did not say takes its usual value (common practice, no source).
CREATE TABLE scenario_placements (
  scenario_id TEXT NOT NULL PRIMARY KEY REFERENCES scenarios (id) ON DELETE CASCADE,
  while_riding TEXT NOT NULL CHECK (while_riding IN ('flat', 'tilted', 'packed')),
  at_stops TEXT NOT NULL CHECK (at_stops IN ('aimed', 'tilted', 'flat', 'packed')),
  in_camp TEXT NOT NULL CHECK (in_camp IN ('aimed', 'tilted', 'flat', 'packed')),
  rack_factor REAL NOT NULL CHECK (rack_factor BETWEEN 0 AND 1),
  rack_tilt_deg REAL NOT NULL CHECK (rack_tilt_deg BETWEEN 0 AND 90),
  rest_tilt_deg REAL NOT NULL CHECK (rest_tilt_deg BETWEEN 0 AND 90),
  facing_deg REAL NOT NULL CHECK (facing_deg BETWEEN 0 AND 360),
  camp_from_h INTEGER NOT NULL CHECK (camp_from_h BETWEEN 0 AND 23),
  camp_to_h INTEGER NOT NULL CHECK (camp_to_h BETWEEN 1 AND 24),
  CONSTRAINT camp_hours_in_order CHECK (camp_from_h < camp_to_h)
) STRICT;

-- The day stops at which the panel is laid out; no row means at every stop.
CREATE TABLE scenario_placement_stops (
  scenario_id TEXT NOT NULL REFERENCES scenario_placements (scenario_id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 19),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  PRIMARY KEY (scenario_id, position)
) STRICT, WITHOUT ROWID;

INSERT INTO scenario_placements (
  scenario_id, while_riding, at_stops, in_camp, rack_factor,
  rack_tilt_deg, rest_tilt_deg, facing_deg, camp_from_h, camp_to_h
)
SELECT id, while_riding, at_stops, in_camp, rack_factor, 30, 45, 180, 0, 24 FROM scenarios;

ALTER TABLE scenarios DROP COLUMN while_riding;
ALTER TABLE scenarios DROP COLUMN at_stops;
ALTER TABLE scenarios DROP COLUMN in_camp;
ALTER TABLE scenarios DROP COLUMN rack_factor;
