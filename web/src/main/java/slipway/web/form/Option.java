package slipway.web.form;

/**
 * One of several values of a field.
 *
 * @param value as the record keeps it
 * @param label as the page says it
 */
public record Option(String value, String label) {}
