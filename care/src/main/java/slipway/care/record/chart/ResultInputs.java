package slipway.care.record.chart;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import slipway.care.record.content.Section;

/**
 * What a result was computed from.
 *
 * @param versions of the sections that were read
 * @param digest SHA-256 of the whole input as it was given, in hexadecimal
 */
public record ResultInputs(Map<Section, Long> versions, String digest) {
    public ResultInputs {
        var copy = new EnumMap<Section, Long>(Section.class);
        copy.putAll(versions);
        versions = Collections.unmodifiableMap(copy);
    }
}
