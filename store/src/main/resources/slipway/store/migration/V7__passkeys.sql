-- Passkeys of staff. The tables user_entities and user_credentials of script 2 were never filled and stay unused: their
-- times have no zone, which servers in different zones would read differently, and scripts only add.
create table passkey (
  id varchar(64) not null primary key,
  staff_id varchar(64) not null references staff (id),
  credential_id varchar(1364) not null,
  public_key text not null,
  signature_count bigint not null,
  backup_eligible boolean not null,
  backed_up boolean not null,
  label varchar(80) not null,
  created_at_us bigint not null,
  last_used_at_us bigint,
  -- A challenge counts once, also when two servers are shown the answer to it at the same moment.
  last_challenge_sha256 varchar(64)
);
create unique index passkey_credential on passkey (credential_id);
create index passkey_staff on passkey (staff_id, created_at_us);
