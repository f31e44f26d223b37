-- What a hub really gives at the plug, as a share of what its rating or curve promises. Range: `measuredYield` in
-- shared-types/hub-item.ts; older hubs were not measured so.
ALTER TABLE generator_hubs ADD COLUMN measured_yield REAL CHECK (measured_yield BETWEEN 0.05 AND 1.5);
ALTER TABLE generator_hubs ADD COLUMN measured_yield_on TEXT
  CHECK (
    measured_yield_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(measured_yield_on) IS measured_yield_on
    AND measured_yield_on BETWEEN '1900-01-01' AND '2199-12-31'
  )
  CONSTRAINT yield_with_its_date CHECK ((measured_yield IS NULL) = (measured_yield_on IS NULL));

-- How far a rider went while a meter counted; older readings of a ride do not say. Range: shared-types/reading.ts.
ALTER TABLE readings ADD COLUMN distance_km REAL CHECK (distance_km BETWEEN 0.1 AND 5000)
  CONSTRAINT distance_of_a_ride CHECK (distance_km IS NULL OR form = 'ride');

-- The yield of a hub is one more value that is taken over from readings.
CREATE TABLE kept_estimates_with_yield (
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE CASCADE,
  measure TEXT NOT NULL CHECK (measure IN (
    'bank-delivery', 'bank-efficiency', 'device-riding', 'device-stop', 'device-evening', 'device-night', 'device-day',
    'panel-power', 'hub-power', 'hub-yield'
  )),
  value REAL NOT NULL CHECK (value BETWEEN 0 AND 10000),
  low REAL NOT NULL CHECK (low BETWEEN 0 AND 10000),
  high REAL NOT NULL CHECK (high BETWEEN 0 AND 10000),
  readings INTEGER NOT NULL CHECK (readings BETWEEN 1 AND 100000),
  kept_on TEXT NOT NULL CHECK (
    kept_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(kept_on) IS kept_on
    AND kept_on BETWEEN '1900-01-01' AND '2199-12-31'
  ),
  PRIMARY KEY (item_id, measure),
  CONSTRAINT bounds_in_order CHECK (low <= value AND value <= high)
) STRICT, WITHOUT ROWID;

INSERT INTO kept_estimates_with_yield SELECT item_id, measure, value, low, high, readings, kept_on FROM kept_estimates;
DROP TABLE kept_estimates;
ALTER TABLE kept_estimates_with_yield RENAME TO kept_estimates;
