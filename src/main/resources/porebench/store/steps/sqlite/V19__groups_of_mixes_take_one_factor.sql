-- SQLite: groups of mixes of like proportions, which take one factor. A revision names the group whose factor it is, and the mix on
-- which it was found where that is another than its own; revisions that were kept before name none.

CREATE TABLE factor_group (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    group_id TEXT NOT NULL,
    title TEXT NOT NULL,
    tested_mix_id TEXT NOT NULL,
    tolerance_pct TEXT NOT NULL,
    reason TEXT NOT NULL
) STRICT;

CREATE TABLE factor_group_member (
    entry_no INTEGER NOT NULL REFERENCES factor_group (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    mix_id TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE INDEX factor_group_member_by_mix ON factor_group_member (mix_id);

ALTER TABLE factor_issue ADD COLUMN group_id TEXT;

ALTER TABLE factor_issue ADD COLUMN group_version INTEGER CHECK (group_version >= 1);

ALTER TABLE factor_issue ADD COLUMN tested_mix_id TEXT;

CREATE INDEX factor_issue_by_group ON factor_issue (group_id) WHERE group_id IS NOT NULL;

CREATE INDEX factor_issue_by_tested_mix ON factor_issue (tested_mix_id) WHERE tested_mix_id IS NOT NULL;

CREATE TRIGGER factor_group_is_not_changed BEFORE UPDATE ON factor_group
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_group_is_not_removed BEFORE DELETE ON factor_group
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_group_is_not_replaced BEFORE INSERT ON factor_group
WHEN EXISTS (SELECT 1 FROM factor_group WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_group_member_is_not_changed BEFORE UPDATE ON factor_group_member
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_group_member_is_not_removed BEFORE DELETE ON factor_group_member
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_group_member_is_not_replaced BEFORE INSERT ON factor_group_member
WHEN EXISTS (SELECT 1 FROM factor_group_member WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
