-- SQLite: what was kept of calibrations is neither changed nor removed, whatever program asks for it.

CREATE TRIGGER meter_calibration_is_not_changed BEFORE UPDATE ON meter_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER meter_calibration_is_not_removed BEFORE DELETE ON meter_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER bowl_fill_is_not_changed BEFORE UPDATE ON bowl_fill
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER bowl_fill_is_not_removed BEFORE DELETE ON bowl_fill
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER dial_point_is_not_changed BEFORE UPDATE ON dial_point
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER dial_point_is_not_removed BEFORE DELETE ON dial_point
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;
