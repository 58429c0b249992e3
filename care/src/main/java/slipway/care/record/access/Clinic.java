package slipway.care.record.access;

/**
 * A clinic.
 *
 * @param name for the papers, 1 to 80 characters
 * @param setting {@code therapy}, {@code primary-care}, {@code secondary-care} or {@code emergency}, as in the case file
 * @param phone whom to call; empty text if not given
 * @param emergencyNumber the local emergency number
 * @param demo whether its people are invented
 */
public record Clinic(
        String id, String name, String setting, String phone, String emergencyNumber, boolean demo, long version) {
    public Clinic {
        if (name.isBlank() || name.length() > 80) {
            throw new IllegalArgumentException("name of a clinic must have 1 to 80 characters");
        }
        if (!setting.matches("therapy|primary-care|secondary-care|emergency")) {
            throw new IllegalArgumentException(
                    "setting must be therapy, primary-care, secondary-care or emergency, was " + setting);
        }
        if (!phone.isEmpty() && !phone.matches("[0-9+() .-]{3,30}")) {
            throw new IllegalArgumentException("phone must be 3 to 30 digits, spaces or + ( ) . -");
        }
        if (!emergencyNumber.matches("[0-9+() .-]{2,20}")) {
            throw new IllegalArgumentException("emergency number must be 2 to 20 digits, spaces or + ( ) . -");
        }
    }
}
