package slipway.app.billing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slipway.reasoning.billing.TimedService;

/** Reads {@code 24,23} or {@code manual=24,exercise=23}; services without a name are called A, B, C and so on. */
final class MinutesText {
    private static final int MAX_SERVICES = 26;
    private static final int MAX_NAME = 40;

    private final List<String> mistakes;
    private final List<TimedService> services = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    private MinutesText(List<String> mistakes) {
        this.mistakes = mistakes;
    }

    /** The services of a text; whatever is wrong with it is added to {@code mistakes}, all of it. */
    static List<TimedService> read(String text, List<String> mistakes) {
        var reader = new MinutesText(mistakes);
        String[] parts = text.split(",", -1);
        if (parts.length > MAX_SERVICES) {
            mistakes.add("at most %d services fit into a day, were %d".formatted(MAX_SERVICES, parts.length));
            return List.of();
        }
        for (int i = 0; i < parts.length; i++) {
            reader.part(parts[i].strip(), i, parts.length);
        }
        return reader.services;
    }

    private void part(String part, int index, int count) {
        String where = " (service %d of %d)".formatted(index + 1, count);
        int sign = part.indexOf('=');
        String name = sign < 0
                ? Character.toString('A' + index)
                : part.substring(0, sign).strip();
        String minutes = part.substring(sign + 1).strip();
        boolean named = !name.isEmpty() && name.length() <= MAX_NAME;
        if (!named) {
            mistakes.add("a name must have 1 to %d letters, had %d%s".formatted(MAX_NAME, name.length(), where));
        } else if (!names.add(name)) {
            mistakes.add("each service needs a name of its own, %s stands twice%s".formatted(name, where));
        }
        if (!minutes.matches("[0-9]{1,4}") || Integer.parseInt(minutes) > TimedService.MAX_MINUTES) {
            mistakes.add("minutes must be a whole number within 0 and %d, were \"%s\"%s"
                    .formatted(TimedService.MAX_MINUTES, minutes, where));
        } else if (named) {
            services.add(new TimedService(name, Integer.parseInt(minutes)));
        }
    }
}
