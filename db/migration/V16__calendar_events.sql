-- Making a calendar address, or taking one back, is written down with the sign-ins: it opens a way in without a password.
alter table account_event drop constraint ck_account_event_kind;
alter table account_event add constraint ck_account_event_kind check (kind in
    ('SIGNED_IN', 'FAILED', 'SIGNED_OUT', 'SIGNED_OUT_EVERYWHERE', 'PASSWORD_CHANGED', 'CALENDAR_MADE', 'CALENDAR_REVOKED'));
