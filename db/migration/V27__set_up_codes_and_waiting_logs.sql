-- Codes for the first account, printed once by each start of an instance; every instance takes each of them.
create table set_up_code (
    hash       varchar(64) not null,
    made_at    timestamp with time zone not null,
    wrong      integer not null,
    held_until timestamp with time zone not null,
    constraint pk_set_up_code primary key (hash)
);
comment on column set_up_code.hash is 'SHA-256 of the code';
comment on column set_up_code.wrong is 'wrong codes typed since it was made';
comment on column set_up_code.held_until is 'before that none is looked at';

-- Files of loggers between the two steps of their recording.
create table waiting_log (
    id         uuid not null,
    test_id    bigint not null,
    sent_by    varchar(120) not null,
    file_name  varchar(150) not null,
    sha256     varchar(64) not null,
    byte_count bigint not null,
    constraint pk_waiting_log primary key (id),
    constraint fk_waiting_log_file foreign key (id) references shared_file (id) on delete cascade
);
