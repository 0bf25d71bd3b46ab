-- SQLite: every table is made anew as a strict one, which refuses a text where a number stands and a number where a text
-- stands; a quantity and its unit are there together or not at all; and what was kept is not replaced either.
--
-- SQLite cannot make a table strict in place. Each is made beside the old one and filled from it, the parts after what they
-- belong to; the old ones go in the opposite order, so that no row ever refers to nothing; then the new ones take their names,
-- and with them the references. Nothing that enters a hash changes.

DROP VIEW newest_entry;

CREATE TABLE new_entry (
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
    UNIQUE (kind, record_id, version),
    CHECK (entry_no >= 1),
    CHECK (kind <> '' AND record_id <> '' AND who <> '' AND why <> ''),
    CHECK (length(content_hash) = 64 AND length(previous_hash) = 64 AND length(hash) = 64)
) STRICT;

CREATE TABLE new_laboratory (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    name TEXT NOT NULL,
    address TEXT NOT NULL,
    training INTEGER CHECK (training IN (0, 1))
) STRICT;

CREATE TABLE new_profile (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    profile_id TEXT NOT NULL,
    title TEXT NOT NULL,
    edition TEXT NOT NULL,
    based_on TEXT
) STRICT;

CREATE TABLE new_profile_figure (
    entry_no INTEGER NOT NULL REFERENCES new_profile (entry_no),
    figure TEXT NOT NULL,
    stated TEXT NOT NULL,
    clause TEXT NOT NULL,
    mark TEXT NOT NULL,
    PRIMARY KEY (entry_no, figure)
) STRICT;

CREATE TABLE new_source (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    source_id TEXT NOT NULL,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    place TEXT NOT NULL,
    ledge TEXT NOT NULL,
    relative_density TEXT,
    absorption_pct TEXT,
    remarks TEXT NOT NULL
) STRICT;

CREATE TABLE new_meter (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    meter_id TEXT NOT NULL,
    meter_type TEXT NOT NULL,
    serial TEXT NOT NULL,
    bowl_volume TEXT NOT NULL,
    bowl_volume_unit TEXT NOT NULL,
    division_pct TEXT NOT NULL,
    scale_top_pct TEXT NOT NULL,
    in_service INTEGER NOT NULL CHECK (in_service IN (0, 1)),
    remarks TEXT NOT NULL
) STRICT;

CREATE TABLE new_mix (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
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
    CHECK (batch_volume IS NULL OR batch_density IS NULL),
    CHECK ((batch_volume IS NULL) = (batch_volume_unit IS NULL)),
    CHECK ((batch_density IS NULL) = (batch_density_unit IS NULL))
) STRICT;

CREATE TABLE new_mix_constituent (
    entry_no INTEGER NOT NULL REFERENCES new_mix (entry_no),
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
) STRICT;

CREATE TABLE new_determination (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    determination_id TEXT NOT NULL,
    mix_id TEXT NOT NULL,
    mix_version INTEGER NOT NULL CHECK (mix_version >= 1),
    opened_on TEXT NOT NULL,
    purpose TEXT NOT NULL,
    simulated INTEGER CHECK (simulated IN (0, 1))
) STRICT;

CREATE TABLE new_determination_source (
    entry_no INTEGER NOT NULL REFERENCES new_determination (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL,
    PRIMARY KEY (entry_no, source_id)
) STRICT;

CREATE TABLE new_trial (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
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
    struck_because TEXT,
    simulated INTEGER CHECK (simulated IN (0, 1)),
    CHECK ((fine_mass IS NULL) = (fine_mass_unit IS NULL)),
    CHECK ((coarse_mass IS NULL) = (coarse_mass_unit IS NULL)),
    CHECK ((withdrawn IS NULL) = (withdrawn_unit IS NULL))
) STRICT;

CREATE TABLE new_factor_issue (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
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
    profile_id TEXT NOT NULL,
    override_by TEXT,
    override_reason TEXT,
    origin TEXT CHECK (origin IN ('imported', 'confirmed')),
    simulated INTEGER CHECK (simulated IN (0, 1))
) STRICT;

CREATE TABLE new_factor_issue_source (
    entry_no INTEGER NOT NULL REFERENCES new_factor_issue (entry_no),
    source_id TEXT NOT NULL,
    source_version INTEGER NOT NULL,
    PRIMARY KEY (entry_no, source_id)
) STRICT;

CREATE TABLE new_card_print (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    mix_id TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 1),
    print_number INTEGER NOT NULL CHECK (print_number >= 1),
    paper TEXT NOT NULL,
    destination TEXT NOT NULL
) STRICT;

