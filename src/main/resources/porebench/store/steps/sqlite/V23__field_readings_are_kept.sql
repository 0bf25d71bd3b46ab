-- SQLite: what crews read on pressure meters at the loads, as it was read. By its time a span of days is found without reading the rest.

CREATE TABLE field_reading (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    reading_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    read_at TEXT NOT NULL,
    truck TEXT NOT NULL,
    meter_id TEXT,
    gauge_pct TEXT NOT NULL,
    density TEXT,
    density_unit TEXT,
    temperature_c TEXT,
    remarks TEXT NOT NULL,
    kept_because TEXT,
    struck_because TEXT
) STRICT;

CREATE INDEX field_reading_by_mix ON field_reading (mix_id);

CREATE INDEX field_reading_by_time ON field_reading (read_at);

CREATE TRIGGER field_reading_is_not_changed BEFORE UPDATE ON field_reading
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER field_reading_is_not_removed BEFORE DELETE ON field_reading
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER field_reading_is_not_replaced BEFORE INSERT ON field_reading
WHEN EXISTS (SELECT 1 FROM field_reading WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
