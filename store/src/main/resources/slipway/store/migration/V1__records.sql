-- One set of statements for SQLite and PostgreSQL. What differs is a placeholder:
--   ${bytes}  bytes
--   ${key}    text that is compared byte by byte whatever the language of the server
-- Instants are whole microseconds since 1970-01-01T00:00:00Z (names end in _us), days are text as 2026-11-25, JSON is
-- text, so that both databases and every driver keep and sort the same values.

create table clinic (
  id varchar(64) not null primary key,
  name varchar(80) not null,
  setting varchar(20) not null,
  phone varchar(30) not null,
  emergency_number varchar(20) not null,
  demo boolean not null,
  version bigint not null
);

create table clinic_setting (
  clinic_id varchar(64) not null references clinic (id),
  setting_key varchar(80) not null,
  setting_value text not null,
  version bigint not null,
  primary key (clinic_id, setting_key)
);

-- At most one row: the code of the first start.
create table set_up_code (
  id integer not null primary key check (id = 1),
  sha256 varchar(64) not null,
  expires_at_us bigint not null
);

create table staff (
  id varchar(64) not null primary key,
  clinic_id varchar(64) not null references clinic (id),
  login varchar(40) not null,
  display_name varchar(80) not null,
  roles varchar(80) not null,
  reach varchar(10) not null,
  active boolean not null,
  password_hash text not null,
  totp_secret text,
  totp_step bigint not null,
  failures integer not null,
  next_allowed_at_us bigint,
  version bigint not null
);
create unique index staff_login on staff (login);
create index staff_clinic on staff (clinic_id);

create table team (
  id varchar(64) not null primary key,
  clinic_id varchar(64) not null references clinic (id),
  name varchar(80) not null
);
create index team_clinic on team (clinic_id);

create table team_member (
  team_id varchar(64) not null references team (id),
  staff_id varchar(64) not null references staff (id),
  primary key (team_id, staff_id)
);
create index team_member_staff on team_member (staff_id);

create table person (
  id varchar(64) not null primary key,
  clinic_id varchar(64) not null references clinic (id),
  name varchar(80) not null,
  birth_date varchar(10),
  age_years double precision,
  age_told_on varchar(10),
  sex varchar(10),
  stature_cm double precision,
  mass_kg double precision,
  language varchar(5) not null,
  phone varchar(40),
  email varchar(254),
  invented boolean not null,
  version bigint not null,
  created_at_us bigint not null,
  created_by varchar(64) not null,
  erased_at_us bigint
);

-- What a name is searched by: the folded name from each of its words to the end. Position 0 is the whole name.
create table person_name (
  clinic_id varchar(64) not null,
  search_key ${key} not null,
  person_id varchar(64) not null references person (id),
  word_position integer not null,
  primary key (person_id, word_position)
);
create index person_name_search on person_name (clinic_id, search_key, person_id);
create index person_name_whole on person_name (clinic_id, search_key, person_id) where word_position = 0;

create table glass_grant (
  id varchar(64) not null primary key,
  clinic_id varchar(64) not null references clinic (id),
  staff_id varchar(64) not null references staff (id),
  person_id varchar(64) not null references person (id),
  reason text not null,
  at_us bigint not null,
  until_us bigint not null
);
create index glass_grant_staff on glass_grant (staff_id, person_id);
create index glass_grant_clinic on glass_grant (clinic_id, at_us);

create table episode (
  id varchar(64) not null primary key,
  person_id varchar(64) not null references person (id),
  clinic_id varchar(64) not null references clinic (id),
  side varchar(5) not null,
  therapist_id varchar(64) not null,
  state varchar(10) not null,
  opened_at_us bigint not null,
  opened_by varchar(64) not null,
  closed_at_us bigint,
  version bigint not null
);
create index episode_person on episode (person_id, opened_at_us);
create index episode_open_therapist on episode (therapist_id) where state <> 'CLOSED';
create index episode_open_clinic on episode (clinic_id, opened_at_us) where state <> 'CLOSED';

-- Every version of every section; the newest counts.
create table section_version (
  episode_id varchar(64) not null references episode (id),
  section varchar(20) not null,
  version bigint not null,
  content text not null,
  changed_at_us bigint not null,
  changed_by varchar(64) not null,
  primary key (episode_id, section, version)
);

create table visit (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  visit_number integer not null,
  staff_id varchar(64) not null,
  started_at_us bigint not null,
  ended_at_us bigint,
  version bigint not null
);
create unique index visit_in_episode on visit (episode_id, visit_number);

create table supervised_try (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  visit_id varchar(64) not null references visit (id),
  plan_number integer not null,
  exercise_id varchar(60) not null,
  repetitions integer not null,
  worst double precision not null,
  settle_minutes double precision,
  retest_onset_deg double precision,
  retest_weaker boolean,
  released boolean not null,
  remark text,
  at_us bigint not null,
  staff_id varchar(64) not null
);
create index supervised_try_episode on supervised_try (episode_id, at_us);

create table computed_result (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  kind varchar(20) not null,
  input_versions text not null,
  input_digest varchar(64) not null,
  program_version varchar(80) not null,
  data_digest varchar(200) not null,
  body text not null,
  at_us bigint not null,
  made_by varchar(64) not null
);
create unique index computed_result_inputs
  on computed_result (episode_id, kind, input_digest, program_version, data_digest);

