-- SQLite: what was kept is neither changed nor removed, whatever program asks for it.

CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER entry_is_not_removed BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER laboratory_is_not_changed BEFORE UPDATE ON laboratory
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER laboratory_is_not_removed BEFORE DELETE ON laboratory
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER profile_is_not_changed BEFORE UPDATE ON profile
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER profile_is_not_removed BEFORE DELETE ON profile
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER profile_figure_is_not_changed BEFORE UPDATE ON profile_figure
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER profile_figure_is_not_removed BEFORE DELETE ON profile_figure
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER source_is_not_changed BEFORE UPDATE ON source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER source_is_not_removed BEFORE DELETE ON source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER meter_is_not_changed BEFORE UPDATE ON meter
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER meter_is_not_removed BEFORE DELETE ON meter
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER mix_is_not_changed BEFORE UPDATE ON mix
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER mix_is_not_removed BEFORE DELETE ON mix
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER mix_constituent_is_not_changed BEFORE UPDATE ON mix_constituent
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER mix_constituent_is_not_removed BEFORE DELETE ON mix_constituent
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER determination_is_not_changed BEFORE UPDATE ON determination
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER determination_is_not_removed BEFORE DELETE ON determination
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER trial_is_not_changed BEFORE UPDATE ON trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER trial_is_not_removed BEFORE DELETE ON trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_is_not_changed BEFORE UPDATE ON factor_issue
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_is_not_removed BEFORE DELETE ON factor_issue
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER determination_source_is_not_changed BEFORE UPDATE ON determination_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER determination_source_is_not_removed BEFORE DELETE ON determination_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_source_is_not_changed BEFORE UPDATE ON factor_issue_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_source_is_not_removed BEFORE DELETE ON factor_issue_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER card_print_is_not_changed BEFORE UPDATE ON card_print
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER card_print_is_not_removed BEFORE DELETE ON card_print
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;
