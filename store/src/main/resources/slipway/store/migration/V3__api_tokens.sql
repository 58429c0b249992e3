-- Tokens of other programs, of which only the digest is kept, and the keys under which something was asked once only.

create table api_token (
  id varchar(12) not null primary key,
  clinic_id varchar(64) not null references clinic (id),
  staff_id varchar(64) not null references staff (id),
  label varchar(80) not null,
  scopes varchar(200) not null,
  token_sha256 varchar(64) not null,
  created_at_us bigint not null,
  created_by varchar(64) not null,
  expires_at_us bigint not null,
  revoked_at_us bigint,
  last_used_at_us bigint
);
create unique index api_token_digest on api_token (token_sha256);
create index api_token_clinic on api_token (clinic_id, created_at_us);

create table api_request (
  token_id varchar(12) not null references api_token (id),
  request_key varchar(64) not null,
  request_sha256 varchar(64) not null,
  at_us bigint not null,
  made varchar(64),
  primary key (token_id, request_key)
);
create index api_request_age on api_request (at_us);
