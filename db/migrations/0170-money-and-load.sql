-- What money costs, and how loads fall on the front wheel. Ranges and defaults: `usualMoney` in shared-types/money-settings.ts
-- and `usualFrontLoad` in shared-types/front-load.ts. A share is NULL where the moment balance is to tell it.
ALTER TABLE settings ADD COLUMN money_rate_pct REAL NOT NULL DEFAULT 0 CHECK (money_rate_pct BETWEEN 0 AND 30);
ALTER TABLE settings ADD COLUMN touring_days_a_year INTEGER NOT NULL DEFAULT 30
  CHECK (touring_days_a_year BETWEEN 1 AND 365);
ALTER TABLE settings ADD COLUMN wall_night_minor INTEGER NOT NULL DEFAULT 0
  CHECK (wall_night_minor BETWEEN 0 AND 100000000);
ALTER TABLE settings ADD COLUMN wall_night_currency TEXT NOT NULL DEFAULT 'EUR'
  CHECK (wall_night_currency GLOB '[A-Z][A-Z][A-Z]');
UPDATE settings SET wall_night_currency = currency;

ALTER TABLE settings ADD COLUMN wheelbase_m REAL NOT NULL DEFAULT 1.08 CHECK (wheelbase_m BETWEEN 0.8 AND 1.4);
ALTER TABLE settings ADD COLUMN ahead_fork_m REAL NOT NULL DEFAULT 1.03
  CHECK (ahead_fork_m BETWEEN -0.5 AND 1.6);
ALTER TABLE settings ADD COLUMN ahead_handlebar_m REAL NOT NULL DEFAULT 0.86
  CHECK (ahead_handlebar_m BETWEEN -0.5 AND 1.6);
ALTER TABLE settings ADD COLUMN ahead_frame_m REAL NOT NULL DEFAULT 0.54
  CHECK (ahead_frame_m BETWEEN -0.5 AND 1.6);
ALTER TABLE settings ADD COLUMN ahead_rear_rack_m REAL NOT NULL DEFAULT 0.05
  CHECK (ahead_rear_rack_m BETWEEN -0.5 AND 1.6);
ALTER TABLE settings ADD COLUMN ahead_body_m REAL NOT NULL DEFAULT 0.45
  CHECK (ahead_body_m BETWEEN -0.5 AND 1.6);

ALTER TABLE settings ADD COLUMN own_share_fork REAL CHECK (own_share_fork BETWEEN -0.5 AND 1.5);
ALTER TABLE settings ADD COLUMN own_share_handlebar REAL CHECK (own_share_handlebar BETWEEN -0.5 AND 1.5);
ALTER TABLE settings ADD COLUMN own_share_frame REAL CHECK (own_share_frame BETWEEN -0.5 AND 1.5);
ALTER TABLE settings ADD COLUMN own_share_rear_rack REAL CHECK (own_share_rear_rack BETWEEN -0.5 AND 1.5);
ALTER TABLE settings ADD COLUMN own_share_body REAL CHECK (own_share_body BETWEEN -0.5 AND 1.5);
