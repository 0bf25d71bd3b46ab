-- What a factor rests on: the versions of trials and calibrations, the doubts somebody took on, and where it was decided.
--
-- A column added to a table is null in the rows that were there before, and where it says nothing.

-- here when null; imported: not verified by this laboratory; confirmed: came in and was confirmed on trials that stand here.
ALTER TABLE factor_issue ADD COLUMN origin TEXT CHECK (origin IN ('imported', 'confirmed'));

ALTER TABLE factor_issue ADD COLUMN simulated INTEGER CHECK (simulated IN (0, 1));

ALTER TABLE determination ADD COLUMN simulated INTEGER CHECK (simulated IN (0, 1));

CREATE TABLE factor_issue_trial (
    entry_no INTEGER NOT NULL REFERENCES factor_issue (entry_no),
    trial_id TEXT NOT NULL,
    trial_version INTEGER NOT NULL CHECK (trial_version >= 1),
    PRIMARY KEY (entry_no, trial_id)
);

CREATE TABLE factor_issue_calibration (
    entry_no INTEGER NOT NULL REFERENCES factor_issue (entry_no),
    calibration_id TEXT NOT NULL,
    calibration_version INTEGER NOT NULL CHECK (calibration_version >= 1),
    PRIMARY KEY (entry_no, calibration_id)
);

-- A doubt without a trial is about the determination as a whole; words are what the person read.
CREATE TABLE factor_issue_doubt (
    entry_no INTEGER NOT NULL REFERENCES factor_issue (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    trial_id TEXT,
    code TEXT NOT NULL,
    words TEXT NOT NULL,
    taken_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
);

CREATE INDEX trial_by_determination ON trial (determination_id);
