-- For tests only: what a step of a later version may look like.
ALTER TABLE source ADD COLUMN permit TEXT;
