-- SQLite: what was made of a mix in a spell of days. No two spells of a mix overlap: who keeps one looks to that.

CREATE TABLE production (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    production_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    first_day TEXT NOT NULL,
    last_day TEXT NOT NULL,
    production_days INTEGER,
    loads INTEGER,
    concrete_volume TEXT,
    concrete_volume_unit TEXT,
    concrete_mass TEXT,
    concrete_mass_unit TEXT,
    reported_by TEXT NOT NULL,
    remarks TEXT NOT NULL,
    CHECK (first_day <= last_day),
    CHECK (production_days IS NOT NULL OR concrete_volume IS NOT NULL OR concrete_mass IS NOT NULL),
    CHECK (concrete_volume IS NULL OR concrete_mass IS NULL)
) STRICT;

CREATE INDEX production_by_mix ON production (mix_id);

CREATE TRIGGER production_is_not_changed BEFORE UPDATE ON production
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER production_is_not_removed BEFORE DELETE ON production
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER production_is_not_replaced BEFORE INSERT ON production
WHEN EXISTS (SELECT 1 FROM production WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
