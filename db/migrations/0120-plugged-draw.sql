-- What a device draws on top while it is charged in use. Range: `pluggedW` in shared-types/item.ts; older devices drew none.
ALTER TABLE devices ADD COLUMN plugged_w REAL NOT NULL DEFAULT 0
  CHECK (plugged_w BETWEEN 0 AND 20);
