-- SQLite: what was kept of a factor's evidence is neither changed nor removed, whatever program asks for it.

CREATE TRIGGER factor_issue_trial_is_not_changed BEFORE UPDATE ON factor_issue_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_trial_is_not_removed BEFORE DELETE ON factor_issue_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_calibration_is_not_changed BEFORE UPDATE ON factor_issue_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_calibration_is_not_removed BEFORE DELETE ON factor_issue_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_doubt_is_not_changed BEFORE UPDATE ON factor_issue_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_doubt_is_not_removed BEFORE DELETE ON factor_issue_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;
