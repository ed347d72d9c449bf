-- The list of instruments: those in service first, by kind and tag.
create index ix_instrument_list on instrument (in_service desc, kind, tag);
