-- A tour owns its legs and all that hangs on them: they go with it. The ranges are those of shared-types/tour.ts.
CREATE TABLE tours (
  id TEXT NOT NULL PRIMARY KEY
    CHECK (length(id) BETWEEN 1 AND 64 AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '-*'),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  start_date TEXT NOT NULL CHECK (
    start_date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
    AND date(start_date) IS start_date
    AND start_date BETWEEN '1900-01-01' AND '2199-12-31'
  ),
  rider_mass_kg REAL NOT NULL CHECK (rider_mass_kg BETWEEN 30 AND 200),
  bicycle_mass_kg REAL NOT NULL CHECK (bicycle_mass_kg BETWEEN 5 AND 150),
  rider_w REAL NOT NULL CHECK (rider_w BETWEEN 30 AND 400),
  notes TEXT NOT NULL CHECK (length(notes) <= 2000)
) STRICT;

CREATE INDEX tours_by_label ON tours (label COLLATE NOCASE, id);

CREATE TABLE legs (
  tour_id TEXT NOT NULL REFERENCES tours (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 59),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  days INTEGER NOT NULL CHECK (days BETWEEN 1 AND 366),
  station TEXT CHECK (octet_length(trim(station)) > 0 AND length(station) <= 80),
  lat_deg REAL CHECK (lat_deg BETWEEN -90 AND 90),
  lon_deg REAL CHECK (lon_deg BETWEEN -180 AND 180),
  elevation_m REAL CHECK (elevation_m BETWEEN -450 AND 6000),
  terrain_class TEXT NOT NULL
    CHECK (terrain_class IN ('flat-paved', 'rolling', 'hilly', 'mountain', 'rough-track')),
  riding_h REAL NOT NULL CHECK (riding_h BETWEEN 0 AND 12),
  wall_outlets INTEGER NOT NULL CHECK (wall_outlets BETWEEN 1 AND 6),
  post_outlets INTEGER NOT NULL CHECK (post_outlets BETWEEN 1 AND 4),
  PRIMARY KEY (tour_id, position),
  CONSTRAINT station_or_coordinates CHECK (
    (station IS NULL) = (lat_deg IS NOT NULL)
    AND (lat_deg IS NULL) = (lon_deg IS NULL)
    AND (lat_deg IS NULL) = (elevation_m IS NULL)
  )
) STRICT, WITHOUT ROWID;

-- The nights of a leg repeat this pattern in the order of position.
CREATE TABLE leg_nights (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 59),
  night TEXT NOT NULL CHECK (night IN ('wall', 'electric-post', 'none')),
  PRIMARY KEY (tour_id, leg_position, position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE day_stops (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 5),
  label TEXT NOT NULL CHECK (octet_length(trim(label)) > 0 AND length(label) <= 80),
  length_min INTEGER NOT NULL CHECK (length_min BETWEEN 5 AND 600),
  outlets INTEGER NOT NULL CHECK (outlets BETWEEN 0 AND 6),
  chance REAL NOT NULL CHECK (chance BETWEEN 0 AND 1),
  PRIMARY KEY (tour_id, leg_position, position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- A leg with a row here takes its grades from a GPX track; one without takes those of its terrain class.
CREATE TABLE leg_tracks (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  name TEXT NOT NULL CHECK (octet_length(trim(name)) > 0 AND length(name) <= 200),
  distance_km REAL NOT NULL CHECK (distance_km BETWEEN 0.1 AND 40000),
  ascent_m REAL NOT NULL CHECK (ascent_m BETWEEN 0 AND 1000000),
  descent_m REAL NOT NULL CHECK (descent_m BETWEEN 0 AND 1000000),
  mean_elevation_m REAL NOT NULL CHECK (mean_elevation_m BETWEEN -450 AND 6000),
  mean_lat_deg REAL NOT NULL CHECK (mean_lat_deg BETWEEN -90 AND 90),
  mean_lon_deg REAL NOT NULL CHECK (mean_lon_deg BETWEEN -180 AND 180),
  PRIMARY KEY (tour_id, leg_position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE leg_grades (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 59),
  grade_pct REAL NOT NULL CHECK (grade_pct BETWEEN -40 AND 40),
  distance_share REAL NOT NULL CHECK (distance_share BETWEEN 0 AND 1),
  PRIMARY KEY (tour_id, leg_position, position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES leg_tracks (tour_id, leg_position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- An item that is gone need not be left at home any more.
CREATE TABLE tour_left_at_home (
  tour_id TEXT NOT NULL REFERENCES tours (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 499),
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE CASCADE,
  PRIMARY KEY (tour_id, position)
) STRICT, WITHOUT ROWID;

-- Saving or removing an item looks for the rows that refer to it.
CREATE INDEX tour_left_at_home_by_item ON tour_left_at_home (item_id);