CREATE TABLE new_meter_calibration (
    entry_no INTEGER PRIMARY KEY REFERENCES new_entry (entry_no),
    calibration_id TEXT NOT NULL,
    meter_id TEXT NOT NULL,
    meter_type TEXT NOT NULL,
    calibrated_on TEXT NOT NULL,
    made_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    elevation_m TEXT,
    buoyancy_corrected INTEGER CHECK (buoyancy_corrected IN (0, 1)),
    air_temp_c TEXT,
    air_pressure_kpa TEXT,
    diameter_mm TEXT,
    height_mm TEXT,
    dial_checked INTEGER NOT NULL CHECK (dial_checked IN (0, 1)),
    vessel_water TEXT,
    vessel_water_unit TEXT,
    dial_water_temp_c TEXT,
    initial_line_pct TEXT,
    leak_marks TEXT,
    chamber TEXT,
    chamber_unit TEXT,
    initial_pressure TEXT,
    initial_pressure_unit TEXT,
    column_vessel_water TEXT,
    column_vessel_water_unit TEXT,
    bowl_water TEXT,
    bowl_water_unit TEXT,
    expansion_pct TEXT,
    working_pressure TEXT,
    working_pressure_unit TEXT,
    remarks TEXT NOT NULL,
    CHECK ((vessel_water IS NULL) = (vessel_water_unit IS NULL)),
    CHECK ((chamber IS NULL) = (chamber_unit IS NULL)),
    CHECK ((initial_pressure IS NULL) = (initial_pressure_unit IS NULL)),
    CHECK ((column_vessel_water IS NULL) = (column_vessel_water_unit IS NULL)),
    CHECK ((bowl_water IS NULL) = (bowl_water_unit IS NULL)),
    CHECK ((working_pressure IS NULL) = (working_pressure_unit IS NULL))
) STRICT;

