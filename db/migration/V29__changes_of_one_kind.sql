-- The newest changes of one kind, of which there may be a million or a few.
create index ix_change_record_kind on change_record (kind, chain_number);
