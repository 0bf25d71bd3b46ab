-- The plant that makes a mix, by which a mix is found. Mixes that were kept before say nothing.

ALTER TABLE mix ADD COLUMN plant TEXT;
