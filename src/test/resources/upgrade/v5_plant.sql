-- A small plant as the schema of V5 held it, with lines of the change log for some of it.
insert into site (name, zone, elevation, note, version) values ('North works', 'America/Chicago', '600 [ft_i]', 'a = b', 1);
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, note, in_service, version)
    values (1, 'C-1', '', '', 'PISTON', 2, 'BELT', 'START_STOP', '', true, 2);
insert into rating_point (compressor_id, position, pressure, flow, basis) values (1, 0, '175 [psi]', '35 [cft_i]/min', 'INTAKE');
insert into receiver (site_id, tag, volume, volume_known_by, note, in_service, version) values (1, 'R-1', '120 [gal_us]', 'PLATE', '', true, 0);
insert into pipe_piece (site_id, tag, volume, note, in_service, version) values (1, 'P-1', '2.1 [gal_us]', '', true, 0);
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature,
    intake_humidity, air_temperature, notes, confirmed, method_version, recorded_at, recorded_by)
    values ('00000000-0000-0000-0000-000000000001', 1, timestamp with time zone '2026-01-05 14:00:00+00', 'America/Chicago', 'Ann',
    '600 [ft_i]', '14.5 [psi]', '75.0 [degF]', '0 %', 'MEASURED', '', '', 'PU-1',
    timestamp with time zone '2026-01-05 15:00:00+00', 'Ann');
insert into pump_up_volume (test_id, position, kind, source_id, label, volume) values (1, 0, 'RECEIVER', 1, 'R-1', '120 [gal_us]');
insert into pump_up_rating (test_id, position, pressure, flow, basis) values (1, 0, '175 [psi]', '35 [cft_i]/min', 'INTAKE');
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air) values
    (1, 0, '140.0 [psi]', '172.0 [psi]', '60.2 s', '95 [degF]', '95 [degF]'),
    (1, 1, '140.0 [psi]', '172.0 [psi]', '60.8 s', '95 [degF]', '95 [degF]'),
    (1, 2, '140.0 [psi]', '172.0 [psi]', '60.5 s', '95 [degF]', '95 [degF]');
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason) values
    (timestamp with time zone '2026-01-01 08:00:00+00', 'Ann', 'SITE', 1, 'North works', null, 'name: North works', 'registered'),
    (timestamp with time zone '2026-01-01 08:10:00+00', 'Ann', 'COMPRESSOR', 1, 'C-1', null, 'tag: C-1', 'registered'),
    (timestamp with time zone '2026-01-02 08:10:00+00', 'Bo', 'COMPRESSOR', 1, 'C-1', 'tag: C-1', 'tag: C-1', 'plate read');
