-- Of a million lines those of one kind, newest first.
create index ix_change_record_kind on change_record (kind, chain_number);
