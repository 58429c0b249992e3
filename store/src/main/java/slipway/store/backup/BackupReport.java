package slipway.store.backup;

import slipway.care.record.trail.TrailReport;

/**
 * What a backup that was made, checked or brought back holds.
 *
 * @param trail of the records in it
 * @param people how many people are in it, erased ones included
 */
public record BackupReport(TrailReport trail, long people) {}
