-- A fall of pressure in the test volume that serves as the hold of a pump-up test. Nullable and without a default: tests of
-- the time before stay as they were digested.
alter table pump_up_test add column leak_test_id bigint;
alter table pump_up_test add constraint fk_pump_up_test_leak_test foreign key (leak_test_id) references leak_test (id);
create index ix_pump_up_test_leak_test on pump_up_test (leak_test_id);
comment on column pump_up_test.leak_test_id is 'the leak test of the same volume that the hold was taken from';
