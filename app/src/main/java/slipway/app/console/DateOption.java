package slipway.app.console;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a date option and says in plain words what it must look like. */
public final class DateOption implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String value) {
        try {
            return LocalDate.parse(value);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("must be a date like 2026-11-25, was " + value);
        }
    }
}
