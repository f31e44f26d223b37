-- What a sink is charged through. An older sink gets the cable that is usual for its port, which never passes less than the
-- port takes: `usualCable` in shared-types/port.ts. A socket that gives power has none of its own.
CREATE TABLE ports_with_cable (
  item_id TEXT NOT NULL REFERENCES items (id) ON DELETE CASCADE,
  direction TEXT NOT NULL CHECK (direction IN ('in', 'out')),
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 7),
  standard TEXT NOT NULL CHECK (standard IN ('usb-2', 'usb-3', 'bc-1.2', 'type-c-1.5a', 'type-c-3a', 'pd')),
  power_w REAL NOT NULL CHECK (power_w BETWEEN 0.1 AND 240),
  cable TEXT CHECK (cable IN ('a-plug', 'c-3a', 'c-5a')),
  PRIMARY KEY (item_id, direction, position),
  CONSTRAINT cable_of_a_sink CHECK ((direction = 'in') = (cable IS NOT NULL))
) STRICT, WITHOUT ROWID;

INSERT INTO ports_with_cable (item_id, direction, position, standard, power_w, cable)
SELECT
  item_id, direction, position, standard, power_w,
  CASE
    WHEN direction = 'out' THEN NULL
    WHEN standard = 'pd' AND power_w > 60 THEN 'c-5a'
    WHEN standard IN ('type-c-1.5a', 'type-c-3a', 'pd') THEN 'c-3a'
    ELSE 'a-plug'
  END
FROM ports;

DROP TABLE ports;
ALTER TABLE ports_with_cable RENAME TO ports;
