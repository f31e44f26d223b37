-- The paper that a printed sheet is laid out for.
ALTER TABLE settings ADD COLUMN paper TEXT NOT NULL DEFAULT 'a4' CHECK (paper IN ('a4', 'letter'));
