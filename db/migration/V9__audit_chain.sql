-- Each line of the change log holds the digest of the line before it and of the record it tells of.
alter table change_record add column chain_number bigint;
alter table change_record add column content_digest varchar(64);
alter table change_record add column previous_digest varchar(64);
alter table change_record add column digest varchar(64);
alter table change_record add constraint uq_change_record_chain unique (chain_number);
comment on column change_record.chain_number is 'place in the chain, from 1; null only until the chain is begun';
comment on column change_record.content_digest is 'SHA-256 of the whole record as it was after the change; docs/audit.md';

-- One row: where the chain ends. Whoever adds a line locks it, so that lines come one after the other.
create table chain_end (
    id           integer not null,
    chain_number bigint not null,
    digest       varchar(64) not null,
    begun        boolean not null,
    constraint pk_chain_end primary key (id),
    constraint ck_chain_end_one check (id = 1)
);
insert into chain_end (id, chain_number, digest, begun) values
    (1, 0, '0000000000000000000000000000000000000000000000000000000000000000', false);
comment on column chain_end.begun is 'false until the records that were there before are in the chain';

alter table change_record drop constraint ck_change_record_kind;
alter table change_record add constraint ck_change_record_kind check (kind in
    ('SITE', 'COMPRESSOR', 'RECEIVER', 'PIPE', 'INSTRUMENT', 'CALIBRATION', 'TEST', 'RESTATEMENT', 'EVENT', 'BASELINE',
     'LIMITS', 'REVIEW', 'ACCOUNT'));

-- A line about a baseline named the compressor; it tells of the choice. They were written together, in one order.
update change_record set object_id = coalesce(
    (select b.id from baseline_choice b where b.compressor_id = change_record.object_id
        and (select count(*) from baseline_choice e where e.compressor_id = b.compressor_id and e.id < b.id)
          = (select count(*) from change_record q where q.kind = 'BASELINE'
                and q.object_id = change_record.object_id and q.id < change_record.id)),
    object_id)
where kind = 'BASELINE';

-- The same of corrections of maintenance, of which alone there were lines.
update change_record set object_id = coalesce(
    (select b.id from maintenance_event b where b.compressor_id = change_record.object_id and b.supersedes_id is not null
        and (select count(*) from maintenance_event e where e.compressor_id = b.compressor_id
                and e.supersedes_id is not null and e.id < b.id)
          = (select count(*) from change_record q where q.kind = 'EVENT'
                and q.object_id = change_record.object_id and q.id < change_record.id)),
    object_id)
where kind = 'EVENT';
