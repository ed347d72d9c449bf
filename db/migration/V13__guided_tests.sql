-- What a test guided at the machine also keeps: marks passed on the way, water drained, what was ticked and timed.
-- Nullable and without a default: tests of the time before stay as they were digested.
alter table pump_up_run add column laps varchar(2000);
alter table pump_up_test add column drained varchar(60);
alter table pump_up_test add column after_stop varchar(20);
alter table pump_up_test add column steps varchar(8000);
alter table pump_up_test add column device_recorded_at timestamp with time zone;
alter table pump_up_test add column device_offset_ms integer;
alter table pump_up_test add constraint ck_pump_up_test_after_stop
    check (after_stop in ('SILENT', 'HISSES', 'NOT_HEARD'));
comment on column pump_up_run.laps is 'marks passed on the way: pressure @ time from the start; ...';
comment on column pump_up_test.steps is 'what was ticked and timed, one a line, times by the clock of the device';
comment on column pump_up_test.device_recorded_at is 'when the test was finished, by the clock of the device';
comment on column pump_up_test.device_offset_ms is 'server clock less device clock when it was sent; recorded_at is the server''s';
