-- Figures over the episodes of a clinic, as they stood when they were last worked out: with many episodes that takes longer than
-- anybody waits for a page. They follow from the other tables and may be thrown away.
create table caseload_figures (
  clinic_id varchar(64) not null primary key references clinic (id),
  at_us bigint not null,
  body text not null
);

-- The episodes of a clinic, the newest first, closed ones too.
create index episode_clinic on episode (clinic_id, opened_at_us, id);
