-- Diagnosis codes that a clinic has loaded. Every load is kept whole, as the two files it was; the newest is in use.
create table code_load (
  clinic_id varchar(64) not null references clinic (id),
  version bigint not null,
  loaded_at_us bigint not null,
  loaded_by varchar(64) not null,
  codes integer not null,
  exclusions integer not null,
  codes_file text not null,
  exclusions_file text not null,
  sha256 varchar(64) not null,
  primary key (clinic_id, version)
);
