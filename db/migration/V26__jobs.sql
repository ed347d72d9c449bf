-- Work that goes on beside the pages, so that any instance shows it. Under way is what its lock in shedlock is held for.
create table import_job (
    id         uuid not null,
    name       varchar(150) not null,
    stage      varchar(12) not null,
    progress   bigint not null,
    sound      boolean not null,
    findings   text,
    recorded   bigint not null,
    ordered_by varchar(120),
    created_at timestamp with time zone not null,
    constraint pk_import_job primary key (id),
    constraint ck_import_job_stage check (stage in
        ('WAITING', 'CHECKING', 'CHECKED', 'ORDERED', 'RECORDING', 'DONE', 'FAILED', 'BROKEN_OFF'))
);
comment on column import_job.id is 'of its file in shared_file too';
comment on column import_job.findings is 'what looking through it found, as JSON; null before';
comment on column import_job.sound is 'looked through, and nothing speaks against it';

-- The last check of the records.
create table audit_run (
    id         uuid not null,
    started_at timestamp with time zone not null,
    ended_at   timestamp with time zone,
    size       bigint not null,
    done       bigint not null,
    report     text,
    constraint pk_audit_run primary key (id)
);
comment on column audit_run.size is 'lines and records to be read';
comment on column audit_run.report is 'what it found, as JSON; null while it is under way, and when it broke off';