CREATE TABLE new_bowl_fill (
    entry_no INTEGER NOT NULL REFERENCES new_meter_calibration (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    empty_mass TEXT NOT NULL,
    empty_mass_unit TEXT NOT NULL,
    plate_mass TEXT NOT NULL,
    plate_mass_unit TEXT NOT NULL,
    full_mass TEXT NOT NULL,
    full_mass_unit TEXT NOT NULL,
    water_temp_c TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE TABLE new_dial_point (
    entry_no INTEGER NOT NULL REFERENCES new_meter_calibration (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    withdrawn TEXT NOT NULL,
    withdrawn_unit TEXT NOT NULL,
    gauge_pct TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

CREATE TABLE new_factor_issue_trial (
    entry_no INTEGER NOT NULL REFERENCES new_factor_issue (entry_no),
    trial_id TEXT NOT NULL,
    trial_version INTEGER NOT NULL CHECK (trial_version >= 1),
    PRIMARY KEY (entry_no, trial_id)
) STRICT;

CREATE TABLE new_factor_issue_calibration (
    entry_no INTEGER NOT NULL REFERENCES new_factor_issue (entry_no),
    calibration_id TEXT NOT NULL,
    calibration_version INTEGER NOT NULL CHECK (calibration_version >= 1),
    PRIMARY KEY (entry_no, calibration_id)
) STRICT;

CREATE TABLE new_factor_issue_doubt (
    entry_no INTEGER NOT NULL REFERENCES new_factor_issue (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    trial_id TEXT,
    code TEXT NOT NULL,
    words TEXT NOT NULL,
    taken_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
) STRICT;

INSERT INTO new_entry (
    entry_no, kind, record_id, version, who, at_utc, why, content_hash, previous_hash, hash
)
SELECT
    entry_no, kind, record_id, version, who, at_utc, why, content_hash, previous_hash, hash
FROM entry
ORDER BY rowid;

INSERT INTO new_laboratory (
    entry_no, name, address, training
)
SELECT
    entry_no, name, address, training
FROM laboratory
ORDER BY rowid;

INSERT INTO new_profile (
    entry_no, profile_id, title, edition, based_on
)
SELECT
    entry_no, profile_id, title, edition, based_on
FROM profile
ORDER BY rowid;

INSERT INTO new_profile_figure (
    entry_no, figure, stated, clause, mark
)
SELECT
    entry_no, figure, stated, clause, mark
FROM profile_figure
ORDER BY rowid;

INSERT INTO new_source (
    entry_no, source_id, name, role, place, ledge, relative_density, absorption_pct, remarks
)
SELECT
    entry_no, source_id, name, role, place, ledge, relative_density, absorption_pct, remarks
FROM source
ORDER BY rowid;

INSERT INTO new_meter (
    entry_no, meter_id, meter_type, serial, bowl_volume, bowl_volume_unit, division_pct, scale_top_pct, in_service,
    remarks
)
SELECT
    entry_no, meter_id, meter_type, serial, bowl_volume, bowl_volume_unit, division_pct, scale_top_pct, in_service,
    remarks
FROM meter
ORDER BY rowid;

INSERT INTO new_mix (
    entry_no, mix_id, title, batch_volume, batch_volume_unit, batch_density, batch_density_unit, target_air_pct,
    wet_sieved, soak_minutes, air_tolerance_pct, profile_id, remarks
)
SELECT
    entry_no, mix_id, title, batch_volume, batch_volume_unit, batch_density, batch_density_unit, target_air_pct,
    wet_sieved, soak_minutes, air_tolerance_pct, profile_id, remarks
FROM mix
ORDER BY rowid;

INSERT INTO new_mix_constituent (
    entry_no, position, name, role, source_id, mass, mass_unit, moisture_state, absorption_pct, moisture_pct,
    relative_density, retained_37_5mm_pct
)
SELECT
    entry_no, position, name, role, source_id, mass, mass_unit, moisture_state, absorption_pct, moisture_pct,
    relative_density, retained_37_5mm_pct
FROM mix_constituent
ORDER BY rowid;

INSERT INTO new_determination (
    entry_no, determination_id, mix_id, mix_version, opened_on, purpose, simulated
)
SELECT
    entry_no, determination_id, mix_id, mix_version, opened_on, purpose, simulated
FROM determination
ORDER BY rowid;

INSERT INTO new_determination_source (
    entry_no, source_id, source_version
)
SELECT
    entry_no, source_id, source_version
FROM determination_source
ORDER BY rowid;

INSERT INTO new_trial (
    entry_no, trial_id, mix_id, determination_id, tested_at, operator, meter_id, meter_type, bowl_volume,
    bowl_volume_unit, fine_mass, fine_mass_unit, coarse_mass, coarse_mass_unit, soak_minutes, water_temp_c,
    withdrawn, withdrawn_unit, gauge_pct, h1_pct, h2_pct, leak, remarks, kept_because, struck_because, simulated
)
SELECT
    entry_no, trial_id, mix_id, determination_id, tested_at, operator, meter_id, meter_type, bowl_volume,
    bowl_volume_unit, fine_mass, fine_mass_unit, coarse_mass, coarse_mass_unit, soak_minutes, water_temp_c,
    withdrawn, withdrawn_unit, gauge_pct, h1_pct, h2_pct, leak, remarks, kept_because, struck_because, simulated
FROM trial
ORDER BY rowid;

INSERT INTO new_factor_issue (
    entry_no, mix_id, revision, action, factor_pct, determination_id, meter_type, in_force_from, recheck_by,
    issued_by, approved_by, reason, mix_version, profile_id, override_by, override_reason, origin, simulated
)
SELECT
    entry_no, mix_id, revision, action, factor_pct, determination_id, meter_type, in_force_from, recheck_by,
    issued_by, approved_by, reason, mix_version, profile_id, override_by, override_reason, origin, simulated
FROM factor_issue
ORDER BY rowid;

INSERT INTO new_factor_issue_source (
    entry_no, source_id, source_version
)
SELECT
    entry_no, source_id, source_version
FROM factor_issue_source
ORDER BY rowid;

INSERT INTO new_card_print (
    entry_no, mix_id, revision, print_number, paper, destination
)
SELECT
    entry_no, mix_id, revision, print_number, paper, destination
FROM card_print
ORDER BY rowid;

INSERT INTO new_meter_calibration (
    entry_no, calibration_id, meter_id, meter_type, calibrated_on, made_by, reason, elevation_m, buoyancy_corrected,
    air_temp_c, air_pressure_kpa, diameter_mm, height_mm, dial_checked, vessel_water, vessel_water_unit,
    dial_water_temp_c, initial_line_pct, leak_marks, chamber, chamber_unit, initial_pressure, initial_pressure_unit,
    column_vessel_water, column_vessel_water_unit, bowl_water, bowl_water_unit, expansion_pct, working_pressure,
    working_pressure_unit, remarks
)
SELECT
    entry_no, calibration_id, meter_id, meter_type, calibrated_on, made_by, reason, elevation_m, buoyancy_corrected,
    air_temp_c, air_pressure_kpa, diameter_mm, height_mm, dial_checked, vessel_water, vessel_water_unit,
    dial_water_temp_c, initial_line_pct, leak_marks, chamber, chamber_unit, initial_pressure, initial_pressure_unit,
    column_vessel_water, column_vessel_water_unit, bowl_water, bowl_water_unit, expansion_pct, working_pressure,
    working_pressure_unit, remarks
FROM meter_calibration
ORDER BY rowid;

INSERT INTO new_bowl_fill (
    entry_no, position, empty_mass, empty_mass_unit, plate_mass, plate_mass_unit, full_mass, full_mass_unit,
    water_temp_c
)
SELECT
    entry_no, position, empty_mass, empty_mass_unit, plate_mass, plate_mass_unit, full_mass, full_mass_unit,
    water_temp_c
FROM bowl_fill
ORDER BY rowid;

INSERT INTO new_dial_point (
    entry_no, position, withdrawn, withdrawn_unit, gauge_pct
)
SELECT
    entry_no, position, withdrawn, withdrawn_unit, gauge_pct
FROM dial_point
ORDER BY rowid;

INSERT INTO new_factor_issue_trial (
    entry_no, trial_id, trial_version
)
SELECT
    entry_no, trial_id, trial_version
FROM factor_issue_trial
ORDER BY rowid;

INSERT INTO new_factor_issue_calibration (
    entry_no, calibration_id, calibration_version
)
SELECT
    entry_no, calibration_id, calibration_version
FROM factor_issue_calibration
ORDER BY rowid;

INSERT INTO new_factor_issue_doubt (
    entry_no, position, trial_id, code, words, taken_by, reason
)
SELECT
    entry_no, position, trial_id, code, words, taken_by, reason
FROM factor_issue_doubt
ORDER BY rowid;

DROP TABLE profile_figure;
DROP TABLE mix_constituent;
DROP TABLE determination_source;
DROP TABLE factor_issue_source;
DROP TABLE bowl_fill;
DROP TABLE dial_point;
DROP TABLE factor_issue_trial;
DROP TABLE factor_issue_calibration;
DROP TABLE factor_issue_doubt;
DROP TABLE laboratory;
DROP TABLE profile;
DROP TABLE source;
DROP TABLE meter;
DROP TABLE mix;
DROP TABLE determination;
DROP TABLE trial;
DROP TABLE factor_issue;
DROP TABLE card_print;
DROP TABLE meter_calibration;
DROP TABLE entry;

ALTER TABLE new_entry RENAME TO entry;
ALTER TABLE new_laboratory RENAME TO laboratory;
ALTER TABLE new_profile RENAME TO profile;
ALTER TABLE new_source RENAME TO source;
ALTER TABLE new_meter RENAME TO meter;
ALTER TABLE new_mix RENAME TO mix;
ALTER TABLE new_determination RENAME TO determination;
ALTER TABLE new_trial RENAME TO trial;
ALTER TABLE new_factor_issue RENAME TO factor_issue;
ALTER TABLE new_card_print RENAME TO card_print;
ALTER TABLE new_meter_calibration RENAME TO meter_calibration;
ALTER TABLE new_profile_figure RENAME TO profile_figure;
ALTER TABLE new_mix_constituent RENAME TO mix_constituent;
ALTER TABLE new_determination_source RENAME TO determination_source;
ALTER TABLE new_factor_issue_source RENAME TO factor_issue_source;
ALTER TABLE new_bowl_fill RENAME TO bowl_fill;
ALTER TABLE new_dial_point RENAME TO dial_point;
ALTER TABLE new_factor_issue_trial RENAME TO factor_issue_trial;
ALTER TABLE new_factor_issue_calibration RENAME TO factor_issue_calibration;
ALTER TABLE new_factor_issue_doubt RENAME TO factor_issue_doubt;

CREATE INDEX trial_by_determination ON trial (determination_id);

-- The newest version of every record.
CREATE VIEW newest_entry AS
SELECT e.entry_no, e.kind, e.record_id, e.version, e.who, e.at_utc, e.why
FROM entry e
WHERE e.version = (SELECT max(n.version) FROM entry n WHERE n.kind = e.kind AND n.record_id = e.record_id);

CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER entry_is_not_removed BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER entry_is_not_replaced BEFORE INSERT ON entry
WHEN NEW.entry_no <> (SELECT coalesce(max(entry_no), 0) + 1 FROM entry)
    OR EXISTS (
        SELECT 1 FROM entry WHERE kind = NEW.kind AND record_id = NEW.record_id AND version = NEW.version
    )
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER laboratory_is_not_changed BEFORE UPDATE ON laboratory
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER laboratory_is_not_removed BEFORE DELETE ON laboratory
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER laboratory_is_not_replaced BEFORE INSERT ON laboratory
WHEN EXISTS (SELECT 1 FROM laboratory WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER profile_is_not_changed BEFORE UPDATE ON profile
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER profile_is_not_removed BEFORE DELETE ON profile
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER profile_is_not_replaced BEFORE INSERT ON profile
WHEN EXISTS (SELECT 1 FROM profile WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER profile_figure_is_not_changed BEFORE UPDATE ON profile_figure
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER profile_figure_is_not_removed BEFORE DELETE ON profile_figure
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER profile_figure_is_not_replaced BEFORE INSERT ON profile_figure
WHEN EXISTS (SELECT 1 FROM profile_figure WHERE entry_no = NEW.entry_no AND figure = NEW.figure)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER source_is_not_changed BEFORE UPDATE ON source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER source_is_not_removed BEFORE DELETE ON source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER source_is_not_replaced BEFORE INSERT ON source
WHEN EXISTS (SELECT 1 FROM source WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER meter_is_not_changed BEFORE UPDATE ON meter
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER meter_is_not_removed BEFORE DELETE ON meter
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER meter_is_not_replaced BEFORE INSERT ON meter
WHEN EXISTS (SELECT 1 FROM meter WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER mix_is_not_changed BEFORE UPDATE ON mix
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER mix_is_not_removed BEFORE DELETE ON mix
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER mix_is_not_replaced BEFORE INSERT ON mix
WHEN EXISTS (SELECT 1 FROM mix WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER mix_constituent_is_not_changed BEFORE UPDATE ON mix_constituent
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER mix_constituent_is_not_removed BEFORE DELETE ON mix_constituent
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER mix_constituent_is_not_replaced BEFORE INSERT ON mix_constituent
WHEN EXISTS (SELECT 1 FROM mix_constituent WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER determination_is_not_changed BEFORE UPDATE ON determination
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER determination_is_not_removed BEFORE DELETE ON determination
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER determination_is_not_replaced BEFORE INSERT ON determination
WHEN EXISTS (SELECT 1 FROM determination WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER determination_source_is_not_changed BEFORE UPDATE ON determination_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER determination_source_is_not_removed BEFORE DELETE ON determination_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER determination_source_is_not_replaced BEFORE INSERT ON determination_source
WHEN EXISTS (SELECT 1 FROM determination_source WHERE entry_no = NEW.entry_no AND source_id = NEW.source_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER trial_is_not_changed BEFORE UPDATE ON trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER trial_is_not_removed BEFORE DELETE ON trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER trial_is_not_replaced BEFORE INSERT ON trial
WHEN EXISTS (SELECT 1 FROM trial WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_issue_is_not_changed BEFORE UPDATE ON factor_issue
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_is_not_removed BEFORE DELETE ON factor_issue
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_is_not_replaced BEFORE INSERT ON factor_issue
WHEN EXISTS (SELECT 1 FROM factor_issue WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_issue_source_is_not_changed BEFORE UPDATE ON factor_issue_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_source_is_not_removed BEFORE DELETE ON factor_issue_source
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_source_is_not_replaced BEFORE INSERT ON factor_issue_source
WHEN EXISTS (SELECT 1 FROM factor_issue_source WHERE entry_no = NEW.entry_no AND source_id = NEW.source_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER card_print_is_not_changed BEFORE UPDATE ON card_print
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER card_print_is_not_removed BEFORE DELETE ON card_print
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER card_print_is_not_replaced BEFORE INSERT ON card_print
WHEN EXISTS (SELECT 1 FROM card_print WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER meter_calibration_is_not_changed BEFORE UPDATE ON meter_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER meter_calibration_is_not_removed BEFORE DELETE ON meter_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER meter_calibration_is_not_replaced BEFORE INSERT ON meter_calibration
WHEN EXISTS (SELECT 1 FROM meter_calibration WHERE entry_no = NEW.entry_no)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER bowl_fill_is_not_changed BEFORE UPDATE ON bowl_fill
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER bowl_fill_is_not_removed BEFORE DELETE ON bowl_fill
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER bowl_fill_is_not_replaced BEFORE INSERT ON bowl_fill
WHEN EXISTS (SELECT 1 FROM bowl_fill WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER dial_point_is_not_changed BEFORE UPDATE ON dial_point
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER dial_point_is_not_removed BEFORE DELETE ON dial_point
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER dial_point_is_not_replaced BEFORE INSERT ON dial_point
WHEN EXISTS (SELECT 1 FROM dial_point WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_issue_trial_is_not_changed BEFORE UPDATE ON factor_issue_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_trial_is_not_removed BEFORE DELETE ON factor_issue_trial
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_trial_is_not_replaced BEFORE INSERT ON factor_issue_trial
WHEN EXISTS (SELECT 1 FROM factor_issue_trial WHERE entry_no = NEW.entry_no AND trial_id = NEW.trial_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_issue_calibration_is_not_changed BEFORE UPDATE ON factor_issue_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_calibration_is_not_removed BEFORE DELETE ON factor_issue_calibration
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_calibration_is_not_replaced BEFORE INSERT ON factor_issue_calibration
WHEN EXISTS (SELECT 1 FROM factor_issue_calibration WHERE entry_no = NEW.entry_no AND calibration_id = NEW.calibration_id)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;

CREATE TRIGGER factor_issue_doubt_is_not_changed BEFORE UPDATE ON factor_issue_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never changed');
END;

CREATE TRIGGER factor_issue_doubt_is_not_removed BEFORE DELETE ON factor_issue_doubt
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never removed');
END;

CREATE TRIGGER factor_issue_doubt_is_not_replaced BEFORE INSERT ON factor_issue_doubt
WHEN EXISTS (SELECT 1 FROM factor_issue_doubt WHERE entry_no = NEW.entry_no AND position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'What a lab book holds is never replaced');
END;
