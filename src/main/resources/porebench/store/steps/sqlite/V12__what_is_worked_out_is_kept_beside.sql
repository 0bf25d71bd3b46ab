-- What was worked out of the entries, so that it need not be each time. It is no part of the history: these tables may be changed,
-- emptied and made anew, and a full check compares them with the entries.

CREATE TABLE summary_state (
    edition INTEGER PRIMARY KEY,
    up_to INTEGER NOT NULL CHECK (up_to >= 1)
) STRICT;

CREATE TABLE register_summary (
    mix_id TEXT PRIMARY KEY,
    said TEXT NOT NULL
) STRICT;

CREATE TABLE trials_summary (
    mix_id TEXT PRIMARY KEY,
    said TEXT NOT NULL
) STRICT;

-- How a name looks to a person, so that a new one is held against those that look alike and not against all.
CREATE TABLE name_look (
    kind TEXT NOT NULL,
    look TEXT NOT NULL,
    record_id TEXT NOT NULL,
    PRIMARY KEY (kind, look, record_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE name_look_state (
    edition INTEGER PRIMARY KEY,
    up_to INTEGER NOT NULL CHECK (up_to >= 1)
) STRICT;

CREATE INDEX factor_issue_source_by_source ON factor_issue_source (source_id);

CREATE INDEX mix_by_profile ON mix (profile_id);
