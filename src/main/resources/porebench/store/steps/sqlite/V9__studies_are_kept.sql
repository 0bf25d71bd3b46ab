-- SQLite: the readings of a study of who and what varies, as they were read from a file. A study has from one to six layers;
-- the columns of layers it does not have are null, in it and in its readings.

CREATE TABLE study (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    study_id TEXT NOT NULL,
    layout TEXT NOT NULL CHECK (layout IN ('operators', 'layers', 'laboratories')),
    title TEXT NOT NULL,
    made_on TEXT NOT NULL,
    made_by TEXT NOT NULL,
    file_name TEXT NOT NULL,
    layer_1 TEXT NOT NULL,
    layer_2 TEXT,
    layer_3 TEXT,
    layer_4 TEXT,
    layer_5 TEXT,
    layer_6 TEXT,
    remarks TEXT NOT NULL
) STRICT;

CREATE TABLE study_reading (
    entry_no INTEGER NOT NULL REFERENCES study (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    name_1 TEXT NOT NULL,
    name_2 TEXT,
    name_3 TEXT,
    name_4 TEXT,
    name_5 TEXT,
    name_6 TEXT,
    value TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE TRIGGER study_is_not_changed BEFORE UPDATE ON study
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER study_is_not_removed BEFORE DELETE ON study
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER study_is_not_replaced BEFORE INSERT ON study
WHEN EXISTS (SELECT 1 FROM study WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER study_reading_is_not_changed BEFORE UPDATE ON study_reading
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER study_reading_is_not_removed BEFORE DELETE ON study_reading
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER study_reading_is_not_replaced BEFORE INSERT ON study_reading
WHEN EXISTS (SELECT 1 FROM study_reading WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
