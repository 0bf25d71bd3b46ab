-- SQLite: what was decided of factors whose source changed, with the comparison as it stood. A factor may be kept by such a decision,
-- and says how uncertain it was when it was issued.

CREATE TABLE change_decision (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    decision_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    changed_on TEXT,
    revision INTEGER CHECK (revision >= 1),
    trials_before INTEGER NOT NULL CHECK (trials_before >= 1),
    mean_before_pct TEXT NOT NULL,
    trials_after INTEGER NOT NULL CHECK (trials_after >= 1),
    mean_after_pct TEXT NOT NULL,
    difference_pct TEXT NOT NULL,
    difference_low_pct TEXT NOT NULL,
    difference_high_pct TEXT NOT NULL,
    welch_t TEXT NOT NULL,
    welch_df TEXT NOT NULL,
    welch_p TEXT NOT NULL,
    margin_pct TEXT NOT NULL,
    equivalence_low_pct TEXT NOT NULL,
    equivalence_high_pct TEXT NOT NULL,
    power TEXT NOT NULL,
    trials_needed INTEGER CHECK (trials_needed >= 0),
    verdict TEXT NOT NULL CHECK (verdict IN ('keep', 'replace', 'test-more')),
    decision TEXT NOT NULL CHECK (decision IN ('keep', 'replace', 'test-more')),
    more_trials INTEGER CHECK (more_trials >= 1),
    decided_on TEXT NOT NULL,
    decided_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    origin TEXT CHECK (origin IN ('imported', 'confirmed')),
    CHECK (decision = 'test-more' OR more_trials IS NULL)
) STRICT;

CREATE INDEX change_decision_by_mix ON change_decision (mix_id);

CREATE TABLE change_decision_source (
    entry_no INTEGER NOT NULL REFERENCES change_decision (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL CHECK (source_version >= 1),
    PRIMARY KEY (entry_no, source_id)
) STRICT;

CREATE TABLE change_decision_before (
    entry_no INTEGER NOT NULL REFERENCES change_decision (entry_no),
    determination_id TEXT NOT NULL,
    determination_version INTEGER NOT NULL CHECK (determination_version >= 1),
    PRIMARY KEY (entry_no, determination_id)
) STRICT;

CREATE TABLE change_decision_after (
    entry_no INTEGER NOT NULL REFERENCES change_decision (entry_no),
    determination_id TEXT NOT NULL,
    determination_version INTEGER NOT NULL CHECK (determination_version >= 1),
    PRIMARY KEY (entry_no, determination_id)
) STRICT;

CREATE TABLE change_decision_trial (
    entry_no INTEGER NOT NULL REFERENCES change_decision (entry_no),
    trial_id TEXT NOT NULL,
    trial_version INTEGER NOT NULL CHECK (trial_version >= 1),
    PRIMARY KEY (entry_no, trial_id)
) STRICT;

CREATE TABLE change_decision_calibration (
    entry_no INTEGER NOT NULL REFERENCES change_decision (entry_no),
    calibration_id TEXT NOT NULL,
    calibration_version INTEGER NOT NULL CHECK (calibration_version >= 1),
    PRIMARY KEY (entry_no, calibration_id)
) STRICT;

ALTER TABLE factor_issue ADD COLUMN kept_by TEXT;

ALTER TABLE factor_issue ADD COLUMN expanded_u_pct TEXT;

ALTER TABLE factor_issue ADD COLUMN coverage_factor TEXT;

ALTER TABLE factor_issue ADD COLUMN u_origin TEXT CHECK (u_origin IN ('imported', 'confirmed'));

CREATE TRIGGER change_decision_is_not_changed BEFORE UPDATE ON change_decision
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_is_not_removed BEFORE DELETE ON change_decision
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_is_not_replaced BEFORE INSERT ON change_decision
WHEN EXISTS (SELECT 1 FROM change_decision WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER change_decision_source_is_not_changed BEFORE UPDATE ON change_decision_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_source_is_not_removed BEFORE DELETE ON change_decision_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_source_is_not_replaced BEFORE INSERT ON change_decision_source
WHEN EXISTS (SELECT 1 FROM change_decision_source WHERE entry_no = NEW.entry_no AND source_id = NEW.source_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER change_decision_before_is_not_changed BEFORE UPDATE ON change_decision_before
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_before_is_not_removed BEFORE DELETE ON change_decision_before
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_before_is_not_replaced BEFORE INSERT ON change_decision_before
WHEN EXISTS (SELECT 1 FROM change_decision_before WHERE entry_no = NEW.entry_no AND determination_id = NEW.determination_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER change_decision_after_is_not_changed BEFORE UPDATE ON change_decision_after
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_after_is_not_removed BEFORE DELETE ON change_decision_after
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_after_is_not_replaced BEFORE INSERT ON change_decision_after
WHEN EXISTS (SELECT 1 FROM change_decision_after WHERE entry_no = NEW.entry_no AND determination_id = NEW.determination_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER change_decision_trial_is_not_changed BEFORE UPDATE ON change_decision_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_trial_is_not_removed BEFORE DELETE ON change_decision_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_trial_is_not_replaced BEFORE INSERT ON change_decision_trial
WHEN EXISTS (SELECT 1 FROM change_decision_trial WHERE entry_no = NEW.entry_no AND trial_id = NEW.trial_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER change_decision_calibration_is_not_changed BEFORE UPDATE ON change_decision_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER change_decision_calibration_is_not_removed BEFORE DELETE ON change_decision_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER change_decision_calibration_is_not_replaced BEFORE INSERT ON change_decision_calibration
WHEN EXISTS (SELECT 1 FROM change_decision_calibration WHERE entry_no = NEW.entry_no AND calibration_id = NEW.calibration_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
