-- What a generator hub really costs stands line by line, and its curve, wheel and converter are told more closely. The ranges
-- are those of shared-types/hub-item.ts. An older hub had one price for building the wheel, parts and labour together: all of
-- it becomes labour. Its rating held for the wheel it is in, and its curve was taken at its own terminals.
CREATE TABLE generator_hubs_with_wheel (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'generator-hub' CHECK (kind = 'generator-hub'),
  replaces_g REAL NOT NULL CHECK (replaces_g BETWEEN 0 AND 2000),
  rim_cost_minor INTEGER NOT NULL CHECK (rim_cost_minor BETWEEN 0 AND 100000000),
  rim_cost_currency TEXT NOT NULL CHECK (rim_cost_currency GLOB '[A-Z][A-Z][A-Z]'),
  rim_mass_g REAL NOT NULL CHECK (rim_mass_g BETWEEN 0 AND 3000),
  rim_replaces_g REAL NOT NULL CHECK (rim_replaces_g BETWEEN 0 AND 3000),
  spokes_cost_minor INTEGER NOT NULL CHECK (spokes_cost_minor BETWEEN 0 AND 100000000),
  spokes_cost_currency TEXT NOT NULL CHECK (spokes_cost_currency GLOB '[A-Z][A-Z][A-Z]'),
  spokes_mass_g REAL NOT NULL CHECK (spokes_mass_g BETWEEN 0 AND 3000),
  spokes_replaces_g REAL NOT NULL CHECK (spokes_replaces_g BETWEEN 0 AND 3000),
  labour_minor INTEGER NOT NULL CHECK (labour_minor BETWEEN 0 AND 100000000),
  labour_currency TEXT NOT NULL CHECK (labour_currency GLOB '[A-Z][A-Z][A-Z]'),
  rated_w REAL CHECK (rated_w BETWEEN 0.5 AND 12),
  curve_read_at TEXT CHECK (curve_read_at IN ('hub', 'plug')),
  idle_drag_10_w REAL NOT NULL CHECK (idle_drag_10_w BETWEEN 0 AND 20),
  idle_drag_30_w REAL NOT NULL CHECK (idle_drag_30_w BETWEEN 0 AND 40),
  wheel_circumference_m REAL NOT NULL CHECK (wheel_circumference_m BETWEEN 0.9 AND 2.5),
  rated_circumference_m REAL NOT NULL CHECK (rated_circumference_m BETWEEN 0.9 AND 2.5),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE,
  CONSTRAINT power_in_one_form CHECK ((rated_w IS NULL) = (curve_read_at IS NOT NULL))
) STRICT;

INSERT INTO generator_hubs_with_wheel (
  item_id, replaces_g,
  rim_cost_minor, rim_cost_currency, rim_mass_g, rim_replaces_g,
  spokes_cost_minor, spokes_cost_currency, spokes_mass_g, spokes_replaces_g,
  labour_minor, labour_currency, rated_w, curve_read_at,
  idle_drag_10_w, idle_drag_30_w, wheel_circumference_m, rated_circumference_m
)
SELECT
  item_id, replaces_g,
  0, wheel_build_currency, 0, 0,
  0, wheel_build_currency, 0, 0,
  wheel_build_minor, wheel_build_currency, rated_w, iif(rated_w IS NULL, 'hub', NULL),
  idle_drag_10_w, idle_drag_30_w, wheel_circumference_m, wheel_circumference_m
FROM generator_hubs;

-- References are off while a step runs: the curve points stay, and refer to the table that takes the name.
DROP TABLE generator_hubs;
ALTER TABLE generator_hubs_with_wheel RENAME TO generator_hubs;

ALTER TABLE converters ADD COLUMN hub_load TEXT NOT NULL DEFAULT 'rated'
  CHECK (hub_load IN ('rated', 'tracking'));
ALTER TABLE converters ADD COLUMN series_capacitor_uf REAL NOT NULL DEFAULT 0
  CHECK (series_capacitor_uf BETWEEN 0 AND 5000);

CREATE TABLE accessories (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'accessory' CHECK (kind = 'accessory'),
  for_hub INTEGER NOT NULL CHECK (for_hub IN (0, 1)),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE
) STRICT;

INSERT INTO accessories (item_id, for_hub) SELECT id, 0 FROM items WHERE kind = 'accessory';
