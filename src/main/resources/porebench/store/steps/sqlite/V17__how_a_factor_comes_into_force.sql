-- SQLite: from which hour of its first day a factor holds, under which standing conditions, and who checked it. Factors that were kept
-- before say nothing of it: they hold from the start of their first day.

ALTER TABLE factor_issue ADD COLUMN in_force_at TEXT;

ALTER TABLE factor_issue ADD COLUMN conditions TEXT;

ALTER TABLE factor_issue ADD COLUMN checked_by TEXT;
