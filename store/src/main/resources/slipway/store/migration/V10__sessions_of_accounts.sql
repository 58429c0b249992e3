-- Whose session it is, so that it ends when the account is blocked. Empty before anybody has signed in.
alter table staff_session add column staff_id varchar(64);
create index staff_session_staff on staff_session (staff_id);
