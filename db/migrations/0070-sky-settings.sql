-- How the weather is drawn and how its light falls. Ranges and defaults: `sky` and `usualSky` in shared-types/settings.ts.
ALTER TABLE settings ADD COLUMN sky_method TEXT NOT NULL DEFAULT 'distribution'
  CHECK (sky_method IN ('distribution', 'transitions'));
ALTER TABLE settings ADD COLUMN sky_persistence REAL NOT NULL DEFAULT 0.29
  CHECK (sky_persistence BETWEEN 0 AND 0.9);
ALTER TABLE settings ADD COLUMN sky_histories INTEGER NOT NULL DEFAULT 200
  CHECK (sky_histories BETWEEN 20 AND 1000);
ALTER TABLE settings ADD COLUMN sky_seed INTEGER NOT NULL DEFAULT 1
  CHECK (sky_seed BETWEEN 0 AND 2147483647);
ALTER TABLE settings ADD COLUMN sky_diffuse TEXT NOT NULL DEFAULT 'hay-davies'
  CHECK (sky_diffuse IN ('hay-davies', 'isotropic'));
ALTER TABLE settings ADD COLUMN ground_reflectance REAL NOT NULL DEFAULT 0.2
  CHECK (ground_reflectance BETWEEN 0 AND 1);
