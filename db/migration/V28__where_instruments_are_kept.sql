-- Where an instrument is kept, so that a test offers those at hand and not those of the whole group.
alter table instrument add column site_id bigint;
alter table instrument add constraint fk_instrument_site foreign key (site_id) references site (id);
create index ix_instrument_site on instrument (site_id);
comment on column instrument.site_id is 'the site where it is kept; null when it is carried between sites';
