-- What every item shares stands in items; each kind that has figures of its own has a table beside it. The foreign key on
-- (item_id, kind) keeps a device's figures from hanging on a panel. The ranges are those of shared-types/item.ts.
-- octet_length, because length() stops at a NUL character and would call a label empty that is not.
CREATE TABLE items (
  id TEXT NOT NULL PRIMARY KEY
    CHECK (length(id) BETWEEN 1 AND 64 AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '-*'),
  kind TEXT NOT NULL
    CHECK (kind IN ('device', 'bank', 'panel', 'generator-hub', 'converter', 'wall-charger', 'accessory')),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  state TEXT NOT NULL CHECK (state IN ('owned', 'considering', 'retired')),
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN 1 AND 99),
  mass_g REAL NOT NULL CHECK (mass_g BETWEEN 0 AND 20000),
  price_minor INTEGER NOT NULL CHECK (price_minor BETWEEN 0 AND 100000000),
  price_currency TEXT NOT NULL CHECK (price_currency GLOB '[A-Z][A-Z][A-Z]'),
  mount TEXT NOT NULL CHECK (mount IN ('front-wheel', 'fork', 'handlebar', 'frame', 'rear-rack', 'body')),
  notes TEXT NOT NULL CHECK (length(notes) <= 2000),
  UNIQUE (id, kind)
) STRICT;

CREATE INDEX items_by_label ON items (label COLLATE NOCASE, id);

CREATE TABLE devices (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'device' CHECK (kind = 'device'),
  capacity_wh REAL CHECK (capacity_wh BETWEEN 0 AND 250),
  capacity_mah REAL CHECK (capacity_mah BETWEEN 0 AND 60000),
  cell_v REAL CHECK (cell_v BETWEEN 1 AND 60),
  health REAL NOT NULL CHECK (health BETWEEN 0.01 AND 1),
  spare_batteries INTEGER NOT NULL CHECK (spare_batteries BETWEEN 0 AND 20),
  use_riding_w REAL CHECK (use_riding_w BETWEEN 0 AND 500),
  use_stop_w REAL CHECK (use_stop_w BETWEEN 0 AND 500),
  use_evening_w REAL CHECK (use_evening_w BETWEEN 0 AND 500),
  use_night_w REAL CHECK (use_night_w BETWEEN 0 AND 500),
  use_wh_per_day REAL CHECK (use_wh_per_day BETWEEN 0 AND 5000),
  importance TEXT NOT NULL CHECK (importance IN ('must-have', 'nice-to-have')),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE,
  CONSTRAINT capacity_in_one_form CHECK (
    (capacity_wh IS NULL) = (capacity_mah IS NOT NULL) AND (capacity_mah IS NULL) = (cell_v IS NULL)
  ),
  CONSTRAINT use_in_one_form CHECK (
    (use_wh_per_day IS NULL) = (use_riding_w IS NOT NULL)
    AND (use_riding_w IS NULL) = (use_stop_w IS NULL)
    AND (use_riding_w IS NULL) = (use_evening_w IS NULL)
    AND (use_riding_w IS NULL) = (use_night_w IS NULL)
  )
) STRICT;

CREATE TABLE banks (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'bank' CHECK (kind = 'bank'),
  capacity_wh REAL CHECK (capacity_wh BETWEEN 0 AND 1100),
  capacity_mah REAL CHECK (capacity_mah BETWEEN 0 AND 300000),
  cell_v REAL CHECK (cell_v BETWEEN 1 AND 60),
  measured_deliverable_wh REAL CHECK (measured_deliverable_wh BETWEEN 0 AND 1100),
  measured_deliverable_on TEXT CHECK (
    measured_deliverable_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(measured_deliverable_on) IS measured_deliverable_on
    AND measured_deliverable_on BETWEEN '1900-01-01' AND '2199-12-31'
  ),
  health REAL NOT NULL CHECK (health BETWEEN 0.01 AND 1),
  efficiency_in REAL NOT NULL CHECK (efficiency_in BETWEEN 0.3 AND 1),
  efficiency_out REAL NOT NULL CHECK (efficiency_out BETWEEN 0.3 AND 1),
  charges_while_serving INTEGER NOT NULL CHECK (charges_while_serving IN (0, 1)),
  standby_w REAL NOT NULL CHECK (standby_w BETWEEN 0 AND 5),
  self_discharge_pct_per_month REAL NOT NULL CHECK (self_discharge_pct_per_month BETWEEN 0 AND 50),
  lights INTEGER NOT NULL CHECK (lights BETWEEN 0 AND 100),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE,
  CONSTRAINT capacity_in_one_form CHECK (
    (capacity_wh IS NULL) = (capacity_mah IS NOT NULL) AND (capacity_mah IS NULL) = (cell_v IS NULL)
  ),
  CONSTRAINT measured_with_its_date CHECK ((measured_deliverable_wh IS NULL) = (measured_deliverable_on IS NULL))
) STRICT;

