-- A track is kept in pieces, in the order of the ride, with its profile and, where the file has times, its speeds. Ranges:
-- shared-types/track.ts. An older track was one distribution of grades: it becomes one piece, without times or profile.
-- Lists of up to thousands of numbers stand as JSON, which is read and written whole; no constraint can look inside it, so
-- their ranges are held when they are read.
CREATE TABLE leg_track_pieces (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 39),
  distance_km REAL NOT NULL CHECK (distance_km BETWEEN 0 AND 40000),
  -- [grade in %, recorded speed in km/h or null, share of the piece] for each stretch.
  stretches TEXT NOT NULL CHECK (
    json_valid(stretches) AND json_type(stretches) = 'array' AND json_array_length(stretches) BETWEEN 1 AND 1200
  ),
  PRIMARY KEY (tour_id, leg_position, position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES leg_tracks (tour_id, leg_position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

INSERT INTO leg_track_pieces (tour_id, leg_position, position, distance_km, stretches)
SELECT
  tour_id, leg_position, 0, leg_tracks.distance_km,
  json_group_array(json_array(grade_pct, NULL, distance_share) ORDER BY leg_grades.position)
FROM leg_tracks JOIN leg_grades USING (tour_id, leg_position)
GROUP BY tour_id, leg_position;

CREATE TABLE leg_tracks_with_profile (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  pace TEXT NOT NULL CHECK (pace IN ('recorded', 'computed')),
  name TEXT NOT NULL CHECK (octet_length(trim(name)) > 0 AND length(name) <= 200),
  distance_km REAL NOT NULL CHECK (distance_km BETWEEN 0.1 AND 40000),
  ascent_m REAL NOT NULL CHECK (ascent_m BETWEEN 0 AND 1000000),
  descent_m REAL NOT NULL CHECK (descent_m BETWEEN 0 AND 1000000),
  mean_elevation_m REAL CHECK (mean_elevation_m BETWEEN -450 AND 6000),
  mean_lat_deg REAL NOT NULL CHECK (mean_lat_deg BETWEEN -90 AND 90),
  mean_lon_deg REAL NOT NULL CHECK (mean_lon_deg BETWEEN -180 AND 180),
  height_share REAL NOT NULL CHECK (height_share BETWEEN 0 AND 1),
  timed_share REAL NOT NULL CHECK (timed_share BETWEEN 0 AND 1),
  -- In metres, at equal distances from start to end.
  heights TEXT NOT NULL CHECK (
    json_valid(heights) AND json_type(heights) = 'array' AND json_array_length(heights) <= 301
  ),
  PRIMARY KEY (tour_id, leg_position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

INSERT INTO leg_tracks_with_profile (
  tour_id, leg_position, pace, name, distance_km, ascent_m, descent_m,
  mean_elevation_m, mean_lat_deg, mean_lon_deg, height_share, timed_share, heights
)
SELECT
  tour_id, leg_position, 'computed', name, distance_km, ascent_m, descent_m,
  mean_elevation_m, mean_lat_deg, mean_lon_deg, 1, 0, '[]'
FROM leg_tracks;

-- References are off while a step runs: the pieces refer to the table that takes the name.
DROP TABLE leg_grades;
DROP TABLE leg_tracks;
ALTER TABLE leg_tracks_with_profile RENAME TO leg_tracks;
