-- A question about one mix, meter or source finds its records without reading those of the others.

CREATE INDEX trial_by_mix ON trial (mix_id);

CREATE INDEX trial_by_meter ON trial (meter_id, mix_id);

CREATE INDEX determination_by_mix ON determination (mix_id);

CREATE INDEX determination_source_by_source ON determination_source (source_id);

CREATE INDEX factor_issue_by_mix ON factor_issue (mix_id);

CREATE INDEX card_print_by_mix ON card_print (mix_id);

CREATE INDEX meter_calibration_by_meter ON meter_calibration (meter_id);

CREATE INDEX mix_constituent_by_source ON mix_constituent (source_id);
