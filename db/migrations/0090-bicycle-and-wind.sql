-- How the bicycle rolls and meets the air, and the wind on a leg. Ranges and defaults: `bicycle`, `usualBicycle` and `wind` in
-- shared-types/tour.ts; older legs were reckoned calm.
ALTER TABLE tours ADD COLUMN drag_area_m2 REAL NOT NULL DEFAULT 0.559
  CHECK (drag_area_m2 BETWEEN 0.2 AND 1.2);
ALTER TABLE tours ADD COLUMN paved_rolling REAL NOT NULL DEFAULT 0.0077
  CHECK (paved_rolling BETWEEN 0.002 AND 0.03);
ALTER TABLE tours ADD COLUMN drivetrain_efficiency REAL NOT NULL DEFAULT 0.976
  CHECK (drivetrain_efficiency BETWEEN 0.8 AND 0.999);
ALTER TABLE tours ADD COLUMN downhill_cap_kmh REAL NOT NULL DEFAULT 45
  CHECK (downhill_cap_kmh BETWEEN 15 AND 90);

-- Along the road a wind may push, from all sides it has no sign, and calm air has no speed.
ALTER TABLE legs ADD COLUMN wind TEXT NOT NULL DEFAULT 'calm'
  CHECK (wind IN ('calm', 'along', 'around'));
ALTER TABLE legs ADD COLUMN wind_kmh REAL CHECK (wind_kmh BETWEEN -60 AND 60)
  CONSTRAINT wind_in_one_form CHECK (
    (wind = 'calm') = (wind_kmh IS NULL) AND (wind <> 'around' OR wind_kmh >= 0)
  );
