-- What the records about enough air are called in the history of changes: leak tests and found leaks, readings of a
-- logger, what uses air, how a site reckons its supply, offers.
alter table change_record drop constraint ck_change_record_kind;
alter table change_record add constraint ck_change_record_kind check (kind in
    ('SITE', 'COMPRESSOR', 'RECEIVER', 'PIPE', 'INSTRUMENT', 'CALIBRATION', 'TEST', 'RESTATEMENT', 'EVENT', 'BASELINE',
     'LIMITS', 'REVIEW', 'ACCOUNT', 'VALVE', 'VALVE_TEST', 'CERTIFICATE', 'INSPECTION', 'FINDING', 'INTERVAL', 'READINGS',
     'ATTACHMENT', 'LEAK_TEST', 'FOUND_LEAK', 'LOGGED_RUN', 'DEMAND_ITEM', 'SUPPLY_CHOICE', 'OFFER'));
