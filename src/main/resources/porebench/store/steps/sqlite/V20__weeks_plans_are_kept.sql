-- SQLite: the tests of a week as a person arranged them. The plan's name is its first day.

CREATE TABLE test_plan (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    plan_from TEXT NOT NULL
) STRICT;

CREATE TABLE test_plan_row (
    entry_no INTEGER NOT NULL REFERENCES test_plan (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    mix_id TEXT NOT NULL,
    test_day TEXT NOT NULL,
    who TEXT NOT NULL,
    trials INTEGER CHECK (trials >= 1),
    meter_id TEXT,
    mark TEXT NOT NULL CHECK (mark IN ('asked', 'by-hand', 'left-out')),
    remark TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE TRIGGER test_plan_is_not_changed BEFORE UPDATE ON test_plan
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER test_plan_is_not_removed BEFORE DELETE ON test_plan
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER test_plan_is_not_replaced BEFORE INSERT ON test_plan
WHEN EXISTS (SELECT 1 FROM test_plan WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER test_plan_row_is_not_changed BEFORE UPDATE ON test_plan_row
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER test_plan_row_is_not_removed BEFORE DELETE ON test_plan_row
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER test_plan_row_is_not_replaced BEFORE INSERT ON test_plan_row
WHEN EXISTS (SELECT 1 FROM test_plan_row WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
