-- SQLite: photos of the signed sheets of trials. Their bytes stand in a table of their own, once however many trials are on a sheet,
-- so that what asks for records never reads them; their SHA-256 is a column of the photo, and so part of the chain.

CREATE TABLE photo_content (
    sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
    content BLOB NOT NULL
) STRICT;

CREATE TABLE sheet_photo (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    photo_id TEXT NOT NULL,
    trial_id TEXT NOT NULL,
    file_name TEXT NOT NULL,
    media_type TEXT NOT NULL CHECK (media_type IN ('jpeg', 'png')),
    byte_count INTEGER NOT NULL CHECK (byte_count >= 1),
    sha256 TEXT NOT NULL REFERENCES photo_content (sha256),
    withdrawn INTEGER CHECK (withdrawn = 1)
) STRICT;

CREATE INDEX sheet_photo_by_trial ON sheet_photo (trial_id);

CREATE INDEX sheet_photo_by_content ON sheet_photo (sha256);

CREATE TRIGGER photo_content_is_not_changed BEFORE UPDATE ON photo_content
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER photo_content_is_not_removed BEFORE DELETE ON photo_content
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER photo_content_is_not_replaced BEFORE INSERT ON photo_content
WHEN EXISTS (SELECT 1 FROM photo_content WHERE sha256 = NEW.sha256)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER sheet_photo_is_not_changed BEFORE UPDATE ON sheet_photo
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER sheet_photo_is_not_removed BEFORE DELETE ON sheet_photo
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER sheet_photo_is_not_replaced BEFORE INSERT ON sheet_photo
WHEN EXISTS (SELECT 1 FROM sheet_photo WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
