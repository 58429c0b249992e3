package slipway.care.record.access;

/**
 * A setting of a clinic.
 *
 * @param version 0 if nobody has set it
 */
public record Setting(String clinicId, String key, String value, long version) {}
