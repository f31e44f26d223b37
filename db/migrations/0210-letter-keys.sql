-- Whether single letters are shortcuts; 1 as a rule.
ALTER TABLE settings ADD COLUMN letter_keys INTEGER NOT NULL DEFAULT 1 CHECK (letter_keys IN (0, 1));
