-- What may change without a trail: who is signed in, what is typed and not saved, when the last backup was; and the
-- passkeys in the shape of Spring Security 7.0 (its schema files, with one spelling of the types for both databases).

-- Of the id, which is a secret of the browser, only the digest is kept.
create table staff_session (
  id_sha256 varchar(64) not null primary key,
  content ${bytes} not null,
  last_seen_at_us bigint not null,
  expires_at_us bigint not null
);
create index staff_session_expiry on staff_session (expires_at_us);

create table draft (
  user_id varchar(64) not null,
  episode_id varchar(64) not null references episode (id),
  form varchar(60) not null,
  base_version bigint not null,
  content text not null,
  at_us bigint not null,
  primary key (user_id, episode_id, form)
);
create index draft_episode on draft (episode_id);
create index draft_age on draft (at_us);

create table backup (
  id varchar(64) not null primary key,
  at_us bigint not null,
  size_bytes bigint not null,
  sha256 varchar(64) not null
);
create index backup_age on backup (at_us);

create table user_entities (
  id varchar(1000) not null,
  name varchar(100) not null,
  display_name varchar(200),
  primary key (id)
);

create table user_credentials (
  credential_id varchar(1000) not null,
  user_entity_user_id varchar(1000) not null,
  public_key ${bytes} not null,
  signature_count bigint,
  uv_initialized boolean,
  backup_eligible boolean not null,
  authenticator_transports varchar(1000),
  public_key_credential_type varchar(100),
  backup_state boolean not null,
  attestation_object ${bytes},
  attestation_client_data_json ${bytes},
  created timestamp,
  last_used timestamp,
  label varchar(1000) not null,
  primary key (credential_id)
);
create index user_credentials_user on user_credentials (user_entity_user_id);
