-- SQLite: from which hour of its first day a factor holds, under which standing conditions, and who checked it. Factors that were kept
-- before say nothing of it: they hold from the start of their first day.

ALTER TABLE factor_issue ADD COLUMN in_force_at TEXT;

ALTER TABLE factor_issue ADD COLUMN conditions TEXT;

ALTER TABLE factor_issue ADD COLUMN checked_by TEXT;

-- What is proposed as the next revision of a mix's factor. Its versions are its steps, each with who took it and when.

CREATE TABLE factor_proposal (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    mix_id TEXT NOT NULL,
    proposal_no INTEGER NOT NULL CHECK (proposal_no >= 1),
    step TEXT NOT NULL CHECK (step IN ('drafted', 'checked', 'sent-back', 'dropped', 'issued')),
    factor_pct TEXT NOT NULL,
    determination_id TEXT NOT NULL,
    in_force_from TEXT NOT NULL,
    recheck_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    mix_version INTEGER NOT NULL CHECK (mix_version >= 1),
    drafted_by TEXT NOT NULL,
    step_by TEXT NOT NULL,
    step_at TEXT NOT NULL,
    remark TEXT NOT NULL,
    in_force_at TEXT,
    conditions TEXT,
    checked_by TEXT,
    revision INTEGER CHECK (revision >= 1),
    simulated INTEGER CHECK (simulated IN (0, 1)),
    CHECK ((step = 'issued') = (revision IS NOT NULL)),
    CHECK (step <> 'checked' OR checked_by IS NOT NULL)
) STRICT;

CREATE INDEX factor_proposal_by_mix ON factor_proposal (mix_id);

CREATE TABLE factor_proposal_source (
    entry_no INTEGER NOT NULL REFERENCES factor_proposal (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL CHECK (source_version >= 1),
    PRIMARY KEY (entry_no, source_id)
) STRICT;

CREATE TABLE factor_proposal_trial (
    entry_no INTEGER NOT NULL REFERENCES factor_proposal (entry_no),
    trial_id TEXT NOT NULL,
    trial_version INTEGER NOT NULL CHECK (trial_version >= 1),
    PRIMARY KEY (entry_no, trial_id)
) STRICT;

CREATE TABLE factor_proposal_calibration (
    entry_no INTEGER NOT NULL REFERENCES factor_proposal (entry_no),
    calibration_id TEXT NOT NULL,
    calibration_version INTEGER NOT NULL CHECK (calibration_version >= 1),
    PRIMARY KEY (entry_no, calibration_id)
) STRICT;

CREATE TABLE factor_proposal_doubt (
    entry_no INTEGER NOT NULL REFERENCES factor_proposal (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    trial_id TEXT,
    code TEXT NOT NULL,
    words TEXT NOT NULL,
    taken_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE TRIGGER factor_proposal_is_not_changed BEFORE UPDATE ON factor_proposal
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_proposal_is_not_removed BEFORE DELETE ON factor_proposal
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_proposal_is_not_replaced BEFORE INSERT ON factor_proposal
WHEN EXISTS (SELECT 1 FROM factor_proposal WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_proposal_source_is_not_changed BEFORE UPDATE ON factor_proposal_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_proposal_source_is_not_removed BEFORE DELETE ON factor_proposal_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_proposal_source_is_not_replaced BEFORE INSERT ON factor_proposal_source
WHEN EXISTS (SELECT 1 FROM factor_proposal_source WHERE entry_no = NEW.entry_no AND source_id = NEW.source_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_proposal_trial_is_not_changed BEFORE UPDATE ON factor_proposal_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_proposal_trial_is_not_removed BEFORE DELETE ON factor_proposal_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_proposal_trial_is_not_replaced BEFORE INSERT ON factor_proposal_trial
WHEN EXISTS (SELECT 1 FROM factor_proposal_trial WHERE entry_no = NEW.entry_no AND trial_id = NEW.trial_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_proposal_calibration_is_not_changed BEFORE UPDATE ON factor_proposal_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_proposal_calibration_is_not_removed BEFORE DELETE ON factor_proposal_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_proposal_calibration_is_not_replaced BEFORE INSERT ON factor_proposal_calibration
WHEN EXISTS (SELECT 1 FROM factor_proposal_calibration WHERE entry_no = NEW.entry_no AND calibration_id = NEW.calibration_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_proposal_doubt_is_not_changed BEFORE UPDATE ON factor_proposal_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_proposal_doubt_is_not_removed BEFORE DELETE ON factor_proposal_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_proposal_doubt_is_not_replaced BEFORE INSERT ON factor_proposal_doubt
WHEN EXISTS (SELECT 1 FROM factor_proposal_doubt WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
