-- What a person told by phone before the first visit, as it was told. Rows are only added; whole = false is an early word
-- of a sign of danger, before the person said "done".
create table intake (
  id varchar(64) not null primary key,
  episode_id varchar(64) not null references episode (id),
  link_id varchar(64) not null references access_link (id),
  whole boolean not null,
  language varchar(5) not null,
  answers text not null,
  told_at_us bigint not null
);
create index intake_episode on intake (episode_id, told_at_us);
create unique index intake_done on intake (link_id) where whole;
