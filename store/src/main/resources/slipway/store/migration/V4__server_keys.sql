-- Secrets of the program itself, made once and shared by all servers on one database; never part of a backup.
create table server_key (
  name varchar(60) not null primary key,
  secret ${bytes} not null,
  made_at_us bigint not null
);
