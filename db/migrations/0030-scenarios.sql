-- The ranges are those of shared-types/scenario.ts.
CREATE TABLE scenarios (
  id TEXT NOT NULL PRIMARY KEY
    CHECK (length(id) BETWEEN 1 AND 64 AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '-*'),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  method TEXT NOT NULL CHECK (method IN ('banks', 'panel', 'hub', 'mix')),
  while_riding TEXT NOT NULL CHECK (while_riding IN ('flat', 'packed')),
  at_stops TEXT NOT NULL CHECK (at_stops IN ('aimed', 'flat', 'packed')),
  in_camp TEXT NOT NULL CHECK (in_camp IN ('aimed', 'flat', 'packed')),
  rack_factor REAL NOT NULL CHECK (rack_factor BETWEEN 0 AND 1),
  at_wall TEXT NOT NULL CHECK (at_wall IN ('devices-first', 'banks-first')),
  unsteady_source TEXT NOT NULL CHECK (unsteady_source IN ('bank-only', 'device-too')),
  notes TEXT NOT NULL CHECK (length(notes) <= 2000)
) STRICT;

CREATE INDEX scenarios_by_label ON scenarios (label COLLATE NOCASE, id);

-- An item in the kit of a scenario is kept: it is retired, not removed, so that the comparison stays what it was.
CREATE TABLE scenario_kit (
  scenario_id TEXT NOT NULL REFERENCES scenarios (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 199),
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE RESTRICT,
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN 1 AND 99),
  PRIMARY KEY (scenario_id, position),
  UNIQUE (scenario_id, item_id)
) STRICT, WITHOUT ROWID;

-- Saving or removing an item looks for the rows that refer to it.
CREATE INDEX scenario_kit_by_item ON scenario_kit (item_id);
