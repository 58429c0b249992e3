-- What is followed at home is kept with its plan; plans from before have none and are computed as they were until now.

alter table plan add column home text not null default '{}';
