-- What several instances of the program share while they work. Nothing here is a record.

-- The table that ShedLock asks for: who does a piece of work, and until when that holds unless it is said again.
create table shedlock (
    name       varchar(64) not null,
    lock_until timestamp(3) not null,
    locked_at  timestamp(3) not null,
    locked_by  varchar(255) not null,
    constraint pk_shedlock primary key (name)
);

-- Files that came in and wait for the next step, which another instance may serve.
create table shared_file (
    id         uuid not null,
    keep_until timestamp with time zone not null,
    constraint pk_shared_file primary key (id)
);
create index ix_shared_file_keep_until on shared_file (keep_until);
create table shared_piece (
    file_id  uuid not null,
    position integer not null,
    bytes    bytea not null,
    constraint pk_shared_piece primary key (file_id, position),
    constraint fk_shared_piece_file foreign key (file_id) references shared_file (id) on delete cascade
);
