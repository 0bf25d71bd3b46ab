-- For tests only: the first statement would do, the second cannot.
ALTER TABLE source ADD COLUMN permit TEXT;
INSERT INTO a_table_that_is_not_there (entry_no) VALUES (1);
