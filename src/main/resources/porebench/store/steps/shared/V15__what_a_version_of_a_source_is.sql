-- A source says more of itself, and what a version of it is: a change from a day on, a correction, or the withdrawal of a change.
-- Sources that were kept before say nothing of it.

ALTER TABLE source ADD COLUMN producer TEXT;

ALTER TABLE source ADD COLUMN product TEXT;

ALTER TABLE source ADD COLUMN size TEXT;

ALTER TABLE source ADD COLUMN retained_37_5mm_pct TEXT;

ALTER TABLE source ADD COLUMN step TEXT CHECK (step IN ('changed', 'corrected', 'withdrawn'));

ALTER TABLE source ADD COLUMN changed_on TEXT;

ALTER TABLE source ADD COLUMN reason TEXT;