create table plan (
  episode_id varchar(64) not null references episode (id),
  plan_number integer not null,
  inputs text not null,
  input_versions text not null,
  input_digest varchar(64) not null,
  program_version varchar(80) not null,
  data_digest varchar(200) not null,
  body text not null,
  ceilings text not null,
  state varchar(10) not null,
  made_at_us bigint not null,
  made_by varchar(64) not null,
  state_at_us bigint not null,
  state_by varchar(64) not null,
  released_at_us bigint,
  primary key (episode_id, plan_number)
);
create unique index plan_one_released on plan (episode_id) where state = 'RELEASED';

create table decision (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  about ${key} not null,
  verdict varchar(10) not null,
  proposed text not null,
  chosen text not null,
  reason text not null,
  made_by varchar(64) not null,
  at_us bigint not null
);
create index decision_episode on decision (episode_id, at_us);

create table document (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  kind varchar(40) not null,
  media_type varchar(100) not null,
  size_bytes integer not null,
  sha256 varchar(64) not null,
  plan_number integer,
  at_us bigint not null,
  made_by varchar(64) not null
);
create index document_episode on document (episode_id, at_us);

create table document_bytes (
  document_id varchar(64) not null primary key references document (id),
  content ${bytes} not null
);

create table paper (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  kind varchar(40) not null,
  visit_id varchar(64) references visit (id),
  body text not null,
  version bigint not null,
  changed_at_us bigint not null,
  changed_by varchar(64) not null,
  signed_by varchar(64),
  signed_at_us bigint,
  signed_sha256 varchar(64)
);
create index paper_episode on paper (episode_id, changed_at_us);

create table addendum (
  paper_id varchar(64) not null references paper (id),
  addendum_number integer not null,
  body text not null,
  signed_by varchar(64) not null,
  signed_at_us bigint not null,
  signed_sha256 varchar(64) not null,
  primary key (paper_id, addendum_number)
);

create table check_in (
  episode_id varchar(64) not null references episode (id),
  id varchar(64) not null,
  session_id varchar(80) not null,
  exercise_id varchar(60) not null,
  body text not null,
  received_at_us bigint not null,
  primary key (episode_id, id)
);
create index check_in_received on check_in (episode_id, received_at_us);

create table alert (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  clinic_id varchar(64) not null references clinic (id),
  kind varchar(60) not null,
  words text not null,
  check_in_id varchar(64),
  owner_id varchar(64) not null,
  raised_at_us bigint not null,
  alert_level integer not null,
  level_at_us bigint not null,
  acknowledged_by varchar(64),
  acknowledged_at_us bigint,
  acknowledged_what text
);
create unique index alert_of_check_in on alert (episode_id, kind, check_in_id);
create index alert_open_episode on alert (episode_id, raised_at_us) where acknowledged_at_us is null;
create index alert_open_clinic on alert (clinic_id, raised_at_us) where acknowledged_at_us is null;
create index alert_open_level on alert (level_at_us) where acknowledged_at_us is null;

create table measure_entry (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  measure_id varchar(60) not null,
  taken_on varchar(10) not null,
  body text not null,
  replaces_id varchar(64) references measure_entry (id),
  at_us bigint not null,
  made_by varchar(64) not null
);
create index measure_entry_episode on measure_entry (episode_id, taken_on);
create unique index measure_entry_replaces on measure_entry (replaces_id);

create table goal (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  words text not null,
  measure_id varchar(60),
  target text not null,
  due_on varchar(10),
  state varchar(10) not null,
  version bigint not null,
  created_at_us bigint not null,
  changed_at_us bigint not null,
  changed_by varchar(64) not null
);
create index goal_episode on goal (episode_id, created_at_us);

create table access_link (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  purpose varchar(10) not null,
  plan_number integer,
  token_sha256 varchar(64) not null,
  created_at_us bigint not null,
  expires_at_us bigint not null,
  revoked_at_us bigint,
  birth_year_asked boolean not null,
  failures integer not null,
  locked_until_us bigint
);
create unique index access_link_token on access_link (token_sha256);
create index access_link_episode on access_link (episode_id, created_at_us);

-- The newest entry of each chain. Found against the entries, it shows when the end of a chain was cut off.
create table trail_head (
  chain_kind varchar(10) not null,
  chain_id varchar(64) not null,
  seq bigint not null,
  digest varchar(64) not null,
  primary key (chain_kind, chain_id)
);

create table trail_entry (
  chain_kind varchar(10) not null,
  chain_id varchar(64) not null,
  seq bigint not null,
  at_us bigint not null,
  who varchar(64) not null,
  acting_role varchar(20) not null,
  action varchar(20) not null,
  entity varchar(200) not null,
  entity_id varchar(80) not null,
  version bigint not null,
  payload_digest varchar(64) not null,
  previous_digest varchar(64) not null,
  digest varchar(64) not null,
  primary key (chain_kind, chain_id, seq)
);

create table trail_payload (
  chain_kind varchar(10) not null,
  chain_id varchar(64) not null,
  seq bigint not null,
  before_text text not null,
  after_text text not null,
  primary key (chain_kind, chain_id, seq)
);

-- When a user's reading of a person's record was last noted.
create table trail_reading (
  person_id varchar(64) not null references person (id),
  user_id varchar(64) not null,
  noted_at_us bigint not null,
  primary key (person_id, user_id)
);
