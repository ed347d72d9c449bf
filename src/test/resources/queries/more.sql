-- One of each kind of row that the demo plant has none of. The files hang on the bytes of its one file.
insert into test_review (submission, test_id, reviewed_at, reviewed_by, note)
    select cast('10000000-0000-4000-8000-000000000001' as uuid), max(id), cast('2026-06-01 12:00:00+00' as timestamp with time zone), 'Bo', 'seen' from pump_up_test;
insert into plant_limits (site_id, watch_below, plan_below, act_below, version)
    select min(id), 95, 90, 80, 0 from site;
insert into machine_readings (submission, compressor_id, test_id, read_at, zone, reader, hours, noise, recorded_at, recorded_by)
    select cast('10000000-0000-4000-8000-000000000002' as uuid), compressor_id, id, performed_at, zone, 'Cy', '4100 h', '', recorded_at, 'Cy'
    from pump_up_test where id = (select max(test_id) from logged_run);
insert into test_draft (draft_key, place, compressor_id, username, version, state, content, device, writer, saved_at)
    values (cast('10000000-0000-4000-8000-000000000003' as uuid), 0, 1, 'ann', 0, 'OPEN', 'tester=Ann', 'phone', 'w', cast('2026-06-01 12:00:00+00' as timestamp with time zone));
insert into test_draft (draft_key, place, compressor_id, username, version, state, content, device, writer, saved_at)
    values (cast('10000000-0000-4000-8000-000000000003' as uuid), 1, 1, 'ann', 0, 'BESIDE', 'tester=Bo', 'other', 'v', cast('2026-06-01 12:00:00+00' as timestamp with time zone));
insert into account_event (happened_at, kind, username, address)
    values (cast('2026-06-01 12:00:00+00' as timestamp with time zone), 'SIGNED_IN', 'ann', '192.0.2.1');
insert into calendar_feed (account_id, token_digest, made_at)
    values (1, '3b760dcb36ec5bb820a4e6a29b3beff868a09ae17e9c70bf034b80076a5c7aa3', cast('2026-06-01 12:00:00+00' as timestamp with time zone));
insert into attachment (submission, kind, object_id, sha256, format, byte_count, name, description, attached_at, attached_by)
    select cast(concat('10000000-0000-4000-8000-0000000001', k.n) as uuid), k.kind, k.id, c.sha256, 'PDF', 100, 'paper.pdf', 'paper', cast('2026-06-01 12:00:00+00' as timestamp with time zone), 'Ann'
    from attachment_content c cross join (values (10, 'SITE', 1), (11, 'COMPRESSOR', 1), (12, 'RECEIVER', 1), (13, 'INSTRUMENT', 1), (14, 'TEST', 1), (15, 'OFFER', 1), (16, 'LEAK_TEST', 1), (17, 'FOUND_LEAK', 1), (18, 'EVENT', 1), (19, 'VALVE', 1), (20, 'INSPECTION', 1), (21, 'CERTIFICATE', 1), (22, 'VALVE_TEST', 1), (23, 'READINGS', 1), (24, 'PIPE', 1), (25, 'CALIBRATION', 1)) as k (n, kind, id);
insert into attachment_withdrawal (attachment_id, submission, withdrawn_at, withdrawn_by, reason)
    select max(id), cast('10000000-0000-4000-8000-000000000004' as uuid), cast('2026-06-01 12:00:00+00' as timestamp with time zone), 'Ann', 'wrong paper' from attachment;
insert into logged_run_withdrawal (logged_run_id, submission, withdrawn_at, withdrawn_by, reason)
    select max(id), cast('10000000-0000-4000-8000-000000000005' as uuid), cast('2026-06-01 12:00:00+00' as timestamp with time zone), 'Ann', 'wrong file' from logged_run;
