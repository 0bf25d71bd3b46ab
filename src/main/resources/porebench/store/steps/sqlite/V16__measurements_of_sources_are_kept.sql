-- SQLite: what was measured of sources, when and by whom. It stands beside the figures in use.

CREATE TABLE source_measurement (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    measurement_id TEXT NOT NULL,
    source_id TEXT NOT NULL,
    tested_on TEXT NOT NULL,
    tested_by TEXT NOT NULL,
    lot TEXT NOT NULL,
    relative_density TEXT,
    absorption_pct TEXT,
    retained_37_5mm_pct TEXT,
    remarks TEXT NOT NULL,
    CHECK (relative_density IS NOT NULL OR absorption_pct IS NOT NULL OR retained_37_5mm_pct IS NOT NULL)
) STRICT;

CREATE INDEX source_measurement_by_source ON source_measurement (source_id);

CREATE TRIGGER source_measurement_is_not_changed BEFORE UPDATE ON source_measurement
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER source_measurement_is_not_removed BEFORE DELETE ON source_measurement
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER source_measurement_is_not_replaced BEFORE INSERT ON source_measurement
WHEN EXISTS (SELECT 1 FROM source_measurement WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