CREATE TABLE panels (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'panel' CHECK (kind = 'panel'),
  rated_w REAL NOT NULL CHECK (rated_w BETWEEN 0.1 AND 500),
  measured_rated_w REAL CHECK (measured_rated_w BETWEEN 0.1 AND 500),
  measured_rated_on TEXT CHECK (
    measured_rated_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(measured_rated_on) IS measured_rated_on
    AND measured_rated_on BETWEEN '1900-01-01' AND '2199-12-31'
  ),
  temperature_coefficient_pct_per_k REAL NOT NULL CHECK (temperature_coefficient_pct_per_k BETWEEN -1 AND 0),
  noct_c REAL NOT NULL CHECK (noct_c BETWEEN 20 AND 90),
  regulator_efficiency REAL NOT NULL CHECK (regulator_efficiency BETWEEN 0.3 AND 1),
  start_w_per_m2 REAL NOT NULL CHECK (start_w_per_m2 BETWEEN 0 AND 500),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE,
  CONSTRAINT measured_with_its_date CHECK ((measured_rated_w IS NULL) = (measured_rated_on IS NULL))
) STRICT;

-- A hub without a rating has its power in hub_curve_points.
CREATE TABLE generator_hubs (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'generator-hub' CHECK (kind = 'generator-hub'),
  replaces_g REAL NOT NULL CHECK (replaces_g BETWEEN 0 AND 2000),
  wheel_build_minor INTEGER NOT NULL CHECK (wheel_build_minor BETWEEN 0 AND 100000000),
  wheel_build_currency TEXT NOT NULL CHECK (wheel_build_currency GLOB '[A-Z][A-Z][A-Z]'),
  rated_w REAL CHECK (rated_w BETWEEN 0.5 AND 12),
  idle_drag_10_w REAL NOT NULL CHECK (idle_drag_10_w BETWEEN 0 AND 20),
  idle_drag_30_w REAL NOT NULL CHECK (idle_drag_30_w BETWEEN 0 AND 40),
  wheel_circumference_m REAL NOT NULL CHECK (wheel_circumference_m BETWEEN 0.9 AND 2.5),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE
) STRICT;

CREATE TABLE hub_curve_points (
  item_id TEXT NOT NULL REFERENCES generator_hubs (item_id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 59),
  speed_kmh REAL NOT NULL CHECK (speed_kmh BETWEEN 0 AND 120),
  power_w REAL NOT NULL CHECK (power_w BETWEEN 0 AND 100),
  PRIMARY KEY (item_id, position),
  UNIQUE (item_id, speed_kmh)
) STRICT, WITHOUT ROWID;

CREATE TABLE converters (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'converter' CHECK (kind = 'converter'),
  efficiency REAL NOT NULL CHECK (efficiency BETWEEN 0.2 AND 1),
  start_speed_kmh REAL NOT NULL CHECK (start_speed_kmh BETWEEN 0 AND 40),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE
) STRICT;

CREATE TABLE wall_chargers (
  item_id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'wall-charger' CHECK (kind = 'wall-charger'),
  total_w REAL NOT NULL CHECK (total_w BETWEEN 0.5 AND 500),
  FOREIGN KEY (item_id, kind) REFERENCES items (id, kind) ON DELETE CASCADE
) STRICT;

CREATE TABLE ports (
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE CASCADE,
  direction TEXT NOT NULL CHECK (direction IN ('in', 'out')),
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 7),
  standard TEXT NOT NULL CHECK (standard IN ('usb-2', 'usb-3', 'bc-1.2', 'type-c-1.5a', 'type-c-3a', 'pd')),
  power_w REAL NOT NULL CHECK (power_w BETWEEN 0.1 AND 240),
  PRIMARY KEY (item_id, direction, position)
) STRICT, WITHOUT ROWID;
