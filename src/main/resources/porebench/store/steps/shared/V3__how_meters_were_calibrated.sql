-- How meters were calibrated, what was simulated, and who took on a meter that was not to be trusted.
--
-- A column added to a table is null in the rows that were there before, and where it says nothing.

-- A calibration without fills, points and column is a note that the meter was repaired, moved or doubted.
CREATE TABLE meter_calibration (
    entry_no INTEGER PRIMARY KEY REFERENCES entry (entry_no),
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
    remarks TEXT NOT NULL
);

CREATE TABLE bowl_fill (
    entry_no INTEGER NOT NULL REFERENCES meter_calibration (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    empty_mass TEXT NOT NULL,
    empty_mass_unit TEXT NOT NULL,
    plate_mass TEXT NOT NULL,
    plate_mass_unit TEXT NOT NULL,
    full_mass TEXT NOT NULL,
    full_mass_unit TEXT NOT NULL,
    water_temp_c TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
);

CREATE TABLE dial_point (
    entry_no INTEGER NOT NULL REFERENCES meter_calibration (entry_no),
    position INTEGER NOT NULL CHECK (position >= 1),
    withdrawn TEXT NOT NULL,
    withdrawn_unit TEXT NOT NULL,
    gauge_pct TEXT NOT NULL,
    PRIMARY KEY (entry_no, position)
);

-- A training book holds simulated trials and no others.
ALTER TABLE laboratory ADD COLUMN training INTEGER CHECK (training IN (0, 1));

ALTER TABLE trial ADD COLUMN simulated INTEGER CHECK (simulated IN (0, 1));

ALTER TABLE factor_issue ADD COLUMN override_by TEXT;

ALTER TABLE factor_issue ADD COLUMN override_reason TEXT;
