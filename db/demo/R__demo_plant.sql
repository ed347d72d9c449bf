-- Made by plantair.demo.DemoPlantSql; do not edit. Everything in it is invented.
-- Inserts only into an empty plant, see db/README.md.
create local temporary table demo_start as
select 1 as n where not exists (select 1 from site);

insert into site (name, zone, elevation, currency, tariff, note, version)
select 'Gull Point cannery', 'America/Los_Angeles', '12 [ft_i]', 'USD', '0.118 /(kW.h)', 'Fish and fruit lines. Compressor house by the quay.', 0 from demo_start;
insert into site (name, zone, elevation, currency, tariff, note, version)
select 'Juniper Mesa packing hall', 'America/Denver', '1600 m', 'USD', '0.094 /(kW.h)', 'High up: barometer about 83.5 kPa, never 29.9 inHg. Do not take the weather report''s figure.', 0 from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_current, motor_phases, frequency, rated_speed, loaded_hours, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'C-01', 'Torvane PV-215', '88-1406', 'PISTON', 2, 'BELT', 'LOAD_UNLOAD', '15 [HP]', '460 V', '20.5 A', 3, '60 Hz', '875 {rev}/min', '1900 h', 'Two-stage, three cylinders. Second-stage valves and gaskets new on 8 June 2023.', true, 1 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-01'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-01'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_current, motor_phases, frequency, loaded_hours, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'C-02', 'Orbisk 22S', 'S22-03917', 'SCREW', 1, 'DIRECT', 'LOAD_UNLOAD', '30 [HP]', '460 V', '36 A', 3, '60 Hz', '5000 h', 'Base load.', true, 0 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-02'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-02'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_phases, frequency, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'C-03', 'Quelmar RV10', '', 'VANE', 1, 'DIRECT', 'MODULATING', '10 [HP]', '460 V', 3, '60 Hz', 'Bought second-hand. Figure from the seller''s list; it does not say what kind of cfm.', true, 0 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-03'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_current, motor_phases, frequency, rated_speed, loaded_hours, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'C-04', 'Torvane PV-260', '16-0512', 'PISTON', 2, 'BELT', 'LOAD_UNLOAD', '20 [HP]', '460 V', '26 A', 3, '60 Hz', '820 {rev}/min', '3400 h', 'Bought new in 2016 for the fruit line. Tests before 2020 copied from the log book.', true, 0 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-04'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-04'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_current, motor_phases, frequency, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'C-11', 'Torvane PH-75', '91-0233', 'PISTON', 1, 'BELT', 'START_STOP', '7.5 [HP]', '230 V', '21 A', 3, '60 Hz', 'Plate says scfm at sea level. It will not do that up here, and need not.', true, 0 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-11'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, motor_power, motor_voltage, motor_current, motor_phases, frequency, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'C-12', 'Lumeo spiral L8', 'L8 21 0077', 'SCROLL', 1, 'BELT', 'START_STOP', '8 kW', '400 V', '16.2 A', 3, '60 Hz', 'Oil-free, for the filling heads. Imported; all its gauges are in bar.', true, 0 from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-12'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into rating_point (compressor_id, position, pressure, flow, basis)
select (select id from compressor where tag = 'C-12'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'R-01', '120 [gal_us]', 'PLATE', '200 [psi]', '180 [psi]', date '2030-03-31', 'Vertical, under C-01.', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, cut_out, certificate_required, shell_required, head_required, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'R-02', '400 [gal_us]', 'PLATE', '165 [psi]', '150 [psi]', date '2030-03-31', '130 [psi]', true, '0.185 [in_i]', '0.190 [in_i]', 'Wet tank before the dryer. Look at the drain before every test.', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'R-03', '200 [gal_us]', 'MAKER_SHEET', '150 [psi]', '140 [psi]', date '2025-11-30', 'Inspector was to come in November.', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'R-04', '240 [gal_us]', 'PLATE', '165 [psi]', '150 [psi]', date '2031-06-30', 'Dry tank. Counts with R-02 when the dryer is bypassed.', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'R-05', '240 [gal_us]', 'MAKER_SHEET', '200 [psi]', '185 [psi]', date '2031-06-30', 'Horizontal, beside C-04. Shut V-9 to test.', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'R-11', '80 [gal_us]', 'DIMENSIONS', '150 [psi]', '165 [psi]', date '2030-09-30', 'The 165 psi valve is too high for this tank. Do not stand beside it; a 150 is on order.', true, 1 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, mawp, relief_set, certificate_due, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'R-12', '500 L', 'PLATE', '11 bar', '10 bar', date '2031-01-31', '', true, 0 from demo_start;
insert into receiver (site_id, tag, volume, volume_known_by, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'R-13', '60 [gal_us]', 'GUESS', 'Plate painted over. Out of use since the rebuild; keep it shut.', false, 1 from demo_start;
insert into pipe_piece (site_id, tag, length, bore, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'P-02', '24 [ft_i]', '2.067 [in_i]', '2 inch pipe from C-02 to R-02 and across to R-04.', true, 0 from demo_start;
insert into pipe_piece (site_id, tag, volume, note, in_service, version)
select (select id from site where name = 'Gull Point cannery'), 'P-03', '3.5 [gal_us]', 'Separator and filter between C-03 and R-03.', true, 0 from demo_start;
insert into pipe_piece (site_id, tag, length, bore, note, in_service, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'P-12', '6.5 m', '36 mm', '', true, 0 from demo_start;
insert into due_interval (site_id, kind, months, authority, version)
select (select id from site where name = 'Gull Point cannery'), 'TEST', 3, 'Maintenance plan of the cannery, page 4', 0 from demo_start;
insert into due_interval (site_id, kind, months, authority, version)
select (select id from site where name = 'Gull Point cannery'), 'VALVE_TEST', 36, 'Letter of the insurer of July 2019, invented as all here', 0 from demo_start;
insert into due_interval (site_id, kind, months, authority, version)
select (select id from site where name = 'Gull Point cannery'), 'THICKNESS', 48, 'Inspector’s advice of 2020, for the wet tank first', 0 from demo_start;
insert into due_interval (site_id, kind, months, authority, version)
select (select id from site where name = 'Juniper Mesa packing hall'), 'EXTERNAL', 12, 'Own rule of the packing hall', 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-01'), 'RV-01', '180 [psi]', '210 [cft_i]/min', 'UV', date '2019-04-02', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-02'), 'RV-02', '150 [psi]', '330 [cft_i]/min', 'UV', date '2018-09-20', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-03'), 'RV-03', '140 [psi]', '180 [cft_i]/min', 'UV', date '2017-06-01', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-04'), 'RV-04', '150 [psi]', '330 [cft_i]/min', 'UV', date '2018-09-20', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-05'), 'RV-05', '185 [psi]', '230 [cft_i]/min', 'UV', date '2016-11-08', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-11'), 'RV-11', '165 [psi]', '', date '2024-03-21', '', true, 0 from demo_start;
insert into relief_valve (receiver_id, tag, set_pressure, capacity, code_stamp, installed_on, note, in_service, version)
select (select id from receiver where tag = 'R-12'), 'RV-12', '10 bar', '2.4 m3/min', 'UV', date '2021-02-10', '', true, 0 from demo_start;
insert into valve_test (submission, valve_id, done_on, method, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('9f50ea18-9114-3f29-9780-51754a531ac1' as uuid), (select id from relief_valve where tag = 'RV-01'), date '2022-05-11', 'LIFT', true, 'Harbour bench', '', false, timestamp with time zone '2022-05-11 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('9dd0c578-ff1d-3aa3-849f-47d2bc8eac5e' as uuid), (select id from relief_valve where tag = 'RV-01'), date '2025-05-14', 'BENCH', '179 [psi]', true, 'Harbour bench', '', false, timestamp with time zone '2025-05-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('7e844a19-1bce-382c-a6e1-0b21a8826442' as uuid), (select id from relief_valve where tag = 'RV-02'), date '2022-05-11', 'BENCH', '168 [psi]', false, 'Harbour bench', 'Opened too high.', false, timestamp with time zone '2022-05-11 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('fa1c2f0c-90d5-3abe-a622-41b52539e4ee' as uuid), (select id from relief_valve where tag = 'RV-02'), date '2022-05-18', 'REPLACED', '151 [psi]', true, 'Harbour bench', 'Overhauled one fitted.', false, timestamp with time zone '2022-05-18 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('b89b7347-4cdd-339e-a20b-679137f66521' as uuid), (select id from relief_valve where tag = 'RV-02'), date '2025-05-14', 'BENCH', '151 [psi]', true, 'Harbour bench', '', false, timestamp with time zone '2025-05-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('e786677e-79af-3936-a46c-b6d5794a4510' as uuid), (select id from relief_valve where tag = 'RV-03'), date '2025-05-14', 'LIFT', true, 'Harbour bench', '', false, timestamp with time zone '2025-05-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('2bb23a49-26b1-35c9-b390-55c9c86c50d8' as uuid), (select id from relief_valve where tag = 'RV-04'), date '2025-05-14', 'BENCH', '149 [psi]', true, 'Harbour bench', '', false, timestamp with time zone '2025-05-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, popped_at, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('bd910107-fb52-3a57-83bd-aad81d19cbff' as uuid), (select id from relief_valve where tag = 'RV-05'), date '2024-11-06', 'BENCH', '184 [psi]', true, 'Harbour bench', '', false, timestamp with time zone '2024-11-06 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into valve_test (submission, valve_id, done_on, method, passed, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('2cae3a2e-ee51-3db0-ba41-224b34c445db' as uuid), (select id from relief_valve where tag = 'RV-12'), date '2025-02-12', 'LIFT', true, 'Harbour bench', '', false, timestamp with time zone '2025-02-12 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-01'), 'GP-1101', 'Invented inspection office', date '2025-03-31', '200 [psi]', date '2030-03-31', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-02'), 'GP-1102', 'Invented inspection office', date '2025-03-31', '165 [psi]', date '2030-03-31', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-03'), 'GP-0873', 'Invented inspection office', date '2020-11-30', '150 [psi]', date '2025-11-30', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-04'), 'GP-1177', 'Invented inspection office', date '2026-04-02', '165 [psi]', date '2031-06-30', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-05'), 'GP-1178', 'Invented inspection office', date '2026-04-02', '200 [psi]', date '2031-06-30', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-11'), 'JM-0031', 'Invented inspection office', date '2025-09-30', date '2030-09-30', '', true, 0 from demo_start;
insert into vessel_certificate (receiver_id, number, issued_by, issued_on, permitted, valid_to, note, in_force, version)
select (select id from receiver where tag = 'R-12'), 'JM-0032', 'Invented inspection office', date '2026-01-31', '11 bar', date '2031-01-31', '', true, 0 from demo_start;
insert into vessel_inspection (submission, receiver_id, kind, done_on, inspector, employer, findings, instrument, accuracy, withdrawn, recorded_at, recorded_by)
select cast('7582ab3a-3645-3ece-8572-3d044327921e' as uuid), (select id from receiver where tag = 'R-02'), 'THICKNESS', date '2020-05-12', 'Inspector T. Okafor, commission 4471 (invented)', 'Invented inspection office', 'Wall as new but for the bottom.', 'UT-1, sheet of the maker', '0.002 [in_i]', false, timestamp with time zone '2020-05-12 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 0, 'top, inlet end', 'SHELL', '0.249 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 1, 'top, outlet end', 'SHELL', '0.250 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 2, 'bottom, drain end', 'SHELL', '0.241 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 3, 'bottom, middle', 'SHELL', '0.243 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 4, 'inlet head, above', 'HEAD', '0.262 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 5, 'inlet head, below', 'HEAD', '0.263 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 6, 'outlet head, above', 'HEAD', '0.262 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '7582ab3a-3645-3ece-8572-3d044327921e'), 7, 'outlet head, below', 'HEAD', '0.261 [in_i]' from demo_start;
insert into vessel_inspection (submission, receiver_id, kind, done_on, inspector, employer, findings, instrument, accuracy, withdrawn, recorded_at, recorded_by)
select cast('1b006b73-b9cf-32b0-b3b4-0075919a4446' as uuid), (select id from receiver where tag = 'R-02'), 'THICKNESS', date '2024-05-14', 'Inspector T. Okafor, commission 4471 (invented)', 'Invented inspection office', 'Bottom thins where the water stands. Drain it every shift.', 'UT-1, sheet of the maker', '0.002 [in_i]', false, timestamp with time zone '2024-05-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 0, 'top, inlet end', 'SHELL', '0.249 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 1, 'top, outlet end', 'SHELL', '0.249 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 2, 'bottom, drain end', 'SHELL', '0.231 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 3, 'bottom, middle', 'SHELL', '0.238 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 4, 'inlet head, above', 'HEAD', '0.262 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 5, 'inlet head, below', 'HEAD', '0.262 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 6, 'outlet head, above', 'HEAD', '0.270 [in_i]' from demo_start;
insert into wall_reading (inspection_id, position, place, part, thickness)
select (select id from vessel_inspection where submission = '1b006b73-b9cf-32b0-b3b4-0075919a4446'), 7, 'outlet head, below', 'HEAD', '0.261 [in_i]' from demo_start;
insert into vessel_inspection (submission, receiver_id, kind, done_on, inspector, employer, findings, next_due, instrument, withdrawn, recorded_at, recorded_by)
select cast('e1c71e0a-c100-3652-9ede-eb0d5a977355' as uuid), (select id from receiver where tag = 'R-01'), 'INTERNAL', date '2025-03-27', 'Inspector T. Okafor, commission 4471 (invented)', 'Invented inspection office', 'Clean inside, light rust at the drain.', date '2030-03-27', '', false, timestamp with time zone '2025-03-27 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into vessel_inspection (submission, receiver_id, kind, done_on, inspector, employer, findings, instrument, withdrawn, recorded_at, recorded_by)
select cast('5de1ed15-e11d-3dbc-adfb-71175d6371d0' as uuid), (select id from receiver where tag = 'R-12'), 'EXTERNAL', date '2026-01-29', 'Inspector T. Okafor, commission 4471 (invented)', 'Invented inspection office', 'No findings.', '', false, timestamp with time zone '2026-01-29 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into vessel_finding (submission, receiver_id, found_on, kind, note, recorded_at, recorded_by)
select cast('dcb9be2f-604e-3df9-9deb-9659bed4748d' as uuid), (select id from receiver where tag = 'R-13'), date '2021-10-05', 'NO_PLATE', 'Painted over; nothing can be read under the paint.', timestamp with time zone '2021-10-05 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into supply_choice (site_id, working_pressure, reserve, leaks_from, note, version)
select (select id from site where name = 'Gull Point cannery'), '110 [psi]', '25 %', 'TEST', 'Header of the compressor house. C-03 is kept for the harvest.', 0 from demo_start;
insert into supply_choice (site_id, working_pressure, reserve, leaks_from, note, version)
select (select id from site where name = 'Juniper Mesa packing hall'), '7.0 bar', '20 %', 'TEST', '', 0 from demo_start;
insert into supply_standby (choice_id, compressor_id, tag)
select (select id from supply_choice where site_id = (select id from site where name = 'Gull Point cannery')), (select id from compressor where tag = 'C-03'), 'C-03' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Can fillers, lines 1 and 2', 'TOOL', 12, true, 0, '6.5 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '80 [psi]', '75 [psi]', '60 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Labelers', 'TOOL', 4, true, 0, '2.2 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '80 [psi]', '60 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Case packers', 'TOOL', 2, true, 0, '14 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '85 [psi]', '80 [psi]', '50 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Impact wrenches, workshop', 'TOOL', 3, true, 0, '6 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '90 [psi]', '90 [psi]', '15 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, uncertainty, note)
select (select id from site where name = 'Gull Point cannery'), 'Retort door seals', 'OTHER', 2, true, 0, '1.6 [cft_i]/min', 'INTAKE', 'HERE', '5 %', 'Bag test of March 2026.' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, bore, edge, pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Blow-off over belt 3', 'OPEN_NOZZLE', 6, true, 0, '0.09 [in_i]', 'SHARP', '60 [psi]', '70 %', 'Drilled pipe. Flat nozzles would do with a third of it.' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, nozzle, pressure, use_factor, note)
select (select id from site where name = 'Gull Point cannery'), 'Blast cabinet, trolley shop', 'BLAST_NOZZLE', 1, true, 0, 'NO_3', '80 [psi]', '10 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, event_length, event_every, note)
select (select id from site where name = 'Gull Point cannery'), 'Filter back-flush', 'EVENT', 1, true, 0, '160 [cft_i]/min', 'INTAKE', 'SEA_LEVEL', '80 [psi]', '80 [psi]', '12 s', '15 min', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, event_length, event_every, note)
select (select id from site where name = 'Gull Point cannery'), 'Timed drains', 'EVENT', 4, true, 0, '20 [cft_i]/min', 'INTAKE', 'SEA_LEVEL', '100 [psi]', '5 s', '10 min', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, note)
select (select id from site where name = 'Gull Point cannery'), 'Air knife, old fruit washer', 'OTHER', 1, false, 0, '60 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '60 [psi]', 'A blower took its place in 2024.' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, use_factor, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Filling heads', 'TOOL', 4, true, 0, '3.2 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '75 [psi]', '5.5 bar', '60 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, use_factor, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Bag sealers', 'TOOL', 3, true, 0, '2.0 [cft_i]/min', 'UNKNOWN', 'SEA_LEVEL', '80 [psi]', '50 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, bore, edge, pressure, use_factor, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Blow guns, cleaning', 'OPEN_NOZZLE', 2, true, 0, '2.0 mm', 'ROUNDED', '5 bar', '10 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, nozzle, pressure, use_factor, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Spot blaster, repairs', 'BLAST_NOZZLE', 1, true, 0, 'NO_2', '60 [psi]', '5 %', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, event_length, event_every, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Sorter ejectors', 'EVENT', 1, true, 0, '28 [cft_i]/min', 'INTAKE', 'SEA_LEVEL', '75 [psi]', '2 s', '20 s', '' from demo_start;
insert into demand_item (site_id, label, kind, pieces, in_service, version, flow, basis, stated, pressure, least_pressure, event_length, event_every, note)
select (select id from site where name = 'Juniper Mesa packing hall'), 'Pallet lift', 'EVENT', 1, true, 0, '25 [cft_i]/min', 'INTAKE', 'SEA_LEVEL', '90 [psi]', '6 bar', '20 s', '6 min', '' from demo_start;
insert into offer (site_id, label, offered_on, flow, basis, pressure, power, station, temperature, humidity, price, note, open, version)
select (select id from site where name = 'Gull Point cannery'), 'Torvane RS-40, dealer at the harbour', date '2026-04-20', '162 [cft_i]/min', 'STANDARD_14_696PSIA_60F_DRY', '125 [psi]', '32.4 kW', '14.5 [psi]', '68 [degF]', '0 %', '28400 {money}', 'Eight weeks. Dryer not in it.', true, 0 from demo_start;
insert into offer (site_id, label, offered_on, flow, basis, pressure, power, station, temperature, humidity, price, note, open, version)
select (select id from site where name = 'Gull Point cannery'), 'Halden 30 F, by letter', date '2026-04-27', '4.55 m3/min', 'INTAKE', '8 bar', '31.0 kW', '100 kPa', '20 Cel', '0 %', '31200 {money}', '', true, 0 from demo_start;
insert into offer (site_id, label, offered_on, flow, basis, pressure, power, station, temperature, humidity, note, open, version)
select (select id from site where name = 'Gull Point cannery'), 'Used piston machine, Brandt yard', date '2026-05-04', '190 [cft_i]/min', 'DISPLACEMENT', '125 [psi]', '33 kW', '14.5 [psi]', '68 [degF]', '0 %', 'They say 190 cfm; that is bore, stroke and speed. Asked for a pump-up test.', true, 0 from demo_start;
insert into offer (site_id, label, offered_on, flow, basis, pressure, power, station, temperature, humidity, price, note, open, version)
select (select id from site where name = 'Gull Point cannery'), 'Torvane RS-30, first letter', date '2025-11-12', '118 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY', '125 [psi]', '25.1 kW', '14.5 [psi]', '68 [degF]', '0 %', '23900 {money}', 'Too small by now.', false, 0 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-01', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_A', '2 [psi]', 12, 'On C-01.', true, 0 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-02', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_1A', '1 [psi]', 12, 'On C-02.', true, 0 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-03', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_B', '2 [psi]', 12, 'On C-03 until 14 March 2023. Read 5 % too much; kept in the drawer as a warning.', false, 1 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-04', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_1A', '2 [psi]', 12, 'On C-03 since 14 March 2023.', true, 0 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-05', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_1A', '1 [psi]', 12, 'On C-04 until 20 September 2023, when its glass broke.', false, 1 from demo_start;
insert into instrument (tag, kind, site_id, maker, serial_number, span, grade, division, interval_months, note, in_service, version)
select 'PG-06', 'GAUGE', (select id from site where name = 'Gull Point cannery'), 'Kestrelin 4 inch', '', '200 [psi]', 'ASME_1A', '1 [psi]', 12, 'On C-04 since 20 September 2023.', true, 0 from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('ae723663-117d-327f-a0a8-7b6fa2f16927' as uuid), (select id from instrument where tag = 'PG-01'), date '2024-10-22', date '2025-10-22', 'HB-2024-10-01', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2024-10-22 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ae723663-117d-327f-a0a8-7b6fa2f16927'), 0, '50 [psi]', '0.3 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ae723663-117d-327f-a0a8-7b6fa2f16927'), 1, '100 [psi]', '0.6 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ae723663-117d-327f-a0a8-7b6fa2f16927'), 2, '150 [psi]', '0.9 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('a0867d85-5f18-32c9-9c09-eb2c75c2bd16' as uuid), (select id from instrument where tag = 'PG-01'), date '2025-10-28', date '2026-10-28', 'HB-2025-10-01', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2025-10-28 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'a0867d85-5f18-32c9-9c09-eb2c75c2bd16'), 0, '50 [psi]', '0.3 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'a0867d85-5f18-32c9-9c09-eb2c75c2bd16'), 1, '100 [psi]', '0.6 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'a0867d85-5f18-32c9-9c09-eb2c75c2bd16'), 2, '150 [psi]', '0.9 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('14f7ddcc-a04a-357d-b519-9705c06b5dba' as uuid), (select id from instrument where tag = 'PG-02'), date '2024-10-22', date '2025-10-22', 'HB-2024-10-02', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2024-10-22 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '14f7ddcc-a04a-357d-b519-9705c06b5dba'), 0, '50 [psi]', '-0.4 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '14f7ddcc-a04a-357d-b519-9705c06b5dba'), 1, '100 [psi]', '-0.8 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '14f7ddcc-a04a-357d-b519-9705c06b5dba'), 2, '150 [psi]', '-1.2 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('aa2e28f4-2717-33b6-a36e-955e43ae001e' as uuid), (select id from instrument where tag = 'PG-03'), date '2023-03-13', date '2024-03-13', 'HB-2023-03-03', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', false, 'Not worth a repair.', timestamp with time zone '2023-03-13 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e'), 0, '50 [psi]', '2.4 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e'), 1, '100 [psi]', '4.8 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e'), 2, '150 [psi]', '7.1 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('189fdf4c-6ebd-3a5f-9a76-7c3778fe81a3' as uuid), (select id from instrument where tag = 'PG-04'), date '2025-07-01', date '2026-07-01', 'HB-2025-07-04', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2025-07-01 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '189fdf4c-6ebd-3a5f-9a76-7c3778fe81a3'), 0, '50 [psi]', '-0.2 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '189fdf4c-6ebd-3a5f-9a76-7c3778fe81a3'), 1, '100 [psi]', '-0.4 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '189fdf4c-6ebd-3a5f-9a76-7c3778fe81a3'), 2, '150 [psi]', '-0.6 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('b6357aae-54f3-3ec8-8052-75ee31581af9' as uuid), (select id from instrument where tag = 'PG-05'), date '2023-06-20', date '2024-06-20', 'HB-2023-06-05', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2023-06-20 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'b6357aae-54f3-3ec8-8052-75ee31581af9'), 0, '50 [psi]', '0.2 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'b6357aae-54f3-3ec8-8052-75ee31581af9'), 1, '100 [psi]', '0.4 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'b6357aae-54f3-3ec8-8052-75ee31581af9'), 2, '150 [psi]', '0.6 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('20872b38-628b-3796-bba5-3b9dca2f8dbe' as uuid), (select id from instrument where tag = 'PG-06'), date '2023-09-18', date '2024-09-18', 'HB-2023-09-06', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2023-09-18 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '20872b38-628b-3796-bba5-3b9dca2f8dbe'), 0, '50 [psi]', '-0.2 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '20872b38-628b-3796-bba5-3b9dca2f8dbe'), 1, '100 [psi]', '-0.3 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = '20872b38-628b-3796-bba5-3b9dca2f8dbe'), 2, '150 [psi]', '-0.5 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('ce81b82c-b14c-3da2-83a6-91ad3c9bc9a2' as uuid), (select id from instrument where tag = 'PG-06'), date '2024-09-17', date '2025-09-17', 'HB-2024-09-06', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2024-09-17 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ce81b82c-b14c-3da2-83a6-91ad3c9bc9a2'), 0, '50 [psi]', '-0.2 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ce81b82c-b14c-3da2-83a6-91ad3c9bc9a2'), 1, '100 [psi]', '-0.3 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'ce81b82c-b14c-3da2-83a6-91ad3c9bc9a2'), 2, '150 [psi]', '-0.5 [psi]' from demo_start;
insert into calibration (submission, instrument_id, done_on, due_on, certificate_number, laboratory, traceability, left_in_order, note, recorded_at, recorded_by)
select cast('eb439a02-71d7-3b16-b31e-2470a240f5f1' as uuid), (select id from instrument where tag = 'PG-06'), date '2025-09-16', date '2026-09-16', 'HB-2025-09-06', 'Harbour bench, deadweight tester', 'Weights traced to the national standard, invented as all else here.', true, '', timestamp with time zone '2025-09-16 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'eb439a02-71d7-3b16-b31e-2470a240f5f1'), 0, '50 [psi]', '-0.2 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'eb439a02-71d7-3b16-b31e-2470a240f5f1'), 1, '100 [psi]', '-0.3 [psi]' from demo_start;
insert into calibration_point (calibration_id, position, reading, error)
select (select id from calibration where submission = 'eb439a02-71d7-3b16-b31e-2470a240f5f1'), 2, '150 [psi]', '-0.5 [psi]' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('73b13328-fd43-32fa-bdc7-4ab518e4ae36' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2016-05-23 20:05:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.07 [in_i''Hg]', '65 [degF]', '68 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:04:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 0, '95 [psi]', '150 [psi]', '1:29.4 m:ss', '69 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 1, '95 [psi]', '150 [psi]', '1:29.3 m:ss', '70 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 2, '95 [psi]', '150 [psi]', '1:30.4 m:ss', '72 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 3, '95 [psi]', '150 [psi]', '1:29.4 m:ss', '70 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '73b13328-fd43-32fa-bdc7-4ab518e4ae36'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8d5e40ae-95a6-3c6c-a2be-f977424aec7a' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2016-08-15 14:15:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.14 [in_i''Hg]', '70 [degF]', '64 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Twenty minutes loaded before the first run.', '', 'PU-1', timestamp with time zone '2020-01-14 16:08:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 0, '95 [psi]', '150 [psi]', '1:31.4 m:ss', '74 [degF]', '104 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 1, '95 [psi]', '150 [psi]', '1:30.2 m:ss', '79 [degF]', '109 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 2, '95 [psi]', '150 [psi]', '1:30.0 m:ss', '72 [degF]', '103 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '8d5e40ae-95a6-3c6c-a2be-f977424aec7a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('efb21934-eaac-3ca5-aa8e-05f3bf38b6f8' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2016-11-07 18:50:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.82 [in_i''Hg]', '59 [degF]', '68 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:12:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 0, '95 [psi]', '150 [psi]', '1:31.2 m:ss', '65 [degF]', '95 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 1, '95 [psi]', '150 [psi]', '1:30.9 m:ss', '67 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 2, '95 [psi]', '150 [psi]', '1:31.9 m:ss', '67 [degF]', '96 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'efb21934-eaac-3ca5-aa8e-05f3bf38b6f8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2017-02-07 16:35:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.62 [in_i''Hg]', '55 [degF]', '64 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:16:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 0, '95 [psi]', '150 [psi]', '1:32.5 m:ss', '61 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 1, '95 [psi]', '151 [psi]', '1:33.5 m:ss', '61 [degF]', '91 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 2, '95 [psi]', '150 [psi]', '1:31.3 m:ss', '62 [degF]', '91 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'fd0bd871-c20f-3ea0-b79e-a2e7bf6b9417'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4cf8d6c3-4aee-345a-971d-729d39cfe886' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2017-05-19 17:55:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.63 [in_i''Hg]', '67 [degF]', '66 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:20:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 0, '95 [psi]', '151 [psi]', '1:34.6 m:ss', '74 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 1, '95 [psi]', '150 [psi]', '1:33.4 m:ss', '73 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 2, '95 [psi]', '150 [psi]', '1:33.4 m:ss', '73 [degF]', '101 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '4cf8d6c3-4aee-345a-971d-729d39cfe886'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('b5562a3d-a86b-3438-85fb-94979d9e0737' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2017-08-10 15:55:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.93 [in_i''Hg]', '75 [degF]', '56 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:24:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 0, '95 [psi]', '149 [psi]', '1:30.8 m:ss', '81 [degF]', '109 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 1, '95 [psi]', '150 [psi]', '1:31.3 m:ss', '81 [degF]', '110 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 2, '95 [psi]', '151 [psi]', '1:35.9 m:ss', '81 [degF]', '110 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'b5562a3d-a86b-3438-85fb-94979d9e0737'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6c57f113-107d-3e1d-9c66-4cd1e52c402f' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2017-11-20 19:05:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.65 [in_i''Hg]', '52 [degF]', '64 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Fruit line stood still.', '', 'PU-1', timestamp with time zone '2020-01-14 16:28:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 0, '95 [psi]', '150 [psi]', '1:33.6 m:ss', '56 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 1, '95 [psi]', '150 [psi]', '1:33.5 m:ss', '59 [degF]', '87 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 2, '95 [psi]', '150 [psi]', '1:32.9 m:ss', '56 [degF]', '85 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '6c57f113-107d-3e1d-9c66-4cd1e52c402f'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4f0a14d0-7e8c-300a-950d-9560e638fea3' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2018-02-23 14:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.00 [in_i''Hg]', '51 [degF]', '56 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:32:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 0, '95 [psi]', '151 [psi]', '1:34.0 m:ss', '56 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 1, '95 [psi]', '150 [psi]', '1:32.7 m:ss', '54 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 2, '95 [psi]', '150 [psi]', '1:31.8 m:ss', '53 [degF]', '84 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '4f0a14d0-7e8c-300a-950d-9560e638fea3'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('58407d1f-f882-3772-87f2-3dd816f0ff29' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2018-05-21 18:00:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.15 [in_i''Hg]', '70 [degF]', '68 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:36:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 0, '95 [psi]', '150 [psi]', '1:34.7 m:ss', '78 [degF]', '107 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 1, '95 [psi]', '150 [psi]', '1:34.5 m:ss', '74 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 2, '95 [psi]', '150 [psi]', '1:33.5 m:ss', '73 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 3, '95 [psi]', '150 [psi]', '1:33.0 m:ss', '75 [degF]', '104 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '58407d1f-f882-3772-87f2-3dd816f0ff29'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('7c254b72-5b78-3be2-b5a0-ada4280737b2' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2018-08-24 16:30:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.66 [in_i''Hg]', '73 [degF]', '44 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:40:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 0, '95 [psi]', '150 [psi]', '1:35.2 m:ss', '77 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 1, '95 [psi]', '150 [psi]', '1:35.2 m:ss', '77 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 2, '95 [psi]', '150 [psi]', '1:35.3 m:ss', '81 [degF]', '109 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '7c254b72-5b78-3be2-b5a0-ada4280737b2'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('acb44fc9-8b41-3648-96e2-f8f95204c6bd' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2018-11-05 20:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.64 [in_i''Hg]', '60 [degF]', '64 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Fruit line stood still.', '', 'PU-1', timestamp with time zone '2020-01-14 16:44:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 0, '95 [psi]', '150 [psi]', '1:35.0 m:ss', '68 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 1, '95 [psi]', '150 [psi]', '1:35.9 m:ss', '65 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 2, '95 [psi]', '150 [psi]', '1:35.1 m:ss', '64 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 3, '95 [psi]', '150 [psi]', '1:36.1 m:ss', '64 [degF]', '92 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'acb44fc9-8b41-3648-96e2-f8f95204c6bd'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('d6d8e3f0-f13b-3aa8-aeef-a89b638c476d' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2019-02-19 15:50:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.92 [in_i''Hg]', '47 [degF]', '71 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Twenty minutes loaded before the first run.', '', 'PU-1', timestamp with time zone '2020-01-14 16:48:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 0, '95 [psi]', '150 [psi]', '1:35.4 m:ss', '52 [degF]', '81 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 1, '95 [psi]', '150 [psi]', '1:34.5 m:ss', '56 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 2, '95 [psi]', '150 [psi]', '1:35.2 m:ss', '56 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'd6d8e3f0-f13b-3aa8-aeef-a89b638c476d'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2019-05-06 19:20:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.12 [in_i''Hg]', '65 [degF]', '70 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:52:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 0, '95 [psi]', '150 [psi]', '1:35.4 m:ss', '70 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 1, '95 [psi]', '150 [psi]', '1:35.5 m:ss', '70 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 2, '95 [psi]', '150 [psi]', '1:34.7 m:ss', '71 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 3, '95 [psi]', '150 [psi]', '1:34.7 m:ss', '70 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '49fb7f0e-7a2f-32ae-b9c6-771be8b9d21c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('13b0de1c-15e4-3eab-9fc0-bacc7becf4d6' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2019-08-14 16:00:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.99 [in_i''Hg]', '70 [degF]', '65 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-01-14 16:56:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 0, '95 [psi]', '150 [psi]', '1:35.4 m:ss', '79 [degF]', '108 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 1, '95 [psi]', '150 [psi]', '1:34.8 m:ss', '77 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 2, '95 [psi]', '151 [psi]', '1:37.7 m:ss', '74 [degF]', '104 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '13b0de1c-15e4-3eab-9fc0-bacc7becf4d6'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('ee9fba2c-6601-3be9-9d17-1e87b4151a18' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2019-11-19 18:45:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.33 [in_i''Hg]', '54 [degF]', '74 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Fruit line stood still.', '', 'PU-1', timestamp with time zone '2020-01-14 17:00:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 0, '95 [psi]', '150 [psi]', '1:35.8 m:ss', '61 [degF]', '89 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 1, '95 [psi]', '150 [psi]', '1:35.0 m:ss', '60 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 2, '95 [psi]', '150 [psi]', '1:35.5 m:ss', '62 [degF]', '90 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'ee9fba2c-6601-3be9-9d17-1e87b4151a18'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('08d00922-7468-38ee-bbae-46676546e8db' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2020-02-07 14:00:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.15 [in_i''Hg]', '48 [degF]', '76 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Ran it loaded 20 min before.', '', 'PU-1', timestamp with time zone '2020-02-07 14:32:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 0, '85.0 [psi]', '120.5 [psi]', '82.0 s', '50 [degF]', '76 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 1, '85.0 [psi]', '120.0 [psi]', '82.4 s', '56 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 2, '85.0 [psi]', '120.0 [psi]', '82.7 s', '54 [degF]', '79 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 3, '85.0 [psi]', '120.0 [psi]', '82.3 s', '50 [degF]', '77 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '08d00922-7468-38ee-bbae-46676546e8db'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('587169ac-e47b-3026-93d4-489e04da235d' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2020-02-07 19:45:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '828 hPa', '7.1 Cel', '29 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2020-02-07 20:52:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 0, '5.00 bar', '8.00 bar', '105.2 s', '9.6 Cel', '7.65 bar', '10.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 1, '5.00 bar', '8.00 bar', '104.4 s', '7.6 Cel', '7.65 bar', '8.4 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '587169ac-e47b-3026-93d4-489e04da235d'), 2, '5.00 bar', '8.00 bar', '104.5 s', '10.2 Cel', '7.65 bar', '9.5 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('38765246-dd05-33e4-8659-d123e7991376' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2020-02-10 17:05:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.99 [in_i''Hg]', '52 [degF]', '60 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Took the temperature twice, same.', '', 'PU-1', timestamp with time zone '2020-02-10 17:56:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 0, '80 [psi]', '115 [psi]', '1:36.3 m:ss', '63 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 1, '80 [psi]', '115 [psi]', '1:34.2 m:ss', '58 [degF]', '77 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 2, '80 [psi]', '115 [psi]', '1:36.0 m:ss', '58 [degF]', '77 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 3, '80 [psi]', '115 [psi]', '1:35.7 m:ss', '60 [degF]', '79 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('95f34fe5-3e2e-3fd4-a2e1-46af65639102' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2020-02-13 18:00:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '48 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2020-02-13 19:46:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 0, '85 [psi]', '120 [psi]', '60.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 1, '85 [psi]', '120 [psi]', '61.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 2, '85 [psi]', '120 [psi]', '61.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '95f34fe5-3e2e-3fd4-a2e1-46af65639102'), 3, '85 [psi]', '119 [psi]', '59.3 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0113eb50-f27b-38c4-b5f9-4d63f0eff6a8' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2020-02-21 14:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.58 [in_i''Hg]', '52 [degF]', '73 %', 'MEASURED', '878 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-02-21 15:12:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 0, '90 [psi]', '150 [psi]', '1:08.3 m:ss', '60 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 1, '90 [psi]', '150 [psi]', '1:07.5 m:ss', '56 [degF]', '89 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 2, '90 [psi]', '150 [psi]', '1:08.0 m:ss', '58 [degF]', '91 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '0113eb50-f27b-38c4-b5f9-4d63f0eff6a8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('f1601fb1-035a-3b9f-86fa-701c409b05c4' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2020-02-24 14:05:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.90 [in_i''Hg]', '47 [degF]', '72 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-02-24 14:39:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 0, '95 [psi]', '150 [psi]', '1:37.7 m:ss', '51 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 1, '95 [psi]', '150 [psi]', '1:38.1 m:ss', '53 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 2, '95 [psi]', '150 [psi]', '1:36.1 m:ss', '54 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'f1601fb1-035a-3b9f-86fa-701c409b05c4'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('ef32e4c5-5075-3f6b-b234-526fb61b35ef' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2020-08-10 15:10:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.90 [in_i''Hg]', '82 [degF]', '50 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'V-9 shut, tank drained until only air came.', '', 'PU-1', timestamp with time zone '2020-08-10 15:37:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 0, '95 [psi]', '150 [psi]', '1:41.8 m:ss', '85 [degF]', '113 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 1, '95 [psi]', '150 [psi]', '1:42.4 m:ss', '87 [degF]', '116 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 2, '95 [psi]', '150 [psi]', '1:40.7 m:ss', '89 [degF]', '116 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 3, '95 [psi]', '150 [psi]', '1:42.5 m:ss', '84 [degF]', '112 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'ef32e4c5-5075-3f6b-b234-526fb61b35ef'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('d3879d73-62fe-3c9f-9802-4e9f6a1604ca' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2020-08-12 19:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '89 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2020-08-12 20:20:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'd3879d73-62fe-3c9f-9802-4e9f6a1604ca'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'd3879d73-62fe-3c9f-9802-4e9f6a1604ca'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'd3879d73-62fe-3c9f-9802-4e9f6a1604ca'), 0, '85 [psi]', '120 [psi]', '62.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'd3879d73-62fe-3c9f-9802-4e9f6a1604ca'), 1, '85 [psi]', '120 [psi]', '60.8 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'd3879d73-62fe-3c9f-9802-4e9f6a1604ca'), 2, '85 [psi]', '120 [psi]', '61.0 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4098df6e-2a1e-38bf-b984-f64e7bb3ea0f' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2020-08-14 18:05:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '833 hPa', '26.9 Cel', '44 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Waited 12 min each time, needle still.', '', 'PU-1', timestamp with time zone '2020-08-14 19:36:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 0, '5.00 bar', '8.00 bar', '106.2 s', '30.3 Cel', '7.60 bar', '29.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 1, '5.00 bar', '8.00 bar', '105.1 s', '29.1 Cel', '7.60 bar', '29.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4098df6e-2a1e-38bf-b984-f64e7bb3ea0f'), 2, '5.00 bar', '8.00 bar', '106.2 s', '29.5 Cel', '7.65 bar', '29.6 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('76c83a75-54d3-3934-9158-1bf61da903a2' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2020-08-17 15:55:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.09 [in_i''Hg]', '74 [degF]', '56 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-08-17 16:51:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 0, '85.0 [psi]', '120.0 [psi]', '82.0 s', '80 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 1, '85.0 [psi]', '120.0 [psi]', '83.7 s', '79 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 2, '85.0 [psi]', '119.5 [psi]', '82.6 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '76c83a75-54d3-3934-9158-1bf61da903a2'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0b6a4edc-f96a-38f7-84ba-dda5c0204fe8' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2020-08-17 15:40:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.98 [in_i''Hg]', '72 [degF]', '95 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2020-08-17 17:22:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 0, '80 [psi]', '115 [psi]', '1:36.1 m:ss', '76 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 1, '80 [psi]', '115 [psi]', '1:34.9 m:ss', '80 [degF]', '100 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 2, '80 [psi]', '115 [psi]', '1:38.4 m:ss', '80 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('a09ccdfc-57a1-3a24-9f27-d3a95626aed4' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2020-08-21 15:00:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.84 [in_i''Hg]', '71 [degF]', '59 %', 'MEASURED', '875 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-08-21 15:30:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 0, '90 [psi]', '150 [psi]', '1:08.1 m:ss', '77 [degF]', '110 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 1, '90 [psi]', '149 [psi]', '1:07.6 m:ss', '76 [degF]', '108 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 2, '90 [psi]', '150 [psi]', '1:07.9 m:ss', '77 [degF]', '110 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 3, '90 [psi]', '150 [psi]', '1:07.8 m:ss', '79 [degF]', '111 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'a09ccdfc-57a1-3a24-9f27-d3a95626aed4'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('06e12fa1-7470-33fe-a602-fad48de3a6e0' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2020-11-04 17:40:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.10 [in_i''Hg]', '63 [degF]', '58 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2020-11-04 18:09:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 0, '80 [psi]', '115 [psi]', '1:34.0 m:ss', '72 [degF]', '91 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 1, '80 [psi]', '116 [psi]', '1:36.1 m:ss', '67 [degF]', '87 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 2, '80 [psi]', '115 [psi]', '1:35.0 m:ss', '69 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 3, '80 [psi]', '115 [psi]', '1:34.0 m:ss', '71 [degF]', '90 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4a0be73b-7e89-3908-9ea3-299499931d81' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2020-11-05 15:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.81 [in_i''Hg]', '63 [degF]', '87 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-11-05 17:17:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 0, '85.0 [psi]', '120.0 [psi]', '84.6 s', '67 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 1, '85.0 [psi]', '120.0 [psi]', '84.7 s', '71 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 2, '85.0 [psi]', '120.0 [psi]', '85.5 s', '69 [degF]', '94 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '4a0be73b-7e89-3908-9ea3-299499931d81'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2020-11-09 19:40:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.71 [in_i''Hg]', '60 [degF]', '82 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-11-09 20:24:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 0, '90 [psi]', '150 [psi]', '1:08.9 m:ss', '69 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 1, '90 [psi]', '150 [psi]', '1:07.9 m:ss', '69 [degF]', '100 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 2, '90 [psi]', '150 [psi]', '1:08.8 m:ss', '66 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'b95e20e4-c5ed-33c1-9ceb-a9f2f5f3a1a0'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2020-11-12 20:40:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '62 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2020-11-12 21:44:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad'), 0, '85 [psi]', '120 [psi]', '59.7 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad'), 1, '85 [psi]', '120 [psi]', '60.0 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4acffd3a-1af6-31a4-a27b-cc7f1f5d80ad'), 2, '85 [psi]', '120 [psi]', '60.4 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('dfa939eb-d198-3032-a9a3-9483849a8987' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2020-11-16 16:35:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '841 hPa', '14.3 Cel', '32 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2020-11-16 18:11:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 0, '5.00 bar', '8.05 bar', '105.0 s', '17.1 Cel', '7.65 bar', '16.7 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 1, '5.00 bar', '8.00 bar', '103.1 s', '17.3 Cel', '7.60 bar', '17.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'dfa939eb-d198-3032-a9a3-9483849a8987'), 2, '5.00 bar', '8.00 bar', '103.2 s', '18.2 Cel', '7.60 bar', '17.5 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('fd8f371c-e27e-3df8-99d7-52e3a6f62059' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2020-11-23 19:15:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.83 [in_i''Hg]', '56 [degF]', '76 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2020-11-23 19:50:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 0, '95 [psi]', '150 [psi]', '1:45.1 m:ss', '61 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 1, '95 [psi]', '150 [psi]', '1:44.8 m:ss', '66 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 2, '95 [psi]', '150 [psi]', '1:44.7 m:ss', '63 [degF]', '90 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'fd8f371c-e27e-3df8-99d7-52e3a6f62059'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2021-02-03 13:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '44 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2021-02-03 14:39:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c'), 0, '85 [psi]', '120 [psi]', '62.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c'), 1, '85 [psi]', '120 [psi]', '61.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'e92dbcf2-581d-3f5b-b6ba-8bd33336bc8c'), 2, '85 [psi]', '120 [psi]', '61.1 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('74719ab1-d47e-38ad-bd50-c2ccc95429be' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2021-02-08 17:40:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.90 [in_i''Hg]', '50 [degF]', '77 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Warm day, doors open.', '', 'PU-1', timestamp with time zone '2021-02-08 18:45:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 0, '85.0 [psi]', '120.0 [psi]', '84.5 s', '56 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 1, '85.0 [psi]', '120.0 [psi]', '85.2 s', '56 [degF]', '81 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 2, '85.0 [psi]', '120.0 [psi]', '84.9 s', '56 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '74719ab1-d47e-38ad-bd50-c2ccc95429be'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('df8121c8-96df-3bd6-8087-81896f4159ec' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2021-02-11 18:00:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.66 [in_i''Hg]', '53 [degF]', '61 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Low again, and one valve cover hotter than the rest.', '', 'PU-1', timestamp with time zone '2021-02-11 19:54:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 0, '95 [psi]', '150 [psi]', '1:45.7 m:ss', '61 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 1, '95 [psi]', '150 [psi]', '1:48.1 m:ss', '57 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 2, '95 [psi]', '150 [psi]', '1:47.7 m:ss', '59 [degF]', '85 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'df8121c8-96df-3bd6-8087-81896f4159ec'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('214ba8f5-38b4-3dce-8b53-989a79347878' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2021-02-19 14:45:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.67 [in_i''Hg]', '54 [degF]', '63 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Modulation backed off for the test.', '', 'PU-1', timestamp with time zone '2021-02-19 16:35:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 0, '80 [psi]', '116 [psi]', '1:39.3 m:ss', '61 [degF]', '81 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 1, '80 [psi]', '115 [psi]', '1:35.7 m:ss', '60 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 2, '80 [psi]', '115 [psi]', '1:37.6 m:ss', '61 [degF]', '79 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('04073465-0bf4-30c1-9ff4-bf20e19ffe6a' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2021-02-19 18:30:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.87 [in_i''Hg]', '45 [degF]', '62 %', 'MEASURED', '878 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-02-19 20:07:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 0, '90 [psi]', '150 [psi]', '1:07.6 m:ss', '50 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 1, '90 [psi]', '150 [psi]', '1:06.8 m:ss', '52 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 2, '90 [psi]', '150 [psi]', '1:07.6 m:ss', '51 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 3, '90 [psi]', '150 [psi]', '1:07.7 m:ss', '51 [degF]', '84 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '04073465-0bf4-30c1-9ff4-bf20e19ffe6a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('79705cc8-f91d-31fa-9149-8b81cd5ee0b2' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2021-02-23 17:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '834 hPa', '12.1 Cel', '20 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Two of three scrolls could be heard, all three run.', '', 'PU-1', timestamp with time zone '2021-02-23 17:29:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 0, '5.00 bar', '8.00 bar', '104.9 s', '14.3 Cel', '7.65 bar', '14.2 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 1, '5.00 bar', '8.00 bar', '105.1 s', '14.8 Cel', '7.65 bar', '14.5 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 2, '5.00 bar', '8.00 bar', '104.8 s', '15.4 Cel', '7.65 bar', '14.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '79705cc8-f91d-31fa-9149-8b81cd5ee0b2'), 3, '5.00 bar', '8.00 bar', '105.4 s', '13.1 Cel', '7.65 bar', '13.8 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('e9b81b3e-01d8-3873-84a8-b06d03dc3883' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2021-05-07 16:10:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '831 hPa', '23.2 Cel', '29 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2021-05-07 17:09:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 0, '5.00 bar', '8.00 bar', '106.2 s', '25.8 Cel', '7.65 bar', '25.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 1, '5.00 bar', '8.00 bar', '105.2 s', '24.8 Cel', '7.65 bar', '24.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e9b81b3e-01d8-3873-84a8-b06d03dc3883'), 2, '5.00 bar', '8.00 bar', '104.0 s', '26.6 Cel', '7.60 bar', '26.3 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('eef2c5d9-4229-3002-81b0-cfa07b5fc192' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2021-05-07 16:45:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.72 [in_i''Hg]', '69 [degF]', '77 %', 'MEASURED', '871 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-05-07 18:26:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 0, '90 [psi]', '150 [psi]', '1:09.6 m:ss', '77 [degF]', '110 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 1, '90 [psi]', '150 [psi]', '1:10.3 m:ss', '77 [degF]', '109 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 2, '90 [psi]', '150 [psi]', '1:08.5 m:ss', '81 [degF]', '112 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 3, '90 [psi]', '150 [psi]', '1:09.9 m:ss', '77 [degF]', '110 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'eef2c5d9-4229-3002-81b0-cfa07b5fc192'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('08d6cf92-255a-33b6-9a98-098a7dc6959b' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2021-05-10 19:55:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '68 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Motor too hot to touch after.', '', 'PU-1', timestamp with time zone '2021-05-10 20:31:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '08d6cf92-255a-33b6-9a98-098a7dc6959b'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '08d6cf92-255a-33b6-9a98-098a7dc6959b'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '08d6cf92-255a-33b6-9a98-098a7dc6959b'), 0, '85 [psi]', '120 [psi]', '62.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '08d6cf92-255a-33b6-9a98-098a7dc6959b'), 1, '85 [psi]', '120 [psi]', '60.6 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '08d6cf92-255a-33b6-9a98-098a7dc6959b'), 2, '85 [psi]', '120 [psi]', '60.5 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('cc8481ad-5960-3b39-9a1e-857fee82055b' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2021-05-13 20:25:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.04 [in_i''Hg]', '66 [degF]', '52 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'First test since the valves of 14 April. Better.', '', 'PU-1', timestamp with time zone '2021-05-13 20:53:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 0, '95 [psi]', '150 [psi]', '1:37.5 m:ss', '74 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 1, '95 [psi]', '151 [psi]', '1:39.1 m:ss', '72 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 2, '95 [psi]', '150 [psi]', '1:39.0 m:ss', '71 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'cc8481ad-5960-3b39-9a1e-857fee82055b'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('859ba0bc-fd74-3ac0-9fea-112992ea7602' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2021-05-20 13:30:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.90 [in_i''Hg]', '72 [degF]', '68 %', 'MEASURED', '115 [psi]', '102 [psi]', '5 min', 'TEST_VOLUME', '10 [HP]', 3, 'MODULATING', 'Low. V-3 passes: heard it hiss behind when shut. New seat ordered.', '', 'PU-1', timestamp with time zone '2021-05-20 14:27:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 0, '80 [psi]', '115 [psi]', '1:50.9 m:ss', '81 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 1, '80 [psi]', '115 [psi]', '1:52.9 m:ss', '75 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 2, '80 [psi]', '115 [psi]', '1:53.1 m:ss', '74 [degF]', '92 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('f1b0c8dd-bb66-3f80-a0a2-641630a58225' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2021-05-24 15:15:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.79 [in_i''Hg]', '72 [degF]', '58 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-05-24 16:52:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 0, '85.0 [psi]', '120.0 [psi]', '85.5 s', '77 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 1, '85.0 [psi]', '120.0 [psi]', '85.9 s', '76 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 2, '85.0 [psi]', '120.0 [psi]', '86.0 s', '78 [degF]', '104 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'f1b0c8dd-bb66-3f80-a0a2-641630a58225'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('695795a8-cb7b-3f7c-8814-2d9cc765634a' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2021-08-03 17:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.85 [in_i''Hg]', '69 [degF]', '79 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-08-03 17:57:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 0, '95 [psi]', '150 [psi]', '1:40.6 m:ss', '73 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 1, '95 [psi]', '150 [psi]', '1:40.5 m:ss', '75 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 2, '95 [psi]', '150 [psi]', '1:41.2 m:ss', '75 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 3, '95 [psi]', '150 [psi]', '1:41.5 m:ss', '70 [degF]', '98 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '695795a8-cb7b-3f7c-8814-2d9cc765634a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2d744620-7d5b-3555-a932-d2423995c340' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2021-08-12 17:30:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.74 [in_i''Hg]', '79 [degF]', '80 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'V-3 has its new seat, shuts tight.', '', 'PU-1', timestamp with time zone '2021-08-12 18:10:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 0, '80 [psi]', '116 [psi]', '1:40.1 m:ss', '86 [degF]', '104 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 1, '80 [psi]', '115 [psi]', '1:37.8 m:ss', '83 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 2, '80 [psi]', '115 [psi]', '1:37.3 m:ss', '88 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 3, '80 [psi]', '115 [psi]', '1:37.0 m:ss', '81 [degF]', '101 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2021-08-13 14:20:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.71 [in_i''Hg]', '77 [degF]', '66 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-08-13 15:33:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 0, '85.0 [psi]', '120.0 [psi]', '86.8 s', '84 [degF]', '108 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 1, '85.0 [psi]', '120.0 [psi]', '86.7 s', '80 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 2, '85.0 [psi]', '120.0 [psi]', '86.6 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'c25ef6c8-2d37-37ea-b56c-6ff4ab6f8c43'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('a3a3787d-ff5b-3c1f-88df-2d97bcfe655a' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2021-08-16 14:25:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '838 hPa', '25.2 Cel', '39 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Coffee while it settles.', '', 'PU-1', timestamp with time zone '2021-08-16 15:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 0, '5.00 bar', '8.00 bar', '105.1 s', '27.7 Cel', '7.65 bar', '27.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 1, '5.00 bar', '8.00 bar', '105.2 s', '28.3 Cel', '7.60 bar', '28.2 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'a3a3787d-ff5b-3c1f-88df-2d97bcfe655a'), 2, '5.00 bar', '8.00 bar', '106.3 s', '27.0 Cel', '7.65 bar', '26.6 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('31252eba-66b1-3b88-b9a0-bc16068ccb7c' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2021-08-23 18:55:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.18 [in_i''Hg]', '74 [degF]', '68 %', 'MEASURED', '869 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Drain blown first, dry.', '', 'PU-1', timestamp with time zone '2021-08-23 19:32:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 0, '90 [psi]', '149 [psi]', '1:07.9 m:ss', '81 [degF]', '114 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 1, '90 [psi]', '150 [psi]', '1:08.8 m:ss', '80 [degF]', '112 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 2, '90 [psi]', '150 [psi]', '1:09.0 m:ss', '82 [degF]', '114 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '31252eba-66b1-3b88-b9a0-bc16068ccb7c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('bb2ce099-a100-3f59-bcfe-9342ad906365' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2021-08-24 15:25:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '79 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2021-08-24 16:05:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'bb2ce099-a100-3f59-bcfe-9342ad906365'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'bb2ce099-a100-3f59-bcfe-9342ad906365'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'bb2ce099-a100-3f59-bcfe-9342ad906365'), 0, '85 [psi]', '120 [psi]', '61.7 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'bb2ce099-a100-3f59-bcfe-9342ad906365'), 1, '85 [psi]', '120 [psi]', '62.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'bb2ce099-a100-3f59-bcfe-9342ad906365'), 2, '85 [psi]', '120 [psi]', '61.6 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('f8ee7b37-2d90-3b19-a61c-e248cc4c257c' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2021-11-10 18:45:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.89 [in_i''Hg]', '57 [degF]', '60 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Dryer bypassed, both tanks on.', '', 'PU-1', timestamp with time zone '2021-11-10 20:27:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 0, '85.0 [psi]', '120.0 [psi]', '85.7 s', '65 [degF]', '89 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 1, '85.0 [psi]', '120.5 [psi]', '86.9 s', '64 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 2, '85.0 [psi]', '119.5 [psi]', '85.3 s', '60 [degF]', '85 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'f8ee7b37-2d90-3b19-a61c-e248cc4c257c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1e0edd0c-8dcd-337d-ac2a-950b25ec7525' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2021-11-15 17:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '54 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2021-11-15 17:53:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1e0edd0c-8dcd-337d-ac2a-950b25ec7525'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1e0edd0c-8dcd-337d-ac2a-950b25ec7525'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '1e0edd0c-8dcd-337d-ac2a-950b25ec7525'), 0, '85 [psi]', '120 [psi]', '62.0 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '1e0edd0c-8dcd-337d-ac2a-950b25ec7525'), 1, '85 [psi]', '120 [psi]', '60.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '1e0edd0c-8dcd-337d-ac2a-950b25ec7525'), 2, '85 [psi]', '120 [psi]', '61.5 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8d57e437-ab5e-3da1-90d0-b413c2578871' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2021-11-15 17:35:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.76 [in_i''Hg]', '59 [degF]', '70 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Twenty minutes loaded before the first run.', '', 'PU-1', timestamp with time zone '2021-11-15 18:44:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 0, '95 [psi]', '150 [psi]', '1:40.5 m:ss', '64 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 1, '95 [psi]', '150 [psi]', '1:40.4 m:ss', '66 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 2, '95 [psi]', '150 [psi]', '1:41.5 m:ss', '65 [degF]', '93 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '8d57e437-ab5e-3da1-90d0-b413c2578871'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('324ddeaa-5ccb-3d12-9db6-a75cdd414150' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2021-11-16 20:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '838 hPa', '18.2 Cel', '38 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2021-11-16 20:57:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 0, '5.00 bar', '8.00 bar', '105.0 s', '20.7 Cel', '7.60 bar', '20.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 1, '5.00 bar', '8.00 bar', '104.4 s', '22.4 Cel', '7.60 bar', '22.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '324ddeaa-5ccb-3d12-9db6-a75cdd414150'), 2, '5.00 bar', '8.00 bar', '102.9 s', '19.6 Cel', '7.60 bar', '20.6 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('47f6ab03-c5f9-38ad-b8bf-638e79026c87' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2021-11-22 16:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.89 [in_i''Hg]', '59 [degF]', '65 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2021-11-22 17:46:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 0, '80 [psi]', '115 [psi]', '1:36.5 m:ss', '65 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 1, '80 [psi]', '115 [psi]', '1:36.4 m:ss', '63 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 2, '80 [psi]', '115 [psi]', '1:36.2 m:ss', '64 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1cb80804-7125-37e9-b6f3-7ab1b078d86c' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2021-11-24 14:25:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.82 [in_i''Hg]', '56 [degF]', '79 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2021-11-24 15:50:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 0, '90 [psi]', '151 [psi]', '1:08.4 m:ss', '62 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 1, '90 [psi]', '150 [psi]', '1:08.7 m:ss', '63 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 2, '90 [psi]', '150 [psi]', '1:08.3 m:ss', '65 [degF]', '97 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '1cb80804-7125-37e9-b6f3-7ab1b078d86c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('35971976-1a01-3c6b-a8bc-9c56d10ef68e' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2022-02-07 20:25:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.41 [in_i''Hg]', '48 [degF]', '92 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Belts quiet, guards back on.', '', 'PU-1', timestamp with time zone '2022-02-07 21:08:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 0, '95 [psi]', '150 [psi]', '1:41.9 m:ss', '53 [degF]', '81 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 1, '95 [psi]', '150 [psi]', '1:43.1 m:ss', '55 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 2, '95 [psi]', '150 [psi]', '1:43.6 m:ss', '54 [degF]', '81 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '35971976-1a01-3c6b-a8bc-9c56d10ef68e'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6ea08226-1856-37d0-8bfd-346f0a3d7e34' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2022-02-10 13:10:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '48 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Quick one before the shift.', '', 'PU-1', timestamp with time zone '2022-02-10 13:54:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6ea08226-1856-37d0-8bfd-346f0a3d7e34'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6ea08226-1856-37d0-8bfd-346f0a3d7e34'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '6ea08226-1856-37d0-8bfd-346f0a3d7e34'), 0, '85 [psi]', '121 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '6ea08226-1856-37d0-8bfd-346f0a3d7e34'), 1, '85 [psi]', '120 [psi]', '59.6 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '6ea08226-1856-37d0-8bfd-346f0a3d7e34'), 2, '85 [psi]', '120 [psi]', '61.5 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('e413dcfa-4151-3707-8c7b-d65c9832305a' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2022-02-14 15:05:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.68 [in_i''Hg]', '55 [degF]', '50 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2022-02-14 16:58:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 0, '80 [psi]', '115 [psi]', '1:36.5 m:ss', '61 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 1, '80 [psi]', '115 [psi]', '1:38.5 m:ss', '60 [degF]', '79 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 2, '80 [psi]', '115 [psi]', '1:35.3 m:ss', '59 [degF]', '79 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('49b663dc-e8f5-3b58-bad7-f517e18041df' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2022-02-15 15:10:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.98 [in_i''Hg]', '54 [degF]', '90 %', 'MEASURED', '873 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-02-15 16:50:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 0, '90 [psi]', '150 [psi]', '1:10.7 m:ss', '61 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 1, '90 [psi]', '150 [psi]', '1:10.2 m:ss', '60 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 2, '90 [psi]', '150 [psi]', '1:11.1 m:ss', '57 [degF]', '89 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '49b663dc-e8f5-3b58-bad7-f517e18041df'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6801cd3a-f2df-3d87-8bf0-4e55bb17526c' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-02-16 14:15:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.87 [in_i''Hg]', '52 [degF]', '74 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Ran it loaded 20 min before.', '', 'PU-1', timestamp with time zone '2022-02-16 15:50:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 0, '85.0 [psi]', '120.0 [psi]', '87.2 s', '55 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 1, '85.0 [psi]', '120.0 [psi]', '86.7 s', '56 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 2, '85.0 [psi]', '120.0 [psi]', '87.9 s', '56 [degF]', '81 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '6801cd3a-f2df-3d87-8bf0-4e55bb17526c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('ec5d829c-fce9-39b8-ac8d-4cb4373eafa5' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2022-02-22 15:45:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '846 hPa', '9.7 Cel', '40 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Two of three scrolls could be heard, all three run.', '', 'PU-1', timestamp with time zone '2022-02-22 17:38:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 0, '5.00 bar', '8.00 bar', '103.7 s', '11.2 Cel', '7.65 bar', '11.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 1, '5.00 bar', '8.00 bar', '103.7 s', '12.5 Cel', '7.65 bar', '12.5 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'ec5d829c-fce9-39b8-ac8d-4cb4373eafa5'), 2, '5.00 bar', '8.00 bar', '104.7 s', '13.4 Cel', '7.65 bar', '12.4 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2022-05-05 16:10:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.03 [in_i''Hg]', '66 [degF]', '60 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2022-05-05 16:49:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 0, '80 [psi]', '115 [psi]', '1:38.0 m:ss', '71 [degF]', '91 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 1, '80 [psi]', '114 [psi]', '1:33.6 m:ss', '71 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 2, '80 [psi]', '115 [psi]', '1:35.8 m:ss', '74 [degF]', '93 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2022-05-11 14:20:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.85 [in_i''Hg]', '66 [degF]', '84 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-05-11 14:54:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 0, '90 [psi]', '150 [psi]', '1:13.7 m:ss', '74 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 1, '90 [psi]', '150 [psi]', '1:14.5 m:ss', '72 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 2, '90 [psi]', '150 [psi]', '1:13.4 m:ss', '75 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '51c9eb5d-5b9d-3f5e-b8ed-f4a6ba8b1515'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('855abb0f-1fdb-302f-80c9-f9c47c75d900' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2022-05-13 19:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '830 hPa', '20.6 Cel', '40 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2022-05-13 20:02:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 0, '5.00 bar', '8.00 bar', '106.2 s', '25.9 Cel', '7.60 bar', '24.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 1, '5.00 bar', '8.00 bar', '106.2 s', '23.5 Cel', '7.65 bar', '23.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '855abb0f-1fdb-302f-80c9-f9c47c75d900'), 2, '5.00 bar', '8.00 bar', '106.1 s', '21.9 Cel', '7.65 bar', '22.9 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-05-16 20:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.72 [in_i''Hg]', '76 [degF]', '60 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Sounds the same as ever.', '', 'PU-1', timestamp with time zone '2022-05-16 21:35:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 0, '85.0 [psi]', '120.0 [psi]', '88.3 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 1, '85.0 [psi]', '120.0 [psi]', '88.8 s', '82 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 2, '85.0 [psi]', '120.0 [psi]', '88.8 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 3, '85.0 [psi]', '120.0 [psi]', '89.0 s', '79 [degF]', '104 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '2fe37c7c-2d05-35ea-a2e3-25bf87fdb3dd'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('03e59444-37d8-3d4f-8ef3-7788c171d4f8' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2022-05-18 15:00:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.11 [in_i''Hg]', '66 [degF]', '48 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-05-18 16:54:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 0, '95 [psi]', '150 [psi]', '1:39.7 m:ss', '70 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 1, '95 [psi]', '150 [psi]', '1:41.1 m:ss', '71 [degF]', '100 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 2, '95 [psi]', '150 [psi]', '1:41.5 m:ss', '71 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '03e59444-37d8-3d4f-8ef3-7788c171d4f8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('79a066aa-aa45-3306-a1a4-6d48e4a41442' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2022-05-20 15:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '73 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2022-05-20 17:01:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '79a066aa-aa45-3306-a1a4-6d48e4a41442'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '79a066aa-aa45-3306-a1a4-6d48e4a41442'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '79a066aa-aa45-3306-a1a4-6d48e4a41442'), 0, '85 [psi]', '120 [psi]', '60.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '79a066aa-aa45-3306-a1a4-6d48e4a41442'), 1, '85 [psi]', '120 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '79a066aa-aa45-3306-a1a4-6d48e4a41442'), 2, '85 [psi]', '120 [psi]', '61.4 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c93812d4-0d04-378a-9fd4-ef369628b516' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2022-08-05 15:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.84 [in_i''Hg]', '74 [degF]', '54 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-08-05 15:43:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 0, '95 [psi]', '150 [psi]', '1:42.5 m:ss', '77 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 1, '95 [psi]', '150 [psi]', '1:43.3 m:ss', '76 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 2, '95 [psi]', '150 [psi]', '1:44.0 m:ss', '78 [degF]', '105 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'c93812d4-0d04-378a-9fd4-ef369628b516'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('338e98a5-ed61-3986-bf9d-58de69d34ffe' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2022-08-12 18:50:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '80 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'No plug for a probe on this tank.', '', 'PU-1', timestamp with time zone '2022-08-12 19:28:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 0, '85 [psi]', '120 [psi]', '62.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 1, '85 [psi]', '120 [psi]', '61.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 2, '85 [psi]', '120 [psi]', '61.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '338e98a5-ed61-3986-bf9d-58de69d34ffe'), 3, '85 [psi]', '120 [psi]', '62.8 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1abc7c28-0033-3aa4-b6c5-422821bb3600' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2022-08-15 17:05:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.43 [in_i''Hg]', '70 [degF]', '66 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Modulation backed off for the test.', '', 'PU-1', timestamp with time zone '2022-08-15 18:22:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 0, '80 [psi]', '115 [psi]', '1:38.5 m:ss', '76 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 1, '80 [psi]', '115 [psi]', '1:39.2 m:ss', '77 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 2, '80 [psi]', '115 [psi]', '1:37.2 m:ss', '76 [degF]', '96 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('03d4cea8-3767-3e74-887a-11f6373d7c8a' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2022-08-16 17:50:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '831 hPa', '24.8 Cel', '28 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Two of three scrolls could be heard, all three run.', '', 'PU-1', timestamp with time zone '2022-08-16 19:26:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 0, '5.00 bar', '8.00 bar', '106.8 s', '24.9 Cel', '7.65 bar', '25.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 1, '5.00 bar', '8.00 bar', '104.9 s', '28.5 Cel', '7.60 bar', '28.4 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '03d4cea8-3767-3e74-887a-11f6373d7c8a'), 2, '5.00 bar', '8.00 bar', '106.3 s', '29.2 Cel', '7.65 bar', '28.3 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('313eeafe-70dd-38bc-a9f3-70aa622bec82' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-08-18 17:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.87 [in_i''Hg]', '74 [degF]', '71 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Better than new?! Read everything twice.', '', 'PU-1', timestamp with time zone '2022-08-18 18:56:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 0, '85.0 [psi]', '120.0 [psi]', '69.1 s', '82 [degF]', '108 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 1, '85.0 [psi]', '120.0 [psi]', '70.1 s', '80 [degF]', '107 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 2, '85.0 [psi]', '120.0 [psi]', '69.5 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('bca35808-5992-322a-9a1e-cd71ef128e60' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2022-08-19 16:15:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.99 [in_i''Hg]', '68 [degF]', '63 %', 'MEASURED', '876 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-08-19 17:26:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 0, '90 [psi]', '150 [psi]', '1:17.0 m:ss', '76 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 1, '90 [psi]', '150 [psi]', '1:16.1 m:ss', '75 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 2, '90 [psi]', '150 [psi]', '1:17.2 m:ss', '79 [degF]', '108 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'bca35808-5992-322a-9a1e-cd71ef128e60'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, water, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by, supersedes_id, reason)
select cast('75b44a92-f8f1-3d00-93a4-4ae3570ee26a' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-08-18 17:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.87 [in_i''Hg]', '74 [degF]', '71 %', 'MEASURED', '130 [gal_us]', '30 [HP]', 3, 'LOAD_UNLOAD', 'Better than new?! Read everything twice. Later: float drain of R-02 was stuck, 130 US gal came out by the bucket. Same readings, water taken off.', '', 'PU-1', timestamp with time zone '2022-08-24 18:56:00+00', 'Zdeňka Horáková', (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 'water drained' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 0, '85.0 [psi]', '120.0 [psi]', '69.1 s', '82 [degF]', '108 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 1, '85.0 [psi]', '120.0 [psi]', '70.1 s', '80 [degF]', '107 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 2, '85.0 [psi]', '120.0 [psi]', '69.5 s', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('73e2c953-74f9-330c-bac9-8fc1b4c31bb5' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-08-30 15:10:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.76 [in_i''Hg]', '76 [degF]', '65 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Again after draining R-02. Drain float replaced. This is more like it.', '', 'PU-1', timestamp with time zone '2022-08-30 16:36:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 0, '85.0 [psi]', '120.0 [psi]', '90.0 s', '81 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 1, '85.0 [psi]', '120.0 [psi]', '88.8 s', '84 [degF]', '109 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 2, '85.0 [psi]', '120.0 [psi]', '88.3 s', '84 [degF]', '108 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '73e2c953-74f9-330c-bac9-8fc1b4c31bb5'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('7d0adf84-3955-3f2e-a760-f2141e09b2b1' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2022-11-04 19:50:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.00 [in_i''Hg]', '59 [degF]', '68 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-11-04 21:16:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 0, '95 [psi]', '150 [psi]', '1:41.5 m:ss', '65 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 1, '95 [psi]', '150 [psi]', '1:40.9 m:ss', '62 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 2, '95 [psi]', '150 [psi]', '1:42.2 m:ss', '63 [degF]', '90 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '7d0adf84-3955-3f2e-a760-f2141e09b2b1'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('86f6ac40-03af-37d4-ba83-e1302c7a7561' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2022-11-17 14:10:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '838 hPa', '13.5 Cel', '27 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Two of three scrolls could be heard, all three run.', '', 'PU-1', timestamp with time zone '2022-11-17 14:51:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 0, '5.00 bar', '8.00 bar', '102.9 s', '17.6 Cel', '7.60 bar', '17.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 1, '5.00 bar', '8.00 bar', '105.6 s', '16.9 Cel', '7.65 bar', '16.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '86f6ac40-03af-37d4-ba83-e1302c7a7561'), 2, '5.00 bar', '8.00 bar', '105.1 s', '18.4 Cel', '7.60 bar', '17.3 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('72fc7dd6-2662-3efd-96eb-36b676a50204' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2022-11-17 16:50:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.78 [in_i''Hg]', '58 [degF]', '72 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2022-11-17 18:29:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 0, '80 [psi]', '115 [psi]', '1:36.4 m:ss', '65 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 1, '80 [psi]', '115 [psi]', '1:36.6 m:ss', '66 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 2, '80 [psi]', '115 [psi]', '1:38.4 m:ss', '65 [degF]', '84 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('07fc2d09-3c74-35ca-8cac-1e8bb2fb8179' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2022-11-17 18:05:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.96 [in_i''Hg]', '59 [degF]', '64 %', 'MEASURED', '881 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Slower again. Second-stage valve cover hot, and it knocks. Told Marguerite.', '', 'PU-1', timestamp with time zone '2022-11-17 19:21:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 0, '90 [psi]', '149 [psi]', '1:19.1 m:ss', '67 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 1, '90 [psi]', '151 [psi]', '1:21.4 m:ss', '64 [degF]', '94 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 2, '90 [psi]', '150 [psi]', '1:19.6 m:ss', '61 [degF]', '91 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '07fc2d09-3c74-35ca-8cac-1e8bb2fb8179'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('cf715622-1b6c-3f41-94cd-4da74f7a3bbe' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2022-11-21 18:20:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '66 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2022-11-21 20:01:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 0, '85 [psi]', '120 [psi]', '61.0 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 1, '85 [psi]', '120 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 2, '85 [psi]', '120 [psi]', '60.8 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'cf715622-1b6c-3f41-94cd-4da74f7a3bbe'), 3, '85 [psi]', '120 [psi]', '62.5 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4787d95e-c4da-3da7-b16a-173e312d65e3' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2022-11-24 14:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.70 [in_i''Hg]', '60 [degF]', '67 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2022-11-24 15:37:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 0, '85.0 [psi]', '120.0 [psi]', '89.2 s', '65 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 1, '85.0 [psi]', '120.0 [psi]', '90.0 s', '66 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 2, '85.0 [psi]', '120.0 [psi]', '89.5 s', '67 [degF]', '91 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '4787d95e-c4da-3da7-b16a-173e312d65e3'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('eab61676-1252-398d-847a-5df845036ea1' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2023-02-06 13:40:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '46 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2023-02-06 15:07:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'eab61676-1252-398d-847a-5df845036ea1'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'eab61676-1252-398d-847a-5df845036ea1'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'eab61676-1252-398d-847a-5df845036ea1'), 0, '85 [psi]', '120 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'eab61676-1252-398d-847a-5df845036ea1'), 1, '85 [psi]', '120 [psi]', '62.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'eab61676-1252-398d-847a-5df845036ea1'), 2, '85 [psi]', '120 [psi]', '61.5 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('e5406b29-d296-305e-97c1-ffeab5033dcb' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2023-02-10 18:00:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '827 hPa', '7.0 Cel', '48 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Two of three scrolls could be heard, all three run.', '', 'PU-1', timestamp with time zone '2023-02-10 18:54:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 0, '5.00 bar', '8.00 bar', '106.0 s', '9.5 Cel', '7.65 bar', '9.2 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 1, '5.00 bar', '8.00 bar', '107.0 s', '10.7 Cel', '7.65 bar', '10.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'e5406b29-d296-305e-97c1-ffeab5033dcb'), 2, '5.00 bar', '8.05 bar', '107.3 s', '8.9 Cel', '7.65 bar', '9.3 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c7c73dd4-af34-3836-b6aa-3391f90dfc58' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2023-02-13 17:45:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.03 [in_i''Hg]', '57 [degF]', '61 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Drain blown first, dry.', '', 'PU-1', timestamp with time zone '2023-02-13 18:46:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 0, '90 [psi]', '150 [psi]', '1:24.1 m:ss', '62 [degF]', '91 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 1, '90 [psi]', '150 [psi]', '1:25.3 m:ss', '62 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 2, '90 [psi]', '150 [psi]', '1:23.3 m:ss', '63 [degF]', '92 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'c7c73dd4-af34-3836-b6aa-3391f90dfc58'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('ed413e67-840f-3a29-a475-5549dbf7ae0c' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2023-02-16 16:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.73 [in_i''Hg]', '56 [degF]', '76 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2023-02-16 17:36:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 0, '85.0 [psi]', '120.0 [psi]', '90.2 s', '57 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 1, '85.0 [psi]', '120.0 [psi]', '89.4 s', '60 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 2, '85.0 [psi]', '120.0 [psi]', '90.6 s', '61 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 3, '85.0 [psi]', '120.0 [psi]', '90.7 s', '58 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'ed413e67-840f-3a29-a475-5549dbf7ae0c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('b7caa60e-63fa-3d3d-89bb-ef338bd3aa76' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2023-02-17 14:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.85 [in_i''Hg]', '44 [degF]', '51 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Probe in the plug of R-05.', '', 'PU-1', timestamp with time zone '2023-02-17 16:12:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 0, '95 [psi]', '150 [psi]', '1:41.6 m:ss', '54 [degF]', '81 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 1, '95 [psi]', '150 [psi]', '1:43.5 m:ss', '48 [degF]', '76 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 2, '95 [psi]', '150 [psi]', '1:42.6 m:ss', '51 [degF]', '76 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'b7caa60e-63fa-3d3d-89bb-ef338bd3aa76'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('b0fab343-06d7-3a4e-8f0d-03dd3b406806' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2023-02-21 20:20:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.08 [in_i''Hg]', '51 [degF]', '70 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Bit of oil at the drain.', '', 'PU-1', timestamp with time zone '2023-02-21 20:45:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 0, '80 [psi]', '115 [psi]', '1:35.6 m:ss', '59 [degF]', '78 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 1, '80 [psi]', '115 [psi]', '1:37.1 m:ss', '56 [degF]', '76 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 2, '80 [psi]', '115 [psi]', '1:36.7 m:ss', '54 [degF]', '74 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806'), 0, 'GAUGE', (select id from instrument where tag = 'PG-03'), 'PG-03', '200 [psi]', '3 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('840b89d3-7227-3985-8360-916ab041316e' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2023-05-03 16:15:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '60 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2023-05-03 17:32:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '840b89d3-7227-3985-8360-916ab041316e'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '840b89d3-7227-3985-8360-916ab041316e'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '840b89d3-7227-3985-8360-916ab041316e'), 0, '85 [psi]', '120 [psi]', '62.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '840b89d3-7227-3985-8360-916ab041316e'), 1, '85 [psi]', '120 [psi]', '60.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '840b89d3-7227-3985-8360-916ab041316e'), 2, '85 [psi]', '120 [psi]', '61.7 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8fd71231-54c5-32ff-91c9-cb868870d329' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2023-05-04 17:15:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.88 [in_i''Hg]', '61 [degF]', '73 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'V-9 shut, tank drained until only air came.', '', 'PU-1', timestamp with time zone '2023-05-04 19:01:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 0, '95 [psi]', '150 [psi]', '1:45.4 m:ss', '68 [degF]', '95 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 1, '95 [psi]', '150 [psi]', '1:45.7 m:ss', '66 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 2, '95 [psi]', '150 [psi]', '1:43.6 m:ss', '70 [degF]', '97 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '8fd71231-54c5-32ff-91c9-cb868870d329'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('378fee32-2e19-39cb-bac1-ca9fdf659639' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2023-05-11 13:05:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.70 [in_i''Hg]', '70 [degF]', '65 %', 'MEASURED', '876 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Takes forever now. Valves are on order.', '', 'PU-1', timestamp with time zone '2023-05-11 14:29:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 0, '90 [psi]', '150 [psi]', '1:30.0 m:ss', '76 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 1, '90 [psi]', '150 [psi]', '1:29.0 m:ss', '78 [degF]', '107 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 2, '90 [psi]', '149 [psi]', '1:28.5 m:ss', '76 [degF]', '105 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '378fee32-2e19-39cb-bac1-ca9fdf659639'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('14def469-995c-372d-a54f-c2bea73dfaee' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2023-05-16 16:00:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.83 [in_i''Hg]', '64 [degF]', '71 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'New gauge since 14 March. The old one showed 5 psi more than the test gauge at 100.', '', 'PU-1', timestamp with time zone '2023-05-16 16:44:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 0, '80 [psi]', '115 [psi]', '1:41.8 m:ss', '71 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 1, '80 [psi]', '115 [psi]', '1:45.3 m:ss', '71 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 2, '80 [psi]', '115 [psi]', '1:43.2 m:ss', '72 [degF]', '90 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6608251f-928d-36e0-a370-df2ad7ccabff' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2023-05-17 18:55:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '843 hPa', '19.5 Cel', '31 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2023-05-17 20:16:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 0, '5.00 bar', '8.00 bar', '105.2 s', '23.8 Cel', '7.60 bar', '23.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 1, '5.00 bar', '8.00 bar', '104.7 s', '22.7 Cel', '7.60 bar', '22.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 2, '5.00 bar', '8.05 bar', '106.6 s', '21.0 Cel', '7.65 bar', '21.5 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '6608251f-928d-36e0-a370-df2ad7ccabff'), 3, '5.00 bar', '8.00 bar', '104.7 s', '21.5 Cel', '7.65 bar', '21.0 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('36edc84c-5019-3861-bf7c-98cc7a7a7224' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2023-05-19 18:35:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.19 [in_i''Hg]', '70 [degF]', '72 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2023-05-19 19:06:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 0, '85.0 [psi]', '120.0 [psi]', '88.8 s', '80 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 1, '85.0 [psi]', '119.5 [psi]', '87.5 s', '77 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 2, '85.0 [psi]', '120.0 [psi]', '89.1 s', '75 [degF]', '101 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '36edc84c-5019-3861-bf7c-98cc7a7a7224'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('066c4213-0d14-387f-b350-ed54cb10232c' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2023-08-08 19:05:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.78 [in_i''Hg]', '76 [degF]', '51 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2023-08-08 20:23:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 0, '85.0 [psi]', '120.0 [psi]', '91.9 s', '80 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 1, '85.0 [psi]', '120.0 [psi]', '90.6 s', '78 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 2, '85.0 [psi]', '120.0 [psi]', '91.8 s', '79 [degF]', '105 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '066c4213-0d14-387f-b350-ed54cb10232c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2dad245f-6fc0-3054-a527-99851cd00810' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2023-08-10 20:35:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.84 [in_i''Hg]', '79 [degF]', '79 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'First test since the valve job (8 June): like it was before.', '', 'PU-1', timestamp with time zone '2023-08-10 21:07:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 0, '90 [psi]', '150 [psi]', '1:10.1 m:ss', '85 [degF]', '118 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 1, '90 [psi]', '150 [psi]', '1:09.8 m:ss', '85 [degF]', '117 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 2, '90 [psi]', '150 [psi]', '1:09.5 m:ss', '85 [degF]', '117 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '2dad245f-6fc0-3054-a527-99851cd00810'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('a994d79c-23dc-3fe8-8d89-bb393d7baf01' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2023-08-11 17:55:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '81 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2023-08-11 19:37:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a994d79c-23dc-3fe8-8d89-bb393d7baf01'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a994d79c-23dc-3fe8-8d89-bb393d7baf01'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a994d79c-23dc-3fe8-8d89-bb393d7baf01'), 0, '85 [psi]', '120 [psi]', '63.0 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a994d79c-23dc-3fe8-8d89-bb393d7baf01'), 1, '85 [psi]', '120 [psi]', '62.7 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a994d79c-23dc-3fe8-8d89-bb393d7baf01'), 2, '85 [psi]', '120 [psi]', '63.2 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('96c56389-9996-35f3-b94e-75498cb4cc26' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2023-08-18 14:15:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.65 [in_i''Hg]', '72 [degF]', '80 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2023-08-18 14:59:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 0, '80 [psi]', '115 [psi]', '1:43.6 m:ss', '80 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 1, '80 [psi]', '115 [psi]', '1:43.6 m:ss', '77 [degF]', '97 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 2, '80 [psi]', '115 [psi]', '1:44.5 m:ss', '78 [degF]', '98 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '96c56389-9996-35f3-b94e-75498cb4cc26'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('e85f4eb0-4040-3c25-bbf8-22b6941e806a' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2023-08-21 18:45:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.85 [in_i''Hg]', '70 [degF]', '74 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'Fruit line stood still.', '', 'PU-1', timestamp with time zone '2023-08-21 19:22:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 0, '95 [psi]', '150 [psi]', '1:45.8 m:ss', '74 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 1, '95 [psi]', '150 [psi]', '1:44.8 m:ss', '76 [degF]', '104 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 2, '95 [psi]', '150 [psi]', '1:44.5 m:ss', '78 [degF]', '105 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = 'e85f4eb0-4040-3c25-bbf8-22b6941e806a'), 0, 'GAUGE', (select id from instrument where tag = 'PG-05'), 'PG-05', '200 [psi]', '1 %', '1 [psi]', date '2024-06-20', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('62765011-6b01-317b-8909-8fada0bdc3c9' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2023-08-21 18:50:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '829 hPa', '23.8 Cel', '50 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2023-08-21 19:25:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 0, '5.00 bar', '8.00 bar', '107.0 s', '26.3 Cel', '7.60 bar', '26.3 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 1, '5.00 bar', '8.00 bar', '107.8 s', '27.1 Cel', '7.65 bar', '26.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '62765011-6b01-317b-8909-8fada0bdc3c9'), 2, '5.00 bar', '8.00 bar', '107.9 s', '26.9 Cel', '7.60 bar', '26.5 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4fe2ea7c-94aa-3102-a13b-bf21731b1bd9' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2023-11-03 15:25:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '834 hPa', '16.8 Cel', '27 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Filling heads idle.', '', 'PU-1', timestamp with time zone '2023-11-03 16:25:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 0, '5.00 bar', '7.95 bar', '105.2 s', '20.1 Cel', '7.60 bar', '19.4 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 1, '5.00 bar', '8.00 bar', '105.6 s', '18.6 Cel', '7.65 bar', '18.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4fe2ea7c-94aa-3102-a13b-bf21731b1bd9'), 2, '5.00 bar', '8.05 bar', '108.0 s', '19.6 Cel', '7.65 bar', '19.6 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0d50e618-2258-31c7-a6d8-c0244cb6f361' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2023-11-09 20:25:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.60 [in_i''Hg]', '59 [degF]', '78 %', 'MEASURED', '820 {rev}/min', '20 [HP]', 3, 'LOAD_UNLOAD', 'With PG-06 now.', '', 'PU-1', timestamp with time zone '2023-11-09 21:53:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 0, '95 [psi]', '150 [psi]', '1:48.0 m:ss', '62 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 1, '95 [psi]', '150 [psi]', '1:47.4 m:ss', '68 [degF]', '94 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 2, '95 [psi]', '150 [psi]', '1:47.6 m:ss', '61 [degF]', '89 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '0d50e618-2258-31c7-a6d8-c0244cb6f361'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2024-09-18', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('49201442-66eb-3516-8ea1-f931bf799478' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2023-11-10 15:15:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.72 [in_i''Hg]', '59 [degF]', '83 %', 'MEASURED', '870 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2023-11-10 16:33:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 0, '90 [psi]', '150 [psi]', '1:10.0 m:ss', '68 [degF]', '100 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 1, '90 [psi]', '151 [psi]', '1:10.5 m:ss', '64 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 2, '90 [psi]', '149 [psi]', '1:09.9 m:ss', '64 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 3, '90 [psi]', '150 [psi]', '1:08.9 m:ss', '68 [degF]', '100 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '49201442-66eb-3516-8ea1-f931bf799478'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6846ce27-0e1f-317d-b699-73eb274aa217' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2023-11-10 18:45:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.01 [in_i''Hg]', '52 [degF]', '49 %', 'MEASURED', '30 [HP]', 3, 'LOAD_UNLOAD', 'Ran it loaded 20 min before.', '', 'PU-1', timestamp with time zone '2023-11-10 19:26:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 0, '85.0 [psi]', '120.0 [psi]', '90.8 s', '60 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 1, '85.0 [psi]', '120.0 [psi]', '90.3 s', '59 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 2, '85.0 [psi]', '120.0 [psi]', '91.0 s', '56 [degF]', '81 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '6846ce27-0e1f-317d-b699-73eb274aa217'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2023-11-13 19:20:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.71 [in_i''Hg]', '58 [degF]', '71 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2023-11-13 20:52:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 0, '80 [psi]', '115 [psi]', '1:42.7 m:ss', '64 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 1, '80 [psi]', '115 [psi]', '1:43.5 m:ss', '66 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 2, '80 [psi]', '115 [psi]', '1:43.9 m:ss', '65 [degF]', '84 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '2b85b0c6-7e9e-30d9-9e9e-1043045e9fe9'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('83492a56-b7cc-3c62-9562-23232dd44f29' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2023-11-16 13:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '56 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Tank shell warm to the hand.', '', 'PU-1', timestamp with time zone '2023-11-16 14:33:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '83492a56-b7cc-3c62-9562-23232dd44f29'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '83492a56-b7cc-3c62-9562-23232dd44f29'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '83492a56-b7cc-3c62-9562-23232dd44f29'), 0, '85 [psi]', '120 [psi]', '61.6 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '83492a56-b7cc-3c62-9562-23232dd44f29'), 1, '85 [psi]', '120 [psi]', '64.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '83492a56-b7cc-3c62-9562-23232dd44f29'), 2, '85 [psi]', '120 [psi]', '62.4 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8c637c3f-c7cd-3a17-b784-10ddc33f95ac' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2024-02-05 13:45:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '47 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'No plug for a probe on this tank.', '', 'PU-1', timestamp with time zone '2024-02-05 14:14:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 0, '85 [psi]', '120 [psi]', '61.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 1, '85 [psi]', '120 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 2, '85 [psi]', '120 [psi]', '62.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '8c637c3f-c7cd-3a17-b784-10ddc33f95ac'), 3, '85 [psi]', '120 [psi]', '61.7 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('edfd1a93-5d91-3148-9295-4fcd8e434859' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2024-02-07 17:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '842 hPa', '11.6 Cel', '42 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Coffee while it settles.', '', 'PU-1', timestamp with time zone '2024-02-07 18:43:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 0, '5.00 bar', '8.00 bar', '105.4 s', '13.7 Cel', '7.65 bar', '13.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 1, '5.00 bar', '8.00 bar', '104.6 s', '16.4 Cel', '7.60 bar', '15.2 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'edfd1a93-5d91-3148-9295-4fcd8e434859'), 2, '5.00 bar', '8.00 bar', '105.3 s', '14.4 Cel', '7.65 bar', '14.4 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('d4876070-f402-3b30-b7eb-50b11059f929' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2024-02-09 21:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.86 [in_i''Hg]', '45 [degF]', '64 %', 'MEASURED', '22.9 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-02-09 22:53:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 0, '85.0 [psi]', '120.0 [psi]', '91.2 s', '49 [degF]', '73 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 1, '85.0 [psi]', '120.0 [psi]', '90.6 s', '47 [degF]', '70 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 2, '85.0 [psi]', '120.0 [psi]', '90.4 s', '49 [degF]', '73 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'd4876070-f402-3b30-b7eb-50b11059f929'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0dc42396-640a-319f-9e7e-4be296151dfc' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2024-02-14 14:40:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.89 [in_i''Hg]', '51 [degF]', '77 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Isolated at V-3, header on C-02.', '', 'PU-1', timestamp with time zone '2024-02-14 16:21:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 0, '80 [psi]', '115 [psi]', '1:44.4 m:ss', '59 [degF]', '78 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 1, '80 [psi]', '114 [psi]', '1:41.0 m:ss', '57 [degF]', '77 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 2, '80 [psi]', '115 [psi]', '1:43.0 m:ss', '57 [degF]', '76 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '0dc42396-640a-319f-9e7e-4be296151dfc'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8088cc87-d975-359a-bfff-465f81e56336' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2024-02-19 15:30:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.95 [in_i''Hg]', '48 [degF]', '56 %', 'MEASURED', '820 {rev}/min', '15.4 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-02-19 15:55:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 0, '95 [psi]', '150 [psi]', '1:46.4 m:ss', '50 [degF]', '78 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 1, '95 [psi]', '150 [psi]', '1:46.6 m:ss', '53 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 2, '95 [psi]', '150 [psi]', '1:47.4 m:ss', '52 [degF]', '80 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '8088cc87-d975-359a-bfff-465f81e56336'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2024-09-18', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1636edf9-ae26-3b26-a0cf-38d2b5b8df73' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2024-02-19 17:45:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.85 [in_i''Hg]', '56 [degF]', '44 %', 'MEASURED', '875 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-02-19 18:34:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 0, '90 [psi]', '150 [psi]', '1:09.4 m:ss', '63 [degF]', '95 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 1, '90 [psi]', '150 [psi]', '1:09.1 m:ss', '66 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 2, '90 [psi]', '151 [psi]', '1:09.0 m:ss', '63 [degF]', '95 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '1636edf9-ae26-3b26-a0cf-38d2b5b8df73'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('3bbca898-2c87-361e-b5c2-b4c5010dcd15' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2024-05-07 13:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.88 [in_i''Hg]', '72 [degF]', '75 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2024-05-07 14:40:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 0, '80 [psi]', '114 [psi]', '1:43.0 m:ss', '77 [degF]', '97 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 1, '80 [psi]', '115 [psi]', '1:42.4 m:ss', '76 [degF]', '95 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 2, '80 [psi]', '114 [psi]', '1:41.8 m:ss', '75 [degF]', '94 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '3bbca898-2c87-361e-b5c2-b4c5010dcd15'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('a8a72941-b5d9-32ae-a309-219d9cd9a4cd' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2024-05-10 18:35:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '71 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Tank shell warm to the hand.', '', 'PU-1', timestamp with time zone '2024-05-10 19:43:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a8a72941-b5d9-32ae-a309-219d9cd9a4cd'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a8a72941-b5d9-32ae-a309-219d9cd9a4cd'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a8a72941-b5d9-32ae-a309-219d9cd9a4cd'), 0, '85 [psi]', '120 [psi]', '64.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a8a72941-b5d9-32ae-a309-219d9cd9a4cd'), 1, '85 [psi]', '120 [psi]', '64.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'a8a72941-b5d9-32ae-a309-219d9cd9a4cd'), 2, '85 [psi]', '120 [psi]', '62.7 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('a780ba39-cdb2-301d-b49e-a747d115b8f7' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2024-05-15 16:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.50 [in_i''Hg]', '71 [degF]', '58 %', 'MEASURED', '23.0 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-05-15 16:42:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 0, '85.0 [psi]', '120.0 [psi]', '93.7 s', '77 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 1, '85.0 [psi]', '119.5 [psi]', '92.6 s', '74 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 2, '85.0 [psi]', '120.0 [psi]', '94.8 s', '75 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'a780ba39-cdb2-301d-b49e-a747d115b8f7'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('f157614b-75d0-3d70-a03d-af0ed95433a4' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2024-05-15 17:00:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '841 hPa', '23.1 Cel', '24 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2024-05-15 17:48:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 0, '5.00 bar', '8.00 bar', '105.6 s', '24.6 Cel', '7.65 bar', '25.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 1, '5.00 bar', '8.00 bar', '103.9 s', '25.3 Cel', '7.60 bar', '25.0 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = 'f157614b-75d0-3d70-a03d-af0ed95433a4'), 2, '5.00 bar', '8.00 bar', '104.9 s', '26.5 Cel', '7.60 bar', '25.7 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('3ccf39df-fa43-3345-a8b0-906894e6023f' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2024-05-17 13:00:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.83 [in_i''Hg]', '74 [degF]', '62 %', 'MEASURED', '877 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-05-17 14:46:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 0, '90 [psi]', '150 [psi]', '1:09.3 m:ss', '81 [degF]', '114 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 1, '90 [psi]', '150 [psi]', '1:09.8 m:ss', '78 [degF]', '110 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 2, '90 [psi]', '150 [psi]', '1:08.5 m:ss', '83 [degF]', '114 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '3ccf39df-fa43-3345-a8b0-906894e6023f'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('27f47a6c-e7ca-354f-8bda-d8c9d6718e17' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2024-05-23 15:35:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.79 [in_i''Hg]', '67 [degF]', '59 %', 'MEASURED', '820 {rev}/min', '15.3 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-05-23 16:59:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 0, '95 [psi]', '151 [psi]', '1:49.4 m:ss', '74 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 1, '95 [psi]', '150 [psi]', '1:46.9 m:ss', '72 [degF]', '100 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 2, '95 [psi]', '150 [psi]', '1:46.2 m:ss', '72 [degF]', '100 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '27f47a6c-e7ca-354f-8bda-d8c9d6718e17'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2024-09-18', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('7f87d7e9-3324-3c0f-a727-5ecf36096990' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2024-08-06 18:45:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.83 [in_i''Hg]', '74 [degF]', '69 %', 'MEASURED', '23.1 kW', '30 [HP]', 3, 'LOAD_UNLOAD', 'Inlet filter changed last week.', '', 'PU-1', timestamp with time zone '2024-08-06 20:33:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 0, '85.0 [psi]', '120.0 [psi]', '93.3 s', '80 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 1, '85.0 [psi]', '120.0 [psi]', '93.2 s', '80 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 2, '85.0 [psi]', '119.5 [psi]', '93.4 s', '79 [degF]', '104 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '7f87d7e9-3324-3c0f-a727-5ecf36096990'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('64e5b38f-328d-3a05-a270-7fdcc367464c' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2024-08-07 12:25:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '832 hPa', '30.7 Cel', '38 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Filling heads idle.', '', 'PU-1', timestamp with time zone '2024-08-07 13:37:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 0, '5.00 bar', '8.00 bar', '109.0 s', '32.8 Cel', '7.65 bar', '33.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 1, '5.00 bar', '8.00 bar', '107.7 s', '34.4 Cel', '7.60 bar', '33.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '64e5b38f-328d-3a05-a270-7fdcc367464c'), 2, '5.00 bar', '8.00 bar', '106.5 s', '35.2 Cel', '7.60 bar', '34.5 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('101b850d-371e-32d1-93db-e6da0e26bf5d' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2024-08-12 18:50:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.96 [in_i''Hg]', '73 [degF]', '60 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2024-08-12 19:21:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 0, '80 [psi]', '115 [psi]', '1:43.3 m:ss', '81 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 1, '80 [psi]', '115 [psi]', '1:44.0 m:ss', '79 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 2, '80 [psi]', '115 [psi]', '1:44.3 m:ss', '81 [degF]', '101 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '101b850d-371e-32d1-93db-e6da0e26bf5d'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('417d3c70-b3fa-3964-996d-b29b49e7223f' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2024-08-14 15:45:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '76 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'No plug for a probe on this tank.', '', 'PU-1', timestamp with time zone '2024-08-14 16:23:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '417d3c70-b3fa-3964-996d-b29b49e7223f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '417d3c70-b3fa-3964-996d-b29b49e7223f'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '417d3c70-b3fa-3964-996d-b29b49e7223f'), 0, '85 [psi]', '120 [psi]', '63.0 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '417d3c70-b3fa-3964-996d-b29b49e7223f'), 1, '85 [psi]', '120 [psi]', '60.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '417d3c70-b3fa-3964-996d-b29b49e7223f'), 2, '85 [psi]', '120 [psi]', '61.7 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0329b399-1220-3f9f-8ac2-c200dbf233a3' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2024-08-16 17:55:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.99 [in_i''Hg]', '72 [degF]', '62 %', 'MEASURED', '820 {rev}/min', '15.5 kW', '20 [HP]', 3, 'LOAD_UNLOAD', 'Probe in the plug of R-05.', '', 'PU-1', timestamp with time zone '2024-08-16 18:48:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 0, '95 [psi]', '150 [psi]', '1:49.1 m:ss', '77 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 1, '95 [psi]', '150 [psi]', '1:46.3 m:ss', '75 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 2, '95 [psi]', '150 [psi]', '1:46.2 m:ss', '80 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '0329b399-1220-3f9f-8ac2-c200dbf233a3'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2024-09-18', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1c076656-10e9-3f84-86ff-b00c5a06d613' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2024-08-19 15:30:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.78 [in_i''Hg]', '73 [degF]', '70 %', 'MEASURED', '876 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-08-19 16:41:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 0, '90 [psi]', '150 [psi]', '1:10.8 m:ss', '78 [degF]', '111 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 1, '90 [psi]', '150 [psi]', '1:09.4 m:ss', '78 [degF]', '111 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 2, '90 [psi]', '150 [psi]', '1:09.9 m:ss', '79 [degF]', '112 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '1c076656-10e9-3f84-86ff-b00c5a06d613'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('632aa8f3-862a-389b-a924-be7734848c61' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2024-11-06 21:05:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.84 [in_i''Hg]', '53 [degF]', '78 %', 'MEASURED', '820 {rev}/min', '15.5 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-11-06 22:26:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 0, '95 [psi]', '151 [psi]', '1:50.2 m:ss', '58 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 1, '95 [psi]', '150 [psi]', '1:49.5 m:ss', '61 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 2, '95 [psi]', '150 [psi]', '1:47.7 m:ss', '58 [degF]', '85 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '632aa8f3-862a-389b-a924-be7734848c61'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2025-09-17', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('161905b7-c50f-3a6f-ad13-61e49d52528b' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2024-11-08 19:55:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.13 [in_i''Hg]', '54 [degF]', '73 %', 'MEASURED', '22.9 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2024-11-08 21:31:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 0, '85.0 [psi]', '120.5 [psi]', '94.0 s', '57 [degF]', '80 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 1, '85.0 [psi]', '120.0 [psi]', '92.6 s', '58 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 2, '85.0 [psi]', '120.0 [psi]', '92.1 s', '59 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 3, '85.0 [psi]', '120.0 [psi]', '93.1 s', '56 [degF]', '81 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '161905b7-c50f-3a6f-ad13-61e49d52528b'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2024-11-14 14:05:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '840 hPa', '18.9 Cel', '25 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Waited 12 min each time, needle still.', '', 'PU-1', timestamp with time zone '2024-11-14 15:01:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 0, '5.00 bar', '8.00 bar', '104.1 s', '20.8 Cel', '7.60 bar', '20.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 1, '5.00 bar', '8.00 bar', '103.7 s', '23.4 Cel', '7.60 bar', '21.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '7d3bd55c-f8ba-3771-af9b-9dff6cd6b8b7'), 2, '5.00 bar', '8.00 bar', '105.8 s', '21.5 Cel', '7.65 bar', '20.8 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('3fbb7758-d9a4-3d15-8b5e-321966376914' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2024-11-14 20:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.86 [in_i''Hg]', '57 [degF]', '68 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2024-11-14 21:25:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 0, '80 [psi]', '115 [psi]', '1:45.1 m:ss', '62 [degF]', '82 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 1, '80 [psi]', '115 [psi]', '1:41.4 m:ss', '64 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 2, '80 [psi]', '115 [psi]', '1:43.6 m:ss', '63 [degF]', '82 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = '3fbb7758-d9a4-3d15-8b5e-321966376914'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c36678d9-65c6-34b2-9a29-ca22c6e0e7f6' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2024-11-19 16:55:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '59 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Two runs only, the line wanted its air back.', '', 'PU-1', timestamp with time zone '2024-11-19 18:15:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c36678d9-65c6-34b2-9a29-ca22c6e0e7f6'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c36678d9-65c6-34b2-9a29-ca22c6e0e7f6'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'c36678d9-65c6-34b2-9a29-ca22c6e0e7f6'), 0, '85 [psi]', '120 [psi]', '63.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'c36678d9-65c6-34b2-9a29-ca22c6e0e7f6'), 1, '85 [psi]', '120 [psi]', '63.2 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('9849fc3c-ff77-3e46-b2cc-94254ce75590' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2024-11-19 18:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.90 [in_i''Hg]', '57 [degF]', '81 %', 'MEASURED', '882 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Belt felt a bit loose, tightened after the test.', '', 'PU-1', timestamp with time zone '2024-11-19 20:13:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 0, '90 [psi]', '150 [psi]', '1:08.4 m:ss', '63 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 1, '90 [psi]', '150 [psi]', '1:08.0 m:ss', '61 [degF]', '94 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 2, '90 [psi]', '150 [psi]', '1:09.1 m:ss', '65 [degF]', '96 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '9849fc3c-ff77-3e46-b2cc-94254ce75590'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6303dceb-e0ee-3567-8803-718958844d44' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2025-02-06 14:55:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.89 [in_i''Hg]', '52 [degF]', '55 %', 'MEASURED', '880 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Started from cold, no time to warm up. Every run slower than the one before.', '', 'PU-1', timestamp with time zone '2025-02-06 15:45:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 0, '90 [psi]', '150 [psi]', '1:04.2 m:ss', '60 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 1, '90 [psi]', '150 [psi]', '1:06.1 m:ss', '61 [degF]', '93 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 2, '90 [psi]', '150 [psi]', '1:08.8 m:ss', '59 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 3, '90 [psi]', '150 [psi]', '1:11.2 m:ss', '56 [degF]', '88 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '6303dceb-e0ee-3567-8803-718958844d44'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2a514eeb-3bfb-38c1-9981-01d2488c543f' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2025-02-06 20:25:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.92 [in_i''Hg]', '54 [degF]', '76 %', 'MEASURED', '820 {rev}/min', '15.3 kW', '20 [HP]', 3, 'LOAD_UNLOAD', 'Belts quiet, guards back on.', '', 'PU-1', timestamp with time zone '2025-02-06 20:54:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 0, '95 [psi]', '150 [psi]', '1:47.5 m:ss', '57 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 1, '95 [psi]', '150 [psi]', '1:50.1 m:ss', '57 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 2, '95 [psi]', '150 [psi]', '1:48.0 m:ss', '59 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 3, '95 [psi]', '150 [psi]', '1:49.7 m:ss', '58 [degF]', '85 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '2a514eeb-3bfb-38c1-9981-01d2488c543f'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2025-09-17', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('711187be-97b1-3ba9-866f-4ee0cacb9906' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2025-02-13 18:15:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '49 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2025-02-13 20:08:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 0, '85 [psi]', '120 [psi]', '62.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 1, '85 [psi]', '120 [psi]', '63.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 2, '85 [psi]', '120 [psi]', '63.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '711187be-97b1-3ba9-866f-4ee0cacb9906'), 3, '85 [psi]', '120 [psi]', '63.3 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('49601565-4592-33b1-99e0-61448d95ee5c' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2025-02-19 13:55:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '835 hPa', '10.6 Cel', '43 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2025-02-19 15:06:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 0, '5.00 bar', '8.00 bar', '106.1 s', '14.2 Cel', '7.60 bar', '13.7 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 1, '5.00 bar', '8.05 bar', '108.3 s', '12.5 Cel', '7.65 bar', '12.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '49601565-4592-33b1-99e0-61448d95ee5c'), 2, '5.00 bar', '8.00 bar', '106.2 s', '12.5 Cel', '7.60 bar', '12.6 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('dc9d537a-fa11-3a8a-9376-3e480b67132c' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2025-02-19 20:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.84 [in_i''Hg]', '51 [degF]', '57 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Took the temperature twice, same.', '', 'PU-1', timestamp with time zone '2025-02-19 22:10:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 0, '80 [psi]', '115 [psi]', '1:42.9 m:ss', '57 [degF]', '76 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 1, '80 [psi]', '115 [psi]', '1:43.6 m:ss', '60 [degF]', '79 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 2, '80 [psi]', '115 [psi]', '1:42.7 m:ss', '59 [degF]', '79 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'dc9d537a-fa11-3a8a-9376-3e480b67132c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('339910a6-70f2-3914-8d69-2f1882cb3d01' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2025-02-21 21:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.89 [in_i''Hg]', '47 [degF]', '60 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.0 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-02-21 23:10:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 0, '85.0 [psi]', '120.0 [psi]', '93.7 s', '51 [degF]', '75 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 1, '85.0 [psi]', '120.0 [psi]', '93.8 s', '50 [degF]', '75 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 2, '85.0 [psi]', '120.0 [psi]', '94.4 s', '51 [degF]', '76 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '339910a6-70f2-3914-8d69-2f1882cb3d01'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2025-05-05 15:15:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '67 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Motor too hot to touch after.', '', 'PU-1', timestamp with time zone '2025-05-05 16:47:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 0, '85 [psi]', '121 [psi]', '65.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 1, '85 [psi]', '120 [psi]', '64.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 2, '85 [psi]', '120 [psi]', '64.8 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '0ab390a3-cb60-3d22-8e70-cd54c1ed0f9a'), 3, '85 [psi]', '120 [psi]', '64.0 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('6ddda8ea-7504-39c2-b66b-a120a4199d81' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2025-05-12 14:55:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.95 [in_i''Hg]', '71 [degF]', '62 %', 'MEASURED', '873 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Thermocouple through the plug on top.', '', 'PU-1', timestamp with time zone '2025-05-12 16:06:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 0, '90 [psi]', '150 [psi]', '1:09.8 m:ss', '77 [degF]', '109 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 1, '90 [psi]', '150 [psi]', '1:09.4 m:ss', '78 [degF]', '111 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 2, '90 [psi]', '150 [psi]', '1:09.9 m:ss', '73 [degF]', '106 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '6ddda8ea-7504-39c2-b66b-a120a4199d81'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('095f4a2b-ca46-397a-9e25-94fe15114621' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2025-05-12 15:45:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.89 [in_i''Hg]', '70 [degF]', '56 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.0 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-05-12 17:17:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 0, '85.0 [psi]', '120.0 [psi]', '95.0 s', '75 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 1, '85.0 [psi]', '120.0 [psi]', '94.6 s', '77 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 2, '85.0 [psi]', '120.0 [psi]', '95.3 s', '78 [degF]', '101 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '095f4a2b-ca46-397a-9e25-94fe15114621'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('af51e767-255a-342e-b7fc-b50f32f1af62' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2025-05-13 15:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.87 [in_i''Hg]', '66 [degF]', '75 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2025-05-13 16:17:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 0, '80 [psi]', '115 [psi]', '1:42.6 m:ss', '72 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 1, '80 [psi]', '115 [psi]', '1:42.3 m:ss', '72 [degF]', '92 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 2, '80 [psi]', '115 [psi]', '1:41.1 m:ss', '73 [degF]', '92 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, status)
select (select id from pump_up_test where submission = 'af51e767-255a-342e-b7fc-b50f32f1af62'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', 'NO_CERTIFICATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('8b66a08b-e34b-3ad4-8cf6-284215d2bd29' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2025-05-16 15:15:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '829 hPa', '24.6 Cel', '24 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2025-05-16 15:56:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 0, '5.00 bar', '8.00 bar', '107.6 s', '26.8 Cel', '7.65 bar', '26.8 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 1, '5.00 bar', '8.00 bar', '107.7 s', '27.1 Cel', '7.65 bar', '27.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '8b66a08b-e34b-3ad4-8cf6-284215d2bd29'), 2, '5.00 bar', '8.00 bar', '107.0 s', '26.7 Cel', '7.65 bar', '27.2 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('69671e30-9783-3039-8a1b-5b5c0b1edb9e' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2025-05-20 14:10:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.00 [in_i''Hg]', '60 [degF]', '62 %', 'MEASURED', '820 {rev}/min', '15.3 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-05-20 15:56:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 0, '95 [psi]', '150 [psi]', '1:48.3 m:ss', '67 [degF]', '94 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 1, '95 [psi]', '150 [psi]', '1:49.0 m:ss', '69 [degF]', '94 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 2, '95 [psi]', '150 [psi]', '1:50.0 m:ss', '65 [degF]', '92 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '69671e30-9783-3039-8a1b-5b5c0b1edb9e'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2025-09-17', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('3113f839-d699-3d4a-9c40-a649b7efd9aa' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2025-08-05 16:50:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.20 [in_i''Hg]', '72 [degF]', '74 %', 'MEASURED', '820 {rev}/min', '15.3 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-08-05 17:56:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 0, '95 [psi]', '150 [psi]', '1:49.3 m:ss', '75 [degF]', '102 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 1, '95 [psi]', '150 [psi]', '1:49.4 m:ss', '77 [degF]', '104 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 2, '95 [psi]', '150 [psi]', '1:50.6 m:ss', '76 [degF]', '103 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '3113f839-d699-3d4a-9c40-a649b7efd9aa'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2025-09-17', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('2fb02b79-b1b3-3876-a5cf-31d15e97651c' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2025-08-05 20:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.19 [in_i''Hg]', '78 [degF]', '71 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Bit of oil at the drain.', '', 'PU-1', timestamp with time zone '2025-08-05 22:26:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 0, '80 [psi]', '115 [psi]', '1:43.5 m:ss', '79 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 1, '80 [psi]', '115 [psi]', '1:41.8 m:ss', '84 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 2, '80 [psi]', '116 [psi]', '1:45.4 m:ss', '86 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 3, '80 [psi]', '115 [psi]', '1:44.5 m:ss', '84 [degF]', '103 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '2fb02b79-b1b3-3876-a5cf-31d15e97651c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', date '2026-07-01', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('822e5559-6452-33af-af66-be05905de673' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2025-08-08 20:25:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.03 [in_i''Hg]', '68 [degF]', '89 %', 'MEASURED', '868 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Oil topped up, half a litre.', '', 'PU-1', timestamp with time zone '2025-08-08 22:02:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 0, '90 [psi]', '150 [psi]', '1:10.1 m:ss', '73 [degF]', '106 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 1, '90 [psi]', '150 [psi]', '1:10.0 m:ss', '75 [degF]', '107 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 2, '90 [psi]', '150 [psi]', '1:10.7 m:ss', '74 [degF]', '107 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '822e5559-6452-33af-af66-be05905de673'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('f230a62a-a91b-3467-8695-f0181b710aa8' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2025-08-14 20:45:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.89 [in_i''Hg]', '76 [degF]', '73 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.0 kW', '30 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-08-14 21:42:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 0, '85.0 [psi]', '120.0 [psi]', '96.6 s', '80 [degF]', '103 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 1, '85.0 [psi]', '120.0 [psi]', '97.2 s', '81 [degF]', '105 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 2, '85.0 [psi]', '120.0 [psi]', '96.3 s', '83 [degF]', '107 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = 'f230a62a-a91b-3467-8695-f0181b710aa8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('180b53b9-4ab7-3820-a732-67219093ef20' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2025-08-18 16:35:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '85 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Quick one before the shift.', '', 'PU-1', timestamp with time zone '2025-08-18 17:33:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '180b53b9-4ab7-3820-a732-67219093ef20'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '180b53b9-4ab7-3820-a732-67219093ef20'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '180b53b9-4ab7-3820-a732-67219093ef20'), 0, '85 [psi]', '120 [psi]', '62.9 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '180b53b9-4ab7-3820-a732-67219093ef20'), 1, '85 [psi]', '120 [psi]', '61.6 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '180b53b9-4ab7-3820-a732-67219093ef20'), 2, '85 [psi]', '120 [psi]', '64.0 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4767f715-2a8f-37b2-bdcd-490e29841598' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2025-08-18 19:45:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '828 hPa', '28.9 Cel', '39 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2025-08-18 20:20:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 0, '5.00 bar', '8.00 bar', '109.7 s', '30.9 Cel', '7.65 bar', '31.3 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 1, '5.00 bar', '8.00 bar', '109.3 s', '30.0 Cel', '7.65 bar', '30.6 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '4767f715-2a8f-37b2-bdcd-490e29841598'), 2, '5.00 bar', '8.00 bar', '107.5 s', '33.7 Cel', '7.60 bar', '32.2 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, override_reason, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('024d6544-e0bb-332f-9c56-16865e05df3c' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2025-11-03 20:45:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.79 [in_i''Hg]', '61 [degF]', '68 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.0 kW', '30 [HP]', 3, 'LOAD_UNLOAD', 'No spare for this range, and no date at the bench yet. Beside PG-01 it shows the same within a division.', '', '', 'PU-1', timestamp with time zone '2025-11-03 21:14:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 0, '85.0 [psi]', '120.0 [psi]', '96.9 s', '62 [degF]', '86 [degF]', '90.0 [psi] @ 11.9 s; 95.0 [psi] @ 24.8 s; 100.0 [psi] @ 38.3 s; 105.0 [psi] @ 52.3 s; 110.0 [psi] @ 66.7 s; 115.0 [psi] @ 81.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 1, '85.0 [psi]', '120.0 [psi]', '97.0 s', '64 [degF]', '88 [degF]', '90.0 [psi] @ 12.9 s; 95.0 [psi] @ 25.8 s; 100.0 [psi] @ 39.3 s; 105.0 [psi] @ 53.3 s; 110.0 [psi] @ 67.8 s; 115.0 [psi] @ 82.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 2, '85.0 [psi]', '120.0 [psi]', '95.7 s', '66 [degF]', '89 [degF]', '90.0 [psi] @ 12.1 s; 95.0 [psi] @ 24.9 s; 100.0 [psi] @ 38.3 s; 105.0 [psi] @ 52.3 s; 110.0 [psi] @ 66.7 s; 115.0 [psi] @ 81.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 3, '85.0 [psi]', '120.0 [psi]', '95.8 s', '63 [degF]', '88 [degF]', '90.0 [psi] @ 11.6 s; 95.0 [psi] @ 24.4 s; 100.0 [psi] @ 37.8 s; 105.0 [psi] @ 51.8 s; 110.0 [psi] @ 66.2 s; 115.0 [psi] @ 80.9 s' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '024d6544-e0bb-332f-9c56-16865e05df3c'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'OVERDUE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('1517e50d-d4a6-3aed-84b1-611996ae4431' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2025-11-06 19:20:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.27 [in_i''Hg]', '60 [degF]', '53 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2025-11-06 19:55:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 0, '80 [psi]', '115 [psi]', '1:41.8 m:ss', '65 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 1, '80 [psi]', '115 [psi]', '1:40.0 m:ss', '71 [degF]', '90 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 2, '80 [psi]', '115 [psi]', '1:41.0 m:ss', '70 [degF]', '88 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '1517e50d-d4a6-3aed-84b1-611996ae4431'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', date '2026-07-01', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('96b1c872-a104-3085-b12c-1e3008b5f0d5' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2025-11-17 19:45:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '58 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2025-11-17 20:44:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '96b1c872-a104-3085-b12c-1e3008b5f0d5'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '96b1c872-a104-3085-b12c-1e3008b5f0d5'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '96b1c872-a104-3085-b12c-1e3008b5f0d5'), 0, '85 [psi]', '120 [psi]', '63.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '96b1c872-a104-3085-b12c-1e3008b5f0d5'), 1, '85 [psi]', '120 [psi]', '63.8 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '96b1c872-a104-3085-b12c-1e3008b5f0d5'), 2, '85 [psi]', '120 [psi]', '63.3 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0e7db6af-5160-32ca-8e49-cac65b7d09a9' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2025-11-20 18:35:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.88 [in_i''Hg]', '56 [degF]', '69 %', 'MEASURED', '881 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Belt felt a bit loose, tightened after the test.', '', 'PU-1', timestamp with time zone '2025-11-20 19:17:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 0, '90 [psi]', '150 [psi]', '1:09.4 m:ss', '65 [degF]', '97 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 1, '90 [psi]', '150 [psi]', '1:08.4 m:ss', '67 [degF]', '98 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 2, '90 [psi]', '150 [psi]', '1:10.3 m:ss', '64 [degF]', '97 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '0e7db6af-5160-32ca-8e49-cac65b7d09a9'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2026-10-28', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('21f8995a-f7f5-3c58-930b-b25a8a55be3d' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2025-11-21 15:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '838 hPa', '11.1 Cel', '25 %', 'SETTLED', '8 kW', 3, 'START_STOP', 'Coffee while it settles.', '', 'PU-1', timestamp with time zone '2025-11-21 16:28:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 0, '5.00 bar', '8.00 bar', '105.0 s', '13.5 Cel', '7.60 bar', '13.4 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 1, '5.00 bar', '8.00 bar', '104.8 s', '15.0 Cel', '7.60 bar', '14.1 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 2, '5.00 bar', '8.00 bar', '105.4 s', '14.8 Cel', '7.65 bar', '13.9 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '21f8995a-f7f5-3c58-930b-b25a8a55be3d'), 3, '5.00 bar', '8.00 bar', '106.4 s', '13.8 Cel', '7.65 bar', '13.8 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('b6207035-2833-33af-b9d7-95ac0400c327' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2025-11-24 18:40:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '29.91 [in_i''Hg]', '57 [degF]', '93 %', 'MEASURED', '820 {rev}/min', '15.3 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2025-11-24 19:09:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 0, '95 [psi]', '150 [psi]', '1:50.1 m:ss', '61 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 1, '95 [psi]', '150 [psi]', '1:51.8 m:ss', '61 [degF]', '88 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 2, '95 [psi]', '150 [psi]', '1:52.0 m:ss', '59 [degF]', '86 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = 'b6207035-2833-33af-b9d7-95ac0400c327'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2026-09-16', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('96004dc8-a48f-3b7e-b2af-39c24e66b5f3' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2026-02-09 16:05:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.92 [in_i''Hg]', '54 [degF]', '95 %', 'MEASURED', '820 {rev}/min', '15.4 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2026-02-09 16:59:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 0, '95 [psi]', '150 [psi]', '1:51.5 m:ss', '56 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 1, '95 [psi]', '150 [psi]', '1:50.8 m:ss', '57 [degF]', '85 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 2, '95 [psi]', '150 [psi]', '1:51.7 m:ss', '54 [degF]', '82 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '96004dc8-a48f-3b7e-b2af-39c24e66b5f3'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2026-09-16', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c130f8ef-cc07-3ee0-8f0f-628fea259674' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2026-02-10 16:10:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.20 [in_i''Hg]', '46 [degF]', '69 %', 'MEASURED', '875 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Seamer line down for cleaning, so nobody drew air.', '', 'PU-1', timestamp with time zone '2026-02-10 17:42:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 0, '90 [psi]', '150 [psi]', '1:08.9 m:ss', '51 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 1, '90 [psi]', '150 [psi]', '1:08.3 m:ss', '54 [degF]', '86 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 2, '90 [psi]', '150 [psi]', '1:09.2 m:ss', '51 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = 'c130f8ef-cc07-3ee0-8f0f-628fea259674'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2026-10-28', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('37ed742e-ff42-3218-952d-e7ca6c3d1ffa' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2026-02-11 14:50:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '837 hPa', '9.8 Cel', '52 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2026-02-11 16:42:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 0, '5.00 bar', '8.00 bar', '106.7 s', '11.1 Cel', '7.65 bar', '11.3 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 1, '5.00 bar', '8.00 bar', '106.5 s', '11.9 Cel', '7.65 bar', '12.3 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '37ed742e-ff42-3218-952d-e7ca6c3d1ffa'), 2, '5.00 bar', '8.00 bar', '106.2 s', '12.4 Cel', '7.65 bar', '12.3 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, override_reason, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('9547e5a4-8185-3468-b9e2-6cf5e120edea' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2026-02-12 16:00:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '30.07 [in_i''Hg]', '53 [degF]', '69 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.1 kW', '30 [HP]', 3, 'LOAD_UNLOAD', 'No spare for this range, and no date at the bench yet. Beside PG-01 it shows the same within a division.', 'Dryer bypassed, both tanks on.', '', 'PU-1', timestamp with time zone '2026-02-12 17:27:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 0, '85.0 [psi]', '120.0 [psi]', '96.5 s', '57 [degF]', '81 [degF]', '90.0 [psi] @ 12.4 s; 95.0 [psi] @ 25.2 s; 100.0 [psi] @ 38.6 s; 105.0 [psi] @ 52.5 s; 110.0 [psi] @ 66.9 s; 115.0 [psi] @ 81.5 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 1, '85.0 [psi]', '120.0 [psi]', '96.0 s', '61 [degF]', '84 [degF]', '90.0 [psi] @ 12.0 s; 95.0 [psi] @ 24.8 s; 100.0 [psi] @ 38.1 s; 105.0 [psi] @ 52.0 s; 110.0 [psi] @ 66.2 s; 115.0 [psi] @ 80.8 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 2, '85.0 [psi]', '120.0 [psi]', '95.5 s', '60 [degF]', '82 [degF]', '90.0 [psi] @ 12.1 s; 95.0 [psi] @ 24.9 s; 100.0 [psi] @ 38.3 s; 105.0 [psi] @ 52.2 s; 110.0 [psi] @ 66.5 s; 115.0 [psi] @ 81.1 s' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '9547e5a4-8185-3468-b9e2-6cf5e120edea'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'OVERDUE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2026-02-16 17:20:00+00', 'America/Denver', 'Søren Kjærgaard', '1600 m', '50 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', 'Quick one before the shift.', '', 'PU-1', timestamp with time zone '2026-02-16 19:11:00+00', 'Søren Kjærgaard' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9'), 0, '85 [psi]', '120 [psi]', '64.3 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9'), 1, '85 [psi]', '119 [psi]', '61.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = 'c9d4d09d-1ad0-32ec-87f6-b26fd7bcafc9'), 2, '85 [psi]', '120 [psi]', '65.1 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('0d816e08-7448-3118-a14b-92a03bf1adc8' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2026-02-19 16:40:00+00', 'America/Los_Angeles', 'Nguyễn Văn Phúc', '12 [ft_i]', '29.76 [in_i''Hg]', '58 [degF]', '62 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', 'Modulation backed off for the test.', '', 'PU-1', timestamp with time zone '2026-02-19 17:58:00+00', 'Nguyễn Văn Phúc' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 0, '80 [psi]', '115 [psi]', '1:44.2 m:ss', '64 [degF]', '84 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 1, '80 [psi]', '115 [psi]', '1:43.7 m:ss', '64 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 2, '80 [psi]', '115 [psi]', '1:43.2 m:ss', '64 [degF]', '83 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 3, '80 [psi]', '115 [psi]', '1:43.2 m:ss', '64 [degF]', '83 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '0d816e08-7448-3118-a14b-92a03bf1adc8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', date '2026-07-01', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, hold_start, hold_end, hold_wait, hold_place, input_power, motor_power, motor_phases, control, override_reason, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4e9c2257-8add-334e-9077-fbf57c57f49f' as uuid), (select id from compressor where tag = 'C-02'), timestamp with time zone '2026-05-06 17:55:00+00', 'America/Los_Angeles', 'Zdeňka Horáková', '12 [ft_i]', '30.09 [in_i''Hg]', '71 [degF]', '83 %', 'MEASURED', '120.0 [psi]', '120.0 [psi]', '5 min', 'TEST_VOLUME', '23.3 kW', '30 [HP]', 3, 'LOAD_UNLOAD', 'No spare for this range, and no date at the bench yet. Beside PG-01 it shows the same within a division.', 'Dryer bypassed, both tanks on.', '', 'PU-1', timestamp with time zone '2026-05-06 19:46:00+00', 'Zdeňka Horáková' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 0, 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', '400 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 1, 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', '240 [gal_us]', '165 [psi]', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 2, 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', '24 [ft_i]', '2.067 [in_i]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 0, '100 [psi]', '124 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 1, '125 [psi]', '119 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 0, '85.0 [psi]', '120.0 [psi]', '96.6 s', '78 [degF]', '101 [degF]', '90.0 [psi] @ 12.2 s; 95.0 [psi] @ 25.2 s; 100.0 [psi] @ 38.7 s; 105.0 [psi] @ 52.8 s; 110.0 [psi] @ 67.3 s; 115.0 [psi] @ 82.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 1, '85.0 [psi]', '120.0 [psi]', '97.8 s', '77 [degF]', '99 [degF]', '90.0 [psi] @ 12.1 s; 95.0 [psi] @ 25.1 s; 100.0 [psi] @ 38.6 s; 105.0 [psi] @ 52.8 s; 110.0 [psi] @ 67.3 s; 115.0 [psi] @ 82.2 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 2, '85.0 [psi]', '120.0 [psi]', '96.6 s', '74 [degF]', '99 [degF]', '90.0 [psi] @ 11.9 s; 95.0 [psi] @ 24.9 s; 100.0 [psi] @ 38.5 s; 105.0 [psi] @ 52.6 s; 110.0 [psi] @ 67.2 s; 115.0 [psi] @ 82.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air, laps)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 3, '85.0 [psi]', '120.0 [psi]', '97.7 s', '77 [degF]', '101 [degF]', '90.0 [psi] @ 12.4 s; 95.0 [psi] @ 25.4 s; 100.0 [psi] @ 39.0 s; 105.0 [psi] @ 53.1 s; 110.0 [psi] @ 67.6 s; 115.0 [psi] @ 82.5 s' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '4e9c2257-8add-334e-9077-fbf57c57f49f'), 0, 'GAUGE', (select id from instrument where tag = 'PG-02'), 'PG-02', '200 [psi]', '1 %', '1 [psi]', date '2025-10-22', 'OVERDUE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('7e905eca-59e7-3e27-9a12-b3abab826cec' as uuid), (select id from compressor where tag = 'C-03'), timestamp with time zone '2026-05-11 14:55:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.08 [in_i''Hg]', '72 [degF]', '78 %', 'MEASURED', '10 [HP]', 3, 'MODULATING', '', '', 'PU-1', timestamp with time zone '2026-05-11 15:33:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 0, 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', '200 [gal_us]', '150 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', '3.5 [gal_us]' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 0, '100 [psi]', '38 [cft_i]/min', 'UNKNOWN' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 0, '80 [psi]', '115 [psi]', '1:44.1 m:ss', '80 [degF]', '99 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 1, '80 [psi]', '115 [psi]', '1:42.8 m:ss', '82 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 2, '80 [psi]', '115 [psi]', '1:44.0 m:ss', '79 [degF]', '99 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '7e905eca-59e7-3e27-9a12-b3abab826cec'), 0, 'GAUGE', (select id from instrument where tag = 'PG-04'), 'PG-04', '200 [psi]', '1 %', '2 [psi]', date '2026-07-01', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7' as uuid), (select id from compressor where tag = 'C-12'), timestamp with time zone '2026-05-15 13:15:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '833 hPa', '19.9 Cel', '22 %', 'SETTLED', '8 kW', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2026-05-15 14:27:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 0, '6 bar', '0.98 m3/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 1, '8 bar', '0.94 m3/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 0, '5.00 bar', '8.00 bar', '107.0 s', '25.9 Cel', '7.60 bar', '24.7 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 1, '5.00 bar', '8.00 bar', '107.5 s', '22.2 Cel', '7.65 bar', '22.2 Cel', '12 min' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, settled_pressure, settled_air, settled_wait)
select (select id from pump_up_test where submission = '54f7f7d3-97a8-3fa2-b8e7-7acbee55cee7'), 2, '5.00 bar', '8.00 bar', '108.6 s', '23.0 Cel', '7.65 bar', '22.8 Cel', '12 min' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, rated_speed, input_power, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('de49b948-4425-3a67-9dd4-07737592b357' as uuid), (select id from compressor where tag = 'C-04'), timestamp with time zone '2026-05-20 15:40:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '29.72 [in_i''Hg]', '66 [degF]', '76 %', 'MEASURED', '820 {rev}/min', '15.4 kW', '20 [HP]', 3, 'LOAD_UNLOAD', '', '', 'PU-1', timestamp with time zone '2026-05-20 17:30:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 0, '100 [psi]', '69 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 1, '175 [psi]', '65 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 0, '95 [psi]', '150 [psi]', '1:51.5 m:ss', '74 [degF]', '101 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 1, '95 [psi]', '148 [psi]', '1:49.5 m:ss', '71 [degF]', '96 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 2, '95 [psi]', '151 [psi]', '1:54.1 m:ss', '67 [degF]', '93 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 0, 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2026-09-16', 'IN_DATE' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, intake_temperature, air_temperature, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('4bdf3e70-639b-35c5-a418-97d1a5739bc6' as uuid), (select id from compressor where tag = 'C-11'), timestamp with time zone '2026-05-22 15:35:00+00', 'America/Denver', 'Amina Diallo', '1600 m', '67 [degF]', 'NOT_MEASURED', '7.5 [HP]', 3, 'START_STOP', '', '', 'PU-1', timestamp with time zone '2026-05-22 16:42:00+00', 'Amina Diallo' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '4bdf3e70-639b-35c5-a418-97d1a5739bc6'), 0, 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', '80 [gal_us]', '150 [psi]', 'DIMENSIONS' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '4bdf3e70-639b-35c5-a418-97d1a5739bc6'), 0, '100 [psi]', '27 [cft_i]/min', 'STANDARD_14_5PSIA_68F_DRY' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4bdf3e70-639b-35c5-a418-97d1a5739bc6'), 0, '85 [psi]', '120 [psi]', '63.4 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4bdf3e70-639b-35c5-a418-97d1a5739bc6'), 1, '85 [psi]', '121 [psi]', '64.1 s' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed)
select (select id from pump_up_test where submission = '4bdf3e70-639b-35c5-a418-97d1a5739bc6'), 2, '85 [psi]', '120 [psi]', '63.2 s' from demo_start;
insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation, barometer, intake_temperature, intake_humidity, air_temperature, speed, rated_speed, motor_power, motor_phases, control, notes, confirmed, method_version, recorded_at, recorded_by)
select cast('80db7e7b-b7b1-3864-a2ce-708ace1a03e8' as uuid), (select id from compressor where tag = 'C-01'), timestamp with time zone '2026-05-22 17:20:00+00', 'America/Los_Angeles', 'Tomás Iriarte', '12 [ft_i]', '30.00 [in_i''Hg]', '73 [degF]', '63 %', 'MEASURED', '876 {rev}/min', '875 {rev}/min', '15 [HP]', 3, 'LOAD_UNLOAD', 'Oil topped up, half a litre.', '', 'PU-1', timestamp with time zone '2026-05-22 19:11:00+00', 'Tomás Iriarte' from demo_start;
insert into pump_up_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 0, 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', '120 [gal_us]', '200 [psi]', 'PLATE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 0, '100 [psi]', '50.5 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_rating (test_id, position, pressure, flow, basis)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 1, '175 [psi]', '47.0 [cft_i]/min', 'INTAKE' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 0, '90 [psi]', '150 [psi]', '1:09.0 m:ss', '83 [degF]', '114 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 1, '90 [psi]', '150 [psi]', '1:10.5 m:ss', '81 [degF]', '113 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 2, '90 [psi]', '150 [psi]', '1:09.9 m:ss', '81 [degF]', '113 [degF]' from demo_start;
insert into pump_up_run (test_id, position, start_pressure, stop_pressure, elapsed, start_air, stop_air)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 3, '90 [psi]', '150 [psi]', '1:08.9 m:ss', '82 [degF]', '114 [degF]' from demo_start;
insert into pump_up_instrument (test_id, position, kind, instrument_id, tag, span, limit_percent, division, due_on, status)
select (select id from pump_up_test where submission = '80db7e7b-b7b1-3864-a2ce-708ace1a03e8'), 0, 'GAUGE', (select id from instrument where tag = 'PG-01'), 'PG-01', '200 [psi]', '2 %', '2 [psi]', date '2026-10-28', 'IN_DATE' from demo_start;
insert into attachment_content (sha256)
select '6e39626f6898f4ff78b5c49bc4dc8e993e0ebd2339a2c20746de5a7076890d44' from demo_start;
insert into attachment_piece (sha256, position, bytes)
select '6e39626f6898f4ff78b5c49bc4dc8e993e0ebd2339a2c20746de5a7076890d44', 0, cast('channel 1,R-05
time s,pressure psi
0.0,20.07
2.0,21.27
4.0,22.75
6.0,23.95
8.0,25.09
10.0,26.35
12.0,27.37
14.0,28.57
16.0,29.58
18.0,30.47
20.0,31.60
22.0,32.52
24.0,33.69
26.0,34.47
28.0,35.60
30.0,36.54
32.0,37.62
34.0,38.60
36.0,39.57
38.0,40.31
40.0,41.35
42.0,42.50
44.0,43.53
46.0,44.53
48.0,45.47
50.0,46.30
52.0,47.14
54.0,48.09
56.0,49.24
58.0,50.12
60.0,50.95
62.0,52.14
64.0,52.75
66.0,53.90
68.0,54.85
70.0,55.84
72.0,56.78
74.0,57.38
76.0,58.49
78.0,59.51
80.0,60.39
82.0,61.41
84.0,62.05
86.0,63.26
88.0,64.19
90.0,65.29
92.0,66.07
94.0,67.00
96.0,67.82
98.0,68.93
100.0,69.89
102.0,70.66
104.0,71.75
106.0,72.73
108.0,73.55
110.0,74.51
112.0,75.42
114.0,76.31
116.0,77.27
118.0,78.18
120.0,79.37
122.0,79.66
124.0,81.10
126.0,82.10
128.0,82.94
130.0,83.50
132.0,84.74
134.0,85.71
136.0,86.66
138.0,87.50
140.0,88.59
142.0,89.21
144.0,90.25
146.0,91.27
148.0,92.25
150.0,93.28
152.0,94.08
154.0,95.04
156.0,96.14
158.0,96.81
160.0,97.64
162.0,98.79
164.0,99.49
166.0,100.40
168.0,101.34
170.0,102.35
172.0,103.24
174.0,104.02
176.0,105.03
178.0,105.93
180.0,107.01
182.0,107.72
184.0,108.90
186.0,109.70
188.0,110.40
190.0,111.56
192.0,112.56
194.0,113.35
196.0,114.23
198.0,115.25
200.0,116.18
202.0,116.92
204.0,118.12
206.0,118.71
208.0,119.60
210.0,120.66
212.0,121.47
214.0,122.37
216.0,123.41
218.0,124.17
220.0,125.26
222.0,126.06
224.0,127.05
226.0,128.01
228.0,128.89
230.0,129.90
232.0,130.64
234.0,131.40
236.0,132.35
238.0,133.35
240.0,134.25
242.0,135.07
244.0,136.05
246.0,136.95
248.0,137.81
250.0,138.71
252.0,139.82
254.0,140.37
256.0,141.42
258.0,142.41
260.0,143.15
262.0,144.02
264.0,145.07
266.0,145.91
268.0,146.81
270.0,147.51
272.0,148.63
274.0,149.75
276.0,150.46
278.0,151.08
280.0,152.27
282.0,152.89
284.0,153.78
286.0,154.55
288.0,155.65
290.0,156.75
292.0,157.38
294.0,158.39
296.0,159.41
298.0,160.00
300.0,160.96
302.0,161.89
304.0,162.80
306.0,163.70
308.0,164.66
310.0,165.53
312.0,166.27
314.0,167.17
316.0,168.25
318.0,169.14
320.0,169.85
322.0,170.78
324.0,171.53
326.0,172.57
328.0,173.45
330.0,174.36
332.0,175.13
334.0,175.75
336.0,177.06
338.0,177.77
340.0,178.72
' as bytea) from demo_start;
insert into logged_run (submission, test_id, file_name, sha256, byte_count, text_code, separator, decimal_mark, skipped_lines, leave_out_unreadable, time_column, time_format, pressure_column, pressure_unit, pressure_reference, logger_kind, logger_instrument_id, logger_tag, logger_span, logger_limit_percent, logger_division, logger_due_on, logger_status, note, recorded_at, recorded_by)
select cast('142c05ac-1064-3db5-b968-6a9fc7b1e76d' as uuid), (select id from pump_up_test where submission = 'de49b948-4425-3a67-9dd4-07737592b357'), 'c-04 fill.csv', '6e39626f6898f4ff78b5c49bc4dc8e993e0ebd2339a2c20746de5a7076890d44', 2120, 'UTF_8', 'COMMA', 'POINT', 2, false, 1, 'SECONDS', 2, '[psi]', 'GAUGE', 'GAUGE', (select id from instrument where tag = 'PG-06'), 'PG-06', '200 [psi]', '1 %', '1 [psi]', date '2026-09-16', 'IN_DATE', 'Sensor on the tee of the gauge, tank let down first.', timestamp with time zone '2026-05-20 17:50:00+00', 'Tomás Iriarte' from demo_start;
insert into gauge_restatement (calibration_id, restated_at, restated_by, note)
select (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e'), timestamp with time zone '2023-03-15 17:20:00+00', 'Marguerite Bélanger', 'PG-03 read 5 % too much, nobody knows since when, so all tests of C-03 with it are restated. We took C-03 for better than it is; the dryer was chosen by that figure and is large enough.' from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '0b6a4edc-f96a-38f7-84ba-dda5c0204fe8') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '06e12fa1-7470-33fe-a602-fad48de3a6e0') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '214ba8f5-38b4-3dce-8b53-989a79347878') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '859ba0bc-fd74-3ac0-9fea-112992ea7602') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '2d744620-7d5b-3555-a932-d2423995c340') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '47f6ab03-c5f9-38ad-b8bf-638e79026c87') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = 'e413dcfa-4151-3707-8c7b-d65c9832305a') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '0a3dbb5f-9e85-36e5-a798-1a7a218dc9cc') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '1abc7c28-0033-3aa4-b6c5-422821bb3600') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = '72fc7dd6-2662-3efd-96eb-36b676a50204') from demo_start;
insert into gauge_restatement_test (restatement_id, test_id)
select (select id from gauge_restatement where calibration_id = (select id from calibration where submission = 'aa2e28f4-2717-33b6-a36e-955e43ae001e')), (select id from pump_up_test where submission = 'b0fab343-06d7-3a4e-8f0d-03dd3b406806') from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('67b6edeb-1d97-3c65-9949-6fbf7d400f74' as uuid), (select id from compressor where tag = 'C-04'), date '2018-10-03', 'FILTER', false, 'Tomás Iriarte', 'Intake filter, black on the quay side.', false, timestamp with time zone '2020-01-15 17:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('5cfd83bd-08ad-3ecf-999f-43c68219ca98' as uuid), (select id from compressor where tag = 'C-04'), date '2021-04-14', 'VALVES', true, 'Harbour Compressor Fitters', 'First-stage inlet valves lapped, two discs and all gaskets new.', false, timestamp with time zone '2021-04-14 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('324333e8-903b-323d-811b-da68f582c5f9' as uuid), (select id from compressor where tag = 'C-03'), date '2021-07-01', 'OTHER', false, 'Harbour Compressor Fitters', 'V-3 behind R-03 has a new seat.', false, timestamp with time zone '2021-07-01 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('d6093f35-3424-3341-bfc9-cb36bfe6c573' as uuid), (select id from compressor where tag = 'C-02'), date '2022-08-23', 'DRAIN', false, 'Zdeňka Horáková', '130 US gal out of R-02. Float of the drain was stuck, replaced.', false, timestamp with time zone '2022-08-23 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('4ea9ec65-fa67-31ea-a214-5d64c0b42785' as uuid), (select id from compressor where tag = 'C-03'), date '2023-03-14', 'GAUGE_CHANGE', false, 'Marguerite Bélanger', 'PG-04 in place of PG-03, 5 % too high.', false, timestamp with time zone '2023-03-14 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('4db111e1-95af-3d57-b045-e67a0eb106e5' as uuid), (select id from compressor where tag = 'C-01'), date '2023-06-08', 'VALVES', true, 'Harbour Compressor Fitters', 'Second-stage valves and gaskets new.', false, timestamp with time zone '2023-06-08 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('6e3a4042-8ecf-3eba-bd9b-27d74eb826e4' as uuid), (select id from compressor where tag = 'C-04'), date '2023-09-20', 'GAUGE_CHANGE', false, 'Marguerite Bélanger', 'PG-06 in place of PG-05, glass broken. Side by side within 1 psi; the baseline of 2016 is kept.', false, timestamp with time zone '2023-09-20 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn, recorded_at, recorded_by)
select cast('53dfe0be-6ec0-3c6a-93a2-029c13203f21' as uuid), (select id from compressor where tag = 'C-02'), date '2024-03-06', 'FILTER', false, 'Nguyễn Văn Phúc', 'Intake filter at the yearly service.', false, timestamp with time zone '2024-03-06 22:30:00+00', 'Marguerite Bélanger' from demo_start;
insert into baseline_choice (submission, compressor_id, test_id, event_id, reason, chosen_at, chosen_by)
select cast('2cbcfc8c-1054-39f8-a38e-7ef3208789ff' as uuid), (select id from compressor where tag = 'C-03'), (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee'), (select id from maintenance_event where submission = '4ea9ec65-fa67-31ea-a214-5d64c0b42785'), 'First test with a gauge that can be believed.', timestamp with time zone '2023-05-17 16:40:00+00', 'Marguerite Bélanger' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, note, withdrawn)
select cast('9b85273e-54c6-391f-a51d-44b40ebf54af' as uuid), (select id from site where name = 'Gull Point cannery'), 'LOAD_TIMES', 'WHOLE_SYSTEM', timestamp with time zone '2024-11-17 07:20:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2024-11-17 08:20:00+00', 'Søren Kjærgaard', '100 [psi]', 'Packing and fruit line walked through, all valves shut. Hisses by the retorts can be heard from the door.', false from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 0, '72 s', '226 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 1, '70 s', '231 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 2, '74 s', '229 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 3, '71 s', '224 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 4, '73 s', '230 s' from demo_start;
insert into leak_machine (test_id, position, compressor_id, label, capacity, capacity_at, capacity_percent)
select (select id from leak_test where submission = '9b85273e-54c6-391f-a51d-44b40ebf54af'), 0, (select id from compressor where tag = 'C-02'), 'C-02', '109 [cft_i]/min', '102 [psi]', '5 %' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, note, withdrawn)
select cast('b6b76cd0-d448-3b7a-9f19-991ecf17b2ed' as uuid), (select id from site where name = 'Gull Point cannery'), 'LOAD_TIMES', 'WHOLE_SYSTEM', timestamp with time zone '2025-04-06 05:50:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2025-04-06 06:50:00+00', 'Søren Kjærgaard', '100 [psi]', 'After the first repairs.', false from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'b6b76cd0-d448-3b7a-9f19-991ecf17b2ed'), 0, '88 s', '205 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'b6b76cd0-d448-3b7a-9f19-991ecf17b2ed'), 1, '91 s', '198 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'b6b76cd0-d448-3b7a-9f19-991ecf17b2ed'), 2, '60 s', '240 s' from demo_start;
insert into leak_machine (test_id, position, compressor_id, label, capacity, capacity_at, capacity_percent)
select (select id from leak_test where submission = 'b6b76cd0-d448-3b7a-9f19-991ecf17b2ed'), 0, (select id from compressor where tag = 'C-02'), 'C-02', '109 [cft_i]/min', '102 [psi]', '5 %' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, note, withdrawn, supersedes_id, reason)
select cast('f2f24904-d0f0-3b64-8cde-dbe53d90b639' as uuid), (select id from site where name = 'Gull Point cannery'), 'LOAD_TIMES', 'WHOLE_SYSTEM', timestamp with time zone '2025-04-06 05:50:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2025-04-06 06:50:00+00', 'Søren Kjærgaard', '100 [psi]', 'After the first repairs.', true, (select id from leak_test where submission = 'b6b76cd0-d448-3b7a-9f19-991ecf17b2ed'), 'the night cleaners ran a blow gun' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'f2f24904-d0f0-3b64-8cde-dbe53d90b639'), 0, '88 s', '205 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'f2f24904-d0f0-3b64-8cde-dbe53d90b639'), 1, '91 s', '198 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = 'f2f24904-d0f0-3b64-8cde-dbe53d90b639'), 2, '60 s', '240 s' from demo_start;
insert into leak_machine (test_id, position, compressor_id, label, capacity, capacity_at, capacity_percent)
select (select id from leak_test where submission = 'f2f24904-d0f0-3b64-8cde-dbe53d90b639'), 0, (select id from compressor where tag = 'C-02'), 'C-02', '109 [cft_i]/min', '102 [psi]', '5 %' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, note, withdrawn)
select cast('39bf107c-36d7-3d11-9db3-64dda41bf92c' as uuid), (select id from site where name = 'Gull Point cannery'), 'LOAD_TIMES', 'WHOLE_SYSTEM', timestamp with time zone '2025-04-13 06:05:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2025-04-13 07:05:00+00', 'Søren Kjærgaard', '100 [psi]', 'Same walk, nobody on the lines.', false from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 0, '38 s', '281 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 1, '37 s', '279 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 2, '39 s', '284 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 3, '38 s', '277 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 4, '38 s', '282 s' from demo_start;
insert into leak_machine (test_id, position, compressor_id, label, capacity, capacity_at, capacity_percent)
select (select id from leak_test where submission = '39bf107c-36d7-3d11-9db3-64dda41bf92c'), 0, (select id from compressor where tag = 'C-02'), 'C-02', '109 [cft_i]/min', '102 [psi]', '5 %' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, note, withdrawn)
select cast('92e65718-3e61-3442-9ce9-5dab51826749' as uuid), (select id from site where name = 'Gull Point cannery'), 'LOAD_TIMES', 'WHOLE_SYSTEM', timestamp with time zone '2026-04-19 06:10:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2026-04-19 07:10:00+00', 'Søren Kjærgaard', '100 [psi]', 'A year on. The new coupling rail at line 3 was not there before.', false from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 0, '44 s', '262 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 1, '45 s', '259 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 2, '43 s', '265 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 3, '46 s', '261 s' from demo_start;
insert into leak_cycle (test_id, position, loaded, unloaded)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 4, '44 s', '263 s' from demo_start;
insert into leak_machine (test_id, position, compressor_id, label, capacity, capacity_at, capacity_percent)
select (select id from leak_test where submission = '92e65718-3e61-3442-9ce9-5dab51826749'), 0, (select id from compressor where tag = 'C-02'), 'C-02', '105 [cft_i]/min', '102 [psi]', '5 %' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, at_pressure, division, note, withdrawn)
select cast('3ca083d1-6ca8-3f8f-860f-b00618befca3' as uuid), (select id from site where name = 'Juniper Mesa packing hall'), 'FALL', 'WHOLE_SYSTEM', timestamp with time zone '2025-09-21 03:30:00+00', 'America/Denver', 'Amina Diallo', true, true, '1600 m', false, '', timestamp with time zone '2025-09-21 04:30:00+00', 'Amina Diallo', '7 bar', '0.02 bar', 'Waited ten minutes after C-12 had stopped. Filling heads blanked off.', false from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 0, '0 s', '7.50 bar' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 1, '120 s', '7.30 bar' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 2, '240 s', '7.11 bar' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 3, '360 s', '6.92 bar' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 4, '480 s', '6.74 bar' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 5, '600 s', '6.56 bar' from demo_start;
insert into leak_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 0, 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', '500 L', '11 bar', 'PLATE' from demo_start;
insert into leak_volume (test_id, position, kind, source_id, label, length, bore)
select (select id from leak_test where submission = '3ca083d1-6ca8-3f8f-860f-b00618befca3'), 1, 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', '6.5 m', '36 mm' from demo_start;
insert into leak_test (submission, site_id, kind, place, performed_at, zone, tester, users_off, drains_off, site_elevation, leave_early, confirmed, recorded_at, recorded_by, compressor_id, at_pressure, division, note, withdrawn)
select cast('4ea8d8fe-d622-3ede-9d88-0c74a7d41839' as uuid), (select id from site where name = 'Gull Point cannery'), 'TWO_READINGS', 'TEST_VOLUME', timestamp with time zone '2026-03-14 18:00:00+00', 'America/Los_Angeles', 'Søren Kjærgaard', true, true, '12 [ft_i]', false, '', timestamp with time zone '2026-03-14 19:00:00+00', 'Søren Kjærgaard', (select id from compressor where tag = 'C-04'), '150 [psi]', '0.5 [psi]', 'V-4 weeps a little; to be lapped in the next shutdown.', false from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '4ea8d8fe-d622-3ede-9d88-0c74a7d41839'), 0, '0 s', '165.0 [psi]' from demo_start;
insert into leak_reading (test_id, position, at_time, pressure)
select (select id from leak_test where submission = '4ea8d8fe-d622-3ede-9d88-0c74a7d41839'), 1, '900 s', '158.5 [psi]' from demo_start;
insert into leak_volume (test_id, position, kind, source_id, label, volume, mawp, known_by)
select (select id from leak_test where submission = '4ea8d8fe-d622-3ede-9d88-0c74a7d41839'), 0, 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', '240 [gal_us]', '200 [psi]', 'MAKER_SHEET' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('8c2a985d-f165-3d25-994c-14391d97c5d1' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-01', 'Retort 2, steam side, behind the gauge board', 'THREAD', 'ULTRASOUND', '4.5 [cft_i]/min', '12 [ft_i]', 'HIGH', date '2024-11-18', 'Søren Kjærgaard', '', timestamp with time zone '2024-11-18 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('aab51ec5-18e2-3605-a3bb-30301f2fc805' as uuid), (select id from found_leak where submission = '8c2a985d-f165-3d25-994c-14391d97c5d1'), 0, 'REPAIRED', date '2024-12-03', 'Søren Kjærgaard', 'nipple cut new and sealed', timestamp with time zone '2024-12-03 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('8a7a7da9-4273-323c-9583-996762d41b5f' as uuid), (select id from found_leak where submission = '8c2a985d-f165-3d25-994c-14391d97c5d1'), 1, 'TIGHT', date '2024-12-10', 'Marguerite Bélanger', '', timestamp with time zone '2024-12-10 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('af829656-b067-35b0-b80e-0775f6425271' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-02', 'Line 1, first filler, left coupling', 'COUPLING', 'JUDGED', '2 [cft_i]/min', '12 [ft_i]', 'MEDIUM', date '2024-11-18', 'Søren Kjærgaard', '', timestamp with time zone '2024-11-18 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('c226dbb9-f31b-3bd5-89c0-0546e457ed7f' as uuid), (select id from found_leak where submission = 'af829656-b067-35b0-b80e-0775f6425271'), 0, 'REPAIRED', date '2024-12-03', 'Søren Kjærgaard', 'seal', timestamp with time zone '2024-12-03 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('f3c1add1-5b99-3df8-91e9-4b092442aea9' as uuid), (select id from found_leak where submission = 'af829656-b067-35b0-b80e-0775f6425271'), 1, 'STILL_LEAKS', date '2025-01-14', 'Marguerite Bélanger', 'worse', timestamp with time zone '2025-01-14 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('c84cc5be-85a7-3182-bbb5-7bf793ac28c7' as uuid), (select id from found_leak where submission = 'af829656-b067-35b0-b80e-0775f6425271'), 2, 'REPAIRED', date '2025-01-20', 'Søren Kjærgaard', 'coupling replaced', timestamp with time zone '2025-01-20 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('ae5e889f-e955-36e9-a419-a30c4706ad13' as uuid), (select id from found_leak where submission = 'af829656-b067-35b0-b80e-0775f6425271'), 3, 'TIGHT', date '2025-01-27', 'Marguerite Bélanger', '', timestamp with time zone '2025-01-27 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('cd3d4dba-ba3d-3bec-939f-1322a82e9b8e' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-03', 'Header V-3, packing of the stem', 'VALVE', 'BAG', '3.2 [cft_i]/min', '12 [ft_i]', 'HIGH', date '2024-11-19', 'Søren Kjærgaard', '', timestamp with time zone '2024-11-19 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('f3e46995-875c-3efc-ba43-bc9c73f3b431' as uuid), (select id from found_leak where submission = 'cd3d4dba-ba3d-3bec-939f-1322a82e9b8e'), 0, 'REPAIRED', date '2025-03-22', 'Søren Kjærgaard', 'new packing in the shutdown', timestamp with time zone '2025-03-22 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('d8e6d8a0-6fd4-3897-874b-c019c112a7e6' as uuid), (select id from found_leak where submission = 'cd3d4dba-ba3d-3bec-939f-1322a82e9b8e'), 1, 'TIGHT', date '2025-03-29', 'Marguerite Bélanger', '', timestamp with time zone '2025-03-29 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, bore, pressure, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('43981d87-2241-3568-806d-b2c52490c675' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-04', 'Fruit line, drain leg under the stair', 'DRAIN', 'HOLE', '0.08 [in_i]', '100 [psi]', '12 [ft_i]', 'HIGH', date '2024-11-19', 'Søren Kjærgaard', '', timestamp with time zone '2024-11-19 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('0ed11f46-0bf1-3a5d-ba0c-9119811b7923' as uuid), (select id from found_leak where submission = '43981d87-2241-3568-806d-b2c52490c675'), 0, 'REPAIRED', date '2025-03-22', 'Søren Kjærgaard', 'float drain in place of a cracked cock', timestamp with time zone '2025-03-22 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('1140188d-54d6-38ec-8430-a335356c41f3' as uuid), (select id from found_leak where submission = '43981d87-2241-3568-806d-b2c52490c675'), 1, 'TIGHT', date '2025-03-29', 'Marguerite Bélanger', '', timestamp with time zone '2025-03-29 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('90a10f51-01b5-32f7-9362-0132c5d64401' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-05', 'Boiler house, hose reel', 'HOSE', 'ULTRASOUND', '1.8 [cft_i]/min', '12 [ft_i]', 'LOW', date '2025-02-11', 'Søren Kjærgaard', '', timestamp with time zone '2025-02-11 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('64b53ae0-852a-37d9-91e0-6e2e997107a9' as uuid), (select id from found_leak where submission = '90a10f51-01b5-32f7-9362-0132c5d64401'), 0, 'REPAIRED', date '2025-04-08', 'Søren Kjærgaard', 'hose shortened', timestamp with time zone '2025-04-08 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('6bc5286a-e907-3418-ac4a-4aaf56359bed' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-06', 'Compressor house, dryer outlet flange', 'FILTER', 'JUDGED', '1 [cft_i]/min', '12 [ft_i]', 'LOW', date '2025-04-12', 'Søren Kjærgaard', '', timestamp with time zone '2025-04-12 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('2395fb48-ea81-3aa6-babb-344ed0810578' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-07', 'Line 3, new coupling rail, third from the door', 'COUPLING', 'ULTRASOUND', '2.6 [cft_i]/min', '12 [ft_i]', 'HIGH', date '2026-04-20', 'Søren Kjærgaard', '', timestamp with time zone '2026-04-20 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('dc489ce9-edd3-3547-9cfd-7c9af44831e3' as uuid), (select id from found_leak where submission = '2395fb48-ea81-3aa6-babb-344ed0810578'), 0, 'REPAIRED', date '2026-05-04', 'Søren Kjærgaard', 'cheap coupling taken out', timestamp with time zone '2026-05-04 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('962faf89-fc50-3916-8f74-a7277a0549c5' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-08', 'Line 3, rail, last one', 'COUPLING', 'ULTRASOUND', '2.2 [cft_i]/min', '12 [ft_i]', 'MEDIUM', date '2026-04-20', 'Søren Kjærgaard', '', timestamp with time zone '2026-04-20 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('11820685-7910-35ba-a151-8db994a5a82e' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-09', 'Labeller, cylinder of the gate', 'CYLINDER', 'JUDGED', '3 [cft_i]/min', '12 [ft_i]', 'MEDIUM', date '2026-04-21', 'Søren Kjærgaard', '', timestamp with time zone '2026-04-21 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('e11b2091-dc6f-3912-ae15-7d996521e266' as uuid), (select id from site where name = 'Gull Point cannery'), 'America/Los_Angeles', 'Q-10', 'Line 3, rail, entered twice', 'COUPLING', 'ULTRASOUND', '2.2 [cft_i]/min', '12 [ft_i]', 'MEDIUM', date '2026-04-21', 'Søren Kjærgaard', '', timestamp with time zone '2026-04-21 22:00:00+00', 'Søren Kjærgaard' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('53942a4d-bb08-3703-acb7-1f9cbeff4528' as uuid), (select id from found_leak where submission = 'e11b2091-dc6f-3912-ae15-7d996521e266'), 0, 'WITHDRAWN', date '2026-04-22', 'Marguerite Bélanger', 'the same as Q-08', timestamp with time zone '2026-04-22 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, size_by, flow, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('2204d6eb-22d1-3981-966e-7066d4702cc4' as uuid), (select id from site where name = 'Juniper Mesa packing hall'), 'America/Denver', 'H-1', 'Filling head 4, regulator', 'REGULATOR', 'JUDGED', '0.6 [cft_i]/min', '1600 m', 'MEDIUM', date '2025-09-22', 'Amina Diallo', '', timestamp with time zone '2025-09-22 22:00:00+00', 'Amina Diallo' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('fdcc4d9e-a4f9-3749-a349-7cbc20bb98af' as uuid), (select id from found_leak where submission = '2204d6eb-22d1-3981-966e-7066d4702cc4'), 0, 'REPAIRED', date '2025-10-02', 'Amina Diallo', 'diaphragm', timestamp with time zone '2025-10-02 22:00:00+00', 'Amina Diallo' from demo_start;
insert into found_leak_step (submission, leak_id, position, kind, done_on, done_by, note, recorded_at, recorded_by)
select cast('4eb2b0a4-3e80-3497-a91a-12ba99830982' as uuid), (select id from found_leak where submission = '2204d6eb-22d1-3981-966e-7066d4702cc4'), 1, 'TIGHT', date '2025-10-09', 'Marguerite Bélanger', '', timestamp with time zone '2025-10-09 22:00:00+00', 'Marguerite Bélanger' from demo_start;
insert into found_leak (submission, site_id, zone, tag, place, component, elevation, priority, found_on, found_by, note, recorded_at, recorded_by)
select cast('f86e5982-f9da-3077-9197-7826bcffc197' as uuid), (select id from site where name = 'Juniper Mesa packing hall'), 'America/Denver', 'H-2', 'Roof run, elbow over the cold store', 'PIPE', '1600 m', 'LOW', date '2025-09-22', 'Amina Diallo', '', timestamp with time zone '2025-09-22 22:00:00+00', 'Amina Diallo' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:30:00+00', 'Marguerite Bélanger', 'SITE', (select id from site where name = 'Gull Point cannery'), 'Gull Point cannery', 'name: Gull Point cannery
zone: America/Los_Angeles
elevation: 12 ft
currency: USD
tariff: 0.118 per kWh
note: Fish and fruit lines. Compressor house by the quay.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:33:00+00', 'Marguerite Bélanger', 'SITE', (select id from site where name = 'Juniper Mesa packing hall'), 'Juniper Mesa packing hall', 'name: Juniper Mesa packing hall
zone: America/Denver
elevation: 1600 m
currency: USD
tariff: 0.094 per kWh
note: High up: barometer about 83.5 kPa, never 29.9 inHg. Do not take the weather report''s figure.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:36:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-01'), 'C-01', 'tag: C-01
maker and model: Torvane PV-215
serial number: 88-1406
kind: piston
stages: 2
drive: belt
control: load unload
motor power: 15 hp
motor voltage: 460 V
motor current: 20.5 A
motor phases: 3
frequency: 60 Hz
rated speed: 875 rpm
rating: 50.5 cfm at 100 psi gauge, INTAKE
rating: 47.0 cfm at 175 psi gauge, INTAKE
loaded hours a year: 1900 h
in service: yes
note: Two-stage, three cylinders.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:42:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-02'), 'C-02', 'tag: C-02
maker and model: Orbisk 22S
serial number: S22-03917
kind: screw
stages: 1
drive: direct
control: load unload
motor power: 30 hp
motor voltage: 460 V
motor current: 36 A
motor phases: 3
frequency: 60 Hz
rating: 124 cfm at 100 psi gauge, INTAKE
rating: 119 cfm at 125 psi gauge, INTAKE
loaded hours a year: 5000 h
in service: yes
note: Base load.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:45:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-03'), 'C-03', 'tag: C-03
maker and model: Quelmar RV10
kind: vane
stages: 1
drive: direct
control: modulating
motor power: 10 hp
motor voltage: 460 V
motor phases: 3
frequency: 60 Hz
rating: 38 cfm at 100 psi gauge, UNKNOWN
in service: yes
note: Bought second-hand. Figure from the seller''s list; it does not say what kind of cfm.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:48:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-04'), 'C-04', 'tag: C-04
maker and model: Torvane PV-260
serial number: 16-0512
kind: piston
stages: 2
drive: belt
control: load unload
motor power: 20 hp
motor voltage: 460 V
motor current: 26 A
motor phases: 3
frequency: 60 Hz
rated speed: 820 rpm
rating: 69 cfm at 100 psi gauge, INTAKE
rating: 65 cfm at 175 psi gauge, INTAKE
loaded hours a year: 3400 h
in service: yes
note: Bought new in 2016 for the fruit line. Tests before 2020 copied from the log book.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:51:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-11'), 'C-11', 'tag: C-11
maker and model: Torvane PH-75
serial number: 91-0233
kind: piston
stages: 1
drive: belt
control: start stop
motor power: 7.5 hp
motor voltage: 230 V
motor current: 21 A
motor phases: 3
frequency: 60 Hz
rating: 27 cfm at 100 psi gauge, STANDARD_14_5PSIA_68F_DRY
in service: yes
note: Plate says scfm at sea level. It will not do that up here, and need not.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:54:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-12'), 'C-12', 'tag: C-12
maker and model: Lumeo spiral L8
serial number: L8 21 0077
kind: scroll
stages: 1
drive: belt
control: start stop
motor power: 8 kW
motor voltage: 400 V
motor current: 16.2 A
motor phases: 3
frequency: 60 Hz
rating: 0.98 m³/min at 6 bar gauge, INTAKE
rating: 0.94 m³/min at 8 bar gauge, INTAKE
in service: yes
note: Oil-free, for the filling heads. Imported; all its gauges are in bar.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 16:57:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-01'), 'R-01', 'tag: R-01
volume: 120 US gal
volume known by: plate
MAWP: 200 psi
relief valve set pressure: 180 psi
certificate due: 2030-03-31
in service: yes
note: Vertical, under C-01.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:00:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-02'), 'R-02', 'tag: R-02
volume: 400 US gal
volume known by: plate
MAWP: 165 psi
relief valve set pressure: 150 psi
certificate due: 2030-03-31
cut-out: 130 psi
certificate required: yes
shell needs: 0.185 in
heads need: 0.190 in
in service: yes
note: Wet tank before the dryer. Look at the drain before every test.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:03:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-03'), 'R-03', 'tag: R-03
volume: 200 US gal
volume known by: maker sheet
MAWP: 150 psi
relief valve set pressure: 140 psi
certificate due: 2025-11-30
in service: yes
note: Inspector was to come in November.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:06:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-04'), 'R-04', 'tag: R-04
volume: 240 US gal
volume known by: plate
MAWP: 165 psi
relief valve set pressure: 150 psi
certificate due: 2031-06-30
in service: yes
note: Dry tank. Counts with R-02 when the dryer is bypassed.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:09:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-05'), 'R-05', 'tag: R-05
volume: 240 US gal
volume known by: maker sheet
MAWP: 200 psi
relief valve set pressure: 185 psi
certificate due: 2031-06-30
in service: yes
note: Horizontal, beside C-04. Shut V-9 to test.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:12:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', 'tag: R-11
volume: 80 US gal
volume known by: dimensions
MAWP: 150 psi
relief valve set pressure: 150 psi
certificate due: 2030-09-30
in service: yes', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:18:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-12'), 'R-12', 'tag: R-12
volume: 500 L
volume known by: plate
MAWP: 11 bar
relief valve set pressure: 10 bar
certificate due: 2031-01-31
in service: yes', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:21:00+00', 'Marguerite Bélanger', 'RECEIVER', (select id from receiver where tag = 'R-13'), 'R-13', 'tag: R-13
volume: 60 US gal
volume known by: guess
in service: yes
note: Plate painted over.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:27:00+00', 'Marguerite Bélanger', 'PIPE', (select id from pipe_piece where tag = 'P-02'), 'P-02', 'tag: P-02
length: 24 ft
bore: 2.067 in
in service: yes
note: 2 inch pipe from C-02 to R-02 and across to R-04.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:30:00+00', 'Marguerite Bélanger', 'PIPE', (select id from pipe_piece where tag = 'P-03'), 'P-03', 'tag: P-03
volume: 3.5 US gal
in service: yes
note: Separator and filter between C-03 and R-03.', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:33:00+00', 'Marguerite Bélanger', 'PIPE', (select id from pipe_piece where tag = 'P-12'), 'P-12', 'tag: P-12
length: 6.5 m
bore: 36 mm
in service: yes', 'first entry, walked round with a torch' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:40:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-01'), 'PG-01', 'tag: PG-01
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme a
division: 2 psi
calibration interval, months: 12
in service: yes
note: On C-01.', 'first entry' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:43:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-02'), 'PG-02', 'tag: PG-02
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 1 psi
calibration interval, months: 12
in service: yes
note: On C-02.', 'first entry' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:46:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-03'), 'PG-03', 'tag: PG-03
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme b
division: 2 psi
calibration interval, months: 12
in service: yes
note: On C-03.', 'first entry' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2020-01-13 17:49:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-05'), 'PG-05', 'tag: PG-05
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 1 psi
calibration interval, months: 12
in service: yes
note: On C-04.', 'first entry' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2021-10-05 20:10:00+00', 'Søren Kjærgaard', 'RECEIVER', (select id from receiver where tag = 'R-13'), 'R-13', 'tag: R-13
volume: 60 US gal
volume known by: guess
in service: yes
note: Plate painted over.', 'tag: R-13
volume: 60 US gal
volume known by: guess
in service: no
note: Plate painted over. Out of use since the rebuild; keep it shut.', 'taken out of use in the rebuild' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2022-08-24 18:56:00+00', 'Zdeňka Horáková', 'TEST', (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 'test ' || (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 'test ' || (select id from pump_up_test where submission = '313eeafe-70dd-38bc-a9f3-70aa622bec82'), 'superseded by test ' || (select id from pump_up_test where submission = '75b44a92-f8f1-3d00-93a4-4ae3570ee26a'), 'water drained' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2023-03-14 21:15:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-03'), 'PG-03', 'tag: PG-03
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme b
division: 2 psi
calibration interval, months: 12
in service: yes
note: On C-03.', 'tag: PG-03
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme b
division: 2 psi
calibration interval, months: 12
in service: no
note: On C-03 until 14 March 2023. Read 5 % too much; kept in the drawer as a warning.', 'read 5 % too much, taken off' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2023-03-14 21:19:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-04'), 'PG-04', 'tag: PG-04
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 2 psi
calibration interval, months: 12
in service: yes
note: On C-03 since 14 March 2023.', 'new, in place of PG-03' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2023-05-17 16:40:00+00', 'Marguerite Bélanger', 'BASELINE', (select id from baseline_choice where submission = '2cbcfc8c-1054-39f8-a38e-7ef3208789ff'), 'C-03', 'test ' || (select id from pump_up_test where submission = '38765246-dd05-33e4-8659-d123e7991376') || ' of 2020-02-10', 'test ' || (select id from pump_up_test where submission = '14def469-995c-372d-a54f-c2bea73dfaee') || ' of 2023-05-16', 'First test with a gauge that can be believed.' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2023-06-09 14:45:00+00', 'Marguerite Bélanger', 'COMPRESSOR', (select id from compressor where tag = 'C-01'), 'C-01', 'tag: C-01
maker and model: Torvane PV-215
serial number: 88-1406
kind: piston
stages: 2
drive: belt
control: load unload
motor power: 15 hp
motor voltage: 460 V
motor current: 20.5 A
motor phases: 3
frequency: 60 Hz
rated speed: 875 rpm
rating: 50.5 cfm at 100 psi gauge, INTAKE
rating: 47.0 cfm at 175 psi gauge, INTAKE
loaded hours a year: 1900 h
in service: yes
note: Two-stage, three cylinders.', 'tag: C-01
maker and model: Torvane PV-215
serial number: 88-1406
kind: piston
stages: 2
drive: belt
control: load unload
motor power: 15 hp
motor voltage: 460 V
motor current: 20.5 A
motor phases: 3
frequency: 60 Hz
rated speed: 875 rpm
rating: 50.5 cfm at 100 psi gauge, INTAKE
rating: 47.0 cfm at 175 psi gauge, INTAKE
loaded hours a year: 1900 h
in service: yes
note: Two-stage, three cylinders. Second-stage valves and gaskets new on 8 June 2023.', 'valve job of 8 June written down' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2023-09-20 18:05:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-05'), 'PG-05', 'tag: PG-05
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 1 psi
calibration interval, months: 12
in service: yes
note: On C-04.', 'tag: PG-05
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 1 psi
calibration interval, months: 12
in service: no
note: On C-04 until 20 September 2023, when its glass broke.', 'glass broken' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
select timestamp with time zone '2023-09-20 18:10:00+00', 'Marguerite Bélanger', 'INSTRUMENT', (select id from instrument where tag = 'PG-06'), 'PG-06', 'tag: PG-06
kind: gauge
kept at: Gull Point cannery
maker and model: Kestrelin 4 inch
span: 200 psi
grade: asme 1a
division: 1 psi
calibration interval, months: 12
in service: yes
note: On C-04 since 20 September 2023.', 'in place of PG-05' from demo_start;
insert into change_record (changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)
select timestamp with time zone '2024-03-21 21:05:00+00', 'Amina Diallo', 'RECEIVER', (select id from receiver where tag = 'R-11'), 'R-11', 'tag: R-11
volume: 80 US gal
volume known by: dimensions
MAWP: 150 psi
relief valve set pressure: 150 psi
certificate due: 2030-09-30
in service: yes', 'tag: R-11
volume: 80 US gal
volume known by: dimensions
MAWP: 150 psi
relief valve set pressure: 165 psi
certificate due: 2030-09-30
in service: yes
note: The 165 psi valve is too high for this tank. Do not stand beside it; a 150 is on order.', 'old valve weeping, this is what the store had' from demo_start;

drop table demo_start;
