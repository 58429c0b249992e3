-- What is done on a schedule, by one of several servers at a time. All times are those of the clock of the database, so
-- that servers whose clocks differ agree. A row is there from the first time that its work was due.

create table shared_work (
  name varchar(60) not null primary key,
  -- The newest turn that was done, named by the time when it was due; 0 before the first.
  turn_us bigint not null,
  -- Who works at it, until when unless it says so again. The taking is counted, so that whoever lost it can tell.
  holder varchar(120) not null,
  held_until_us bigint not null,
  taking bigint not null,
  succeeded_at_us bigint,
  ended_at_us bigint,
  -- In a row, up to now.
  failures integer not null,
  words varchar(300) not null
);
