-- SQLite: what happened to each factor card after it was printed, and when it was printed.

CREATE TABLE card_step (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    mix_id TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 1),
    print_number INTEGER NOT NULL CHECK (print_number >= 1),
    step_number INTEGER NOT NULL CHECK (step_number >= 1),
    act TEXT NOT NULL CHECK (act IN ('handed-out', 'acknowledged', 'returned', 'destroyed', 'lost', 'found')),
    holder_kind TEXT CHECK (holder_kind IN ('truck', 'crew', 'plant', 'person')),
    holder TEXT,
    happened_at TEXT NOT NULL,
    said_by TEXT NOT NULL,
    remark TEXT NOT NULL
) STRICT;

CREATE INDEX card_step_by_mix ON card_step (mix_id);

ALTER TABLE card_print ADD COLUMN printed_at TEXT;

CREATE TRIGGER card_step_is_not_changed BEFORE UPDATE ON card_step
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER card_step_is_not_removed BEFORE DELETE ON card_step
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER card_step_is_not_replaced BEFORE INSERT ON card_step
WHEN EXISTS (SELECT 1 FROM card_step WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
