-- SQLite: a draft of a group's factor names the group and the mix that was tested, and one that a decision keeps names the decision;
-- drafts that were kept before name neither.

ALTER TABLE factor_proposal ADD COLUMN group_id TEXT;

ALTER TABLE factor_proposal ADD COLUMN group_version INTEGER CHECK (group_version >= 1);

ALTER TABLE factor_proposal ADD COLUMN tested_mix_id TEXT;

ALTER TABLE factor_proposal ADD COLUMN kept_by TEXT;
