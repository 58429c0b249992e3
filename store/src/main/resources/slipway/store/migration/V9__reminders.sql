-- Reminders by e-mail. What a person said last: the address itself stands with the person only, here is its digest.
create table reminder_consent (
  person_id varchar(64) not null primary key references person (id),
  send_hour integer not null,
  address_sha256 varchar(64) not null,
  said_at_us bigint not null,
  written_by varchar(64) not null,
  ended_at_us bigint,
  ended_by_person boolean not null
);

-- What was decided for a person and a day of the clinic. The key is what makes it one reminder a day.
create table reminder_day (
  person_id varchar(64) not null references person (id),
  due_on varchar(10) not null,
  state varchar(12) not null,
  attempts integer not null,
  next_try_us bigint not null,
  fault varchar(20),
  fault_at_us bigint,
  changed_at_us bigint not null,
  primary key (person_id, due_on)
);
create index reminder_day_due on reminder_day (due_on);

-- Tokens that went out, as digests: each ends the reminders of one person.
create table reminder_stop (
  token_sha256 varchar(64) not null primary key,
  person_id varchar(64) not null references person (id),
  due_on varchar(10) not null
);
create index reminder_stop_person on reminder_stop (person_id);
