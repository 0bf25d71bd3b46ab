-- How high above the sea a trial was made, in m: a Type A meter holds for the elevation at which it was calibrated. Trials
-- that were kept before say nothing.

ALTER TABLE trial ADD COLUMN elevation_m TEXT;
