-- SQLite: the laboratory's equipment, each piece with its newest calibration; a calibration is there whole or not at all.
--
-- The unit of division and limit_of_error is that of the kind: g for a balance, mL for a cylinder, C for a thermometer, % of
-- the bowl for a vessel.

CREATE TABLE equipment (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    equipment_id TEXT NOT NULL,
    equipment_kind TEXT NOT NULL,
    description TEXT NOT NULL,
    division TEXT NOT NULL,
    calibrated_on TEXT,
    limit_of_error TEXT,
    due_on TEXT,
    certificate TEXT,
    used_from TEXT NOT NULL,
    used_until TEXT,
    remarks TEXT NOT NULL,
    CHECK ((calibrated_on IS NULL) = (limit_of_error IS NULL)),
    CHECK ((calibrated_on IS NULL) = (due_on IS NULL)),
    CHECK ((calibrated_on IS NULL) = (certificate IS NULL))
) STRICT;

CREATE TRIGGER equipment_is_not_changed BEFORE UPDATE ON equipment
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER equipment_is_not_removed BEFORE DELETE ON equipment
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER equipment_is_not_replaced BEFORE INSERT ON equipment
WHEN EXISTS (SELECT 1 FROM equipment WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
