-- What a laboratory keeps. Every row is one version of a record and is never changed.
--
-- Numbers that were typed are text, so that "7.050" stays "7.050"; their unit is in the column's name or in the column
-- beside it. Dates and times are ISO 8601 text; at_utc is UTC, tested_at is by the laboratory's clock. Flags are 0 or 1.
-- A column of text may be empty where nothing was said; a column that is null was not recorded.

-- The append-only history: one entry a version, each with the hash of the one before.
CREATE TABLE entry (
    entry_no INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL,
    version INTEGER NOT NULL CHECK (version >= 1),
    who TEXT NOT NULL,
    at_utc TEXT NOT NULL,
    why TEXT NOT NULL,
    content_hash TEXT NOT NULL,
    previous_hash TEXT NOT NULL,
    hash TEXT NOT NULL,
    UNIQUE (kind, record_id, version)
);

-- The newest version of every record.
CREATE VIEW newest_entry AS
SELECT e.entry_no, e.kind, e.record_id, e.version, e.who, e.at_utc, e.why
FROM entry e
WHERE e.version = (SELECT max(n.version) FROM entry n WHERE n.kind = e.kind AND n.record_id = e.record_id);

CREATE TABLE laboratory (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    name TEXT NOT NULL,
    address TEXT NOT NULL
);

-- A laboratory's own copy of a profile.
CREATE TABLE profile (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    profile_id TEXT NOT NULL,
    title TEXT NOT NULL,
    edition TEXT NOT NULL,
    based_on TEXT
);

CREATE TABLE profile_figure (
    entry_no INTEGER NOT NULL REFERENCES profile (entry_no),
    figure TEXT NOT NULL,
    stated TEXT NOT NULL,
    clause TEXT NOT NULL,
    mark TEXT NOT NULL,
    PRIMARY KEY (entry_no, figure)
);

CREATE TABLE source (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    source_id TEXT NOT NULL,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    place TEXT NOT NULL,
    ledge TEXT NOT NULL,
    relative_density TEXT,
    absorption_pct TEXT,
    remarks TEXT NOT NULL
);

CREATE TABLE meter (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    meter_id TEXT NOT NULL,
    meter_type TEXT NOT NULL,
    serial TEXT NOT NULL,
    bowl_volume TEXT NOT NULL,
    bowl_volume_unit TEXT NOT NULL,
    division_pct TEXT NOT NULL,
    scale_top_pct TEXT NOT NULL,
    in_service INTEGER NOT NULL CHECK (in_service IN (0, 1)),
    remarks TEXT NOT NULL
);

-- A mix states its batch volume, or a measured density, or neither: then the constituents give the volume.
CREATE TABLE mix (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    mix_id TEXT NOT NULL,
    title TEXT NOT NULL,
    batch_volume TEXT,
    batch_volume_unit TEXT,
    batch_density TEXT,
    batch_density_unit TEXT,
    target_air_pct TEXT NOT NULL,
    wet_sieved INTEGER NOT NULL CHECK (wet_sieved IN (0, 1)),
    soak_minutes TEXT,
    air_tolerance_pct TEXT,
    profile_id TEXT NOT NULL,
    remarks TEXT NOT NULL,
    CHECK (batch_volume IS NULL OR batch_density IS NULL)
);

CREATE TABLE mix_constituent (
    entry_no INTEGER NOT NULL REFERENCES mix (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    source_id TEXT,
    mass TEXT NOT NULL,
    mass_unit TEXT NOT NULL,
    moisture_state TEXT NOT NULL,
    absorption_pct TEXT,
    moisture_pct TEXT,
    relative_density TEXT,
    retained_37_5mm_pct TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
);

CREATE TABLE determination (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    determination_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    mix_version INTEGER NOT NULL CHECK (mix_version >= 1),
    opened_on TEXT NOT NULL,
    purpose TEXT NOT NULL
);

CREATE TABLE determination_source (
    entry_no INTEGER NOT NULL REFERENCES determination (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL,
    PRIMARY KEY (entry_no, source_id)
);

CREATE TABLE trial (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    trial_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    determination_id TEXT NOT NULL,
    tested_at TEXT NOT NULL,
    operator TEXT NOT NULL,
    meter_id TEXT NOT NULL,
    meter_type TEXT NOT NULL,
    bowl_volume TEXT NOT NULL,
    bowl_volume_unit TEXT NOT NULL,
    fine_mass TEXT,
    fine_mass_unit TEXT,
    coarse_mass TEXT,
    coarse_mass_unit TEXT,
    soak_minutes TEXT,
    water_temp_c TEXT,
    withdrawn TEXT,
    withdrawn_unit TEXT,
    gauge_pct TEXT,
    h1_pct TEXT,
    h2_pct TEXT,
    leak INTEGER NOT NULL CHECK (leak IN (0, 1)),
    remarks TEXT NOT NULL,
    kept_because TEXT,
    struck_because TEXT
);

CREATE TABLE factor_issue (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    mix_id TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 1),
    action TEXT NOT NULL,
    factor_pct TEXT NOT NULL,
    determination_id TEXT NOT NULL,
    meter_type TEXT NOT NULL,
    in_force_from TEXT NOT NULL,
    recheck_by TEXT NOT NULL,
    issued_by TEXT NOT NULL,
    approved_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    mix_version INTEGER NOT NULL,
    profile_id TEXT NOT NULL
);

CREATE TABLE factor_issue_source (
    entry_no INTEGER NOT NULL REFERENCES factor_issue (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL,
    PRIMARY KEY (entry_no, source_id)
);

CREATE TABLE card_print (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
    mix_id TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 1),
    print_number INTEGER NOT NULL CHECK (print_number >= 1),
    paper TEXT NOT NULL,
    destination TEXT NOT NULL
);
