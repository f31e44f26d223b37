-- What the rider noted on the road about an item. Forms and ranges: shared-types/reading.ts. An item with readings is retired,
-- not removed. How full a store was is a share or a number of lights lit; what a meter counted is Wh, or mAh at its voltage.
CREATE TABLE readings (
  id TEXT NOT NULL PRIMARY KEY
    CHECK (length(id) BETWEEN 1 AND 64 AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '-*'),
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE RESTRICT,
  form TEXT NOT NULL CHECK (form IN ('charge', 'delivery', 'intake', 'use', 'sun', 'ride')),
  taken_on TEXT NOT NULL CHECK (
    taken_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(taken_on) IS taken_on
    AND taken_on BETWEEN '1900-01-01' AND '2199-12-31'
  ),
  note TEXT NOT NULL CHECK (length(note) <= 500),
  before_share REAL CHECK (before_share BETWEEN 0 AND 1),
  before_lit INTEGER CHECK (before_lit BETWEEN 0 AND 100),
  -- A single reading of how full a store is stands here too.
  after_share REAL CHECK (after_share BETWEEN 0 AND 1),
  after_lit INTEGER CHECK (after_lit BETWEEN 0 AND 100),
  counted_wh REAL CHECK (counted_wh BETWEEN 0.01 AND 2000),
  counted_mah REAL CHECK (counted_mah BETWEEN 1 AND 400000),
  meter_v REAL CHECK (meter_v BETWEEN 1 AND 60),
  hours REAL CHECK (hours BETWEEN 0.05 AND 240),
  during TEXT CHECK (during IN ('riding', 'stop', 'evening', 'night', 'day')),
  CONSTRAINT before_in_one_form CHECK (
    (before_share IS NOT NULL) + (before_lit IS NOT NULL) = (form IN ('delivery', 'intake', 'use'))
  ),
  CONSTRAINT after_in_one_form CHECK (
    (after_share IS NOT NULL) + (after_lit IS NOT NULL) = (form IN ('charge', 'delivery', 'intake', 'use'))
  ),
  CONSTRAINT no_lights_in_use CHECK (form <> 'use' OR (before_lit IS NULL AND after_lit IS NULL)),
  CONSTRAINT energy_in_one_form CHECK (
    (counted_wh IS NOT NULL) + (counted_mah IS NOT NULL) = (form IN ('delivery', 'intake', 'sun', 'ride'))
    AND (counted_mah IS NULL) = (meter_v IS NULL)
  ),
  CONSTRAINT hours_where_they_count CHECK ((hours IS NOT NULL) = (form IN ('use', 'sun', 'ride'))),
  CONSTRAINT activity_of_use CHECK ((during IS NOT NULL) = (form = 'use'))
) STRICT;

CREATE INDEX readings_by_date ON readings (taken_on);
CREATE INDEX readings_by_item ON readings (item_id);

-- Values that were taken over from readings, with what they rested on. Ranges: `keptEstimate` in shared-types/field-log.ts.
CREATE TABLE kept_estimates (
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE CASCADE,
  measure TEXT NOT NULL CHECK (measure IN (
    'bank-delivery', 'bank-efficiency', 'device-riding', 'device-stop', 'device-evening', 'device-night', 'device-day',
    'panel-power', 'hub-power'
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
