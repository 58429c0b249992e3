package slipway.documents.guide;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Which colour of a figure becomes which on a dark screen, as rules of style, so that no figure has to be in the page
 * twice. They are read off the same figure drawn in both ways.
 *
 * @param colours the colour on dark by that on paper, as SVG writes them
 */
record DarkFigures(Map<String, String> colours) {
    private static final Pattern PAINT = Pattern.compile(" (?:fill|stroke)=\"(#[0-9a-f]{6})\"");

    DarkFigures {
        colours = Map.copyOf(colours);
    }

    /**
     * From the same figures drawn on paper and on dark.
     *
     * @throws IllegalArgumentException if they differ in more than colours, or if one colour would become two
     */
    static DarkFigures of(List<String> onPaper, List<String> onDark) {
        var colours = new TreeMap<String, String>();
        for (int i = 0; i < onPaper.size(); i++) {
            List<String> light = paints(onPaper.get(i));
            List<String> dark = paints(onDark.get(i));
            if (light.size() != dark.size()) {
                throw new IllegalArgumentException(
                        "a figure must have the same parts on paper and on dark, had %d and %d"
                                .formatted(light.size(), dark.size()));
            }
            for (int k = 0; k < light.size(); k++) {
                add(colours, light.get(k), dark.get(k));
            }
        }
        return new DarkFigures(colours);
    }

    /** All of several exercises. */
    static DarkFigures all(List<DarkFigures> parts) {
        var colours = new TreeMap<String, String>();
        parts.forEach(part -> part.colours().forEach((light, dark) -> add(colours, light, dark)));
        return new DarkFigures(colours);
    }

    private static void add(Map<String, String> colours, String light, String dark) {
        String before = colours.putIfAbsent(light, dark);
        if (before != null && !before.equals(dark)) {
            throw new IllegalArgumentException(
                    "a colour must become one colour on dark, but %s became %s and %s".formatted(light, before, dark));
        }
    }

    private static List<String> paints(String svg) {
        return PAINT.matcher(svg)
                .results()
                .map(MatchResult::group)
                .map(DarkFigures::colour)
                .toList();
    }

    private static String colour(String attribute) {
        return attribute.substring(attribute.indexOf('#'), attribute.length() - 1);
    }

    /** Rules for a dark screen. Print and light screens keep what stands in the figures. */
    String style() {
        return new TreeMap<>(colours)
                .entrySet().stream()
                        .map(each -> ".stage [fill=\"%1$s\"]{fill:%2$s}.stage [stroke=\"%1$s\"]{stroke:%2$s}\n"
                                .formatted(each.getKey(), each.getValue()))
                        .collect(Collectors.joining("", "@media screen and (prefers-color-scheme: dark) {\n", "}\n"));
    }
}
