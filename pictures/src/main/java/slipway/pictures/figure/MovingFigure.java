package slipway.documents.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure that can be moved: the picture of its start, and what changes in it on the way to the end. Outlines that
 * change in the same way share one track, and what stands still is told once, so that a movement costs little more than
 * two pictures.
 *
 * @param start the whole first picture
 * @param tracks what changes
 */
record MovingFigure(String start, List<Track> tracks) {

    /** An attribute of an element, counted from 0 in the order of the document, the root not counted. */
    record Spot(int element, String attribute) {}

    /** The values that some spots pass at even steps of the way from start to end. */
    record Track(List<Spot> spots, List<String> values) {}

    private static final Pattern ELEMENT = Pattern.compile("<([a-z]+)((?: [a-zA-Z:-]+=\"[^\"]*\")*)/?>");
    private static final Pattern ATTRIBUTE = Pattern.compile(" ([a-zA-Z:-]+)=\"([^\"]*)\"");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    MovingFigure {
        tracks = List.copyOf(tracks);
    }

    /**
     * From pictures at even steps of the way.
     *
     * @throws IllegalArgumentException if they differ in more than numbers: then there is nothing between them
     */
    static MovingFigure of(List<String> pictures) {
        var elements = pictures.stream().map(MovingFigure::elements).toList();
        List<Map<String, String>> first = elements.get(0);
        var tracks = new LinkedHashMap<List<String>, List<Spot>>();
        for (var other : elements) {
            if (other.size() != first.size()) {
                throw new IllegalArgumentException("pictures of a movement need the same elements, had %d and %d"
                        .formatted(first.size(), other.size()));
            }
        }
        // The root comes first and stays as it is.
        for (int i = 1; i < first.size(); i++) {
            for (String attribute : new TreeSet<>(first.get(i).keySet())) {
                int at = i;
                List<String> values = elements.stream()
                        .map(picture -> picture.get(at).getOrDefault(attribute, ""))
                        .toList();
                if (values.stream().distinct().count() > 1) {
                    requireSameShape(attribute, values);
                    tracks.computeIfAbsent(values, key -> new ArrayList<>()).add(new Spot(i - 1, attribute));
                }
            }
        }
        return new MovingFigure(
                pictures.get(0),
                tracks.entrySet().stream()
                        .map(entry -> new Track(List.copyOf(entry.getValue()), entry.getKey()))
                        .toList());
    }

    private static List<Map<String, String>> elements(String picture) {
        var elements = new ArrayList<Map<String, String>>();
        Matcher element = ELEMENT.matcher(picture);
        while (element.find()) {
            var attributes = new LinkedHashMap<String, String>();
            Matcher attribute = ATTRIBUTE.matcher(element.group(2));
            while (attribute.find()) {
                attributes.put(attribute.group(1), attribute.group(2));
            }
            elements.add(attributes);
        }
        return elements;
    }

    private static void requireSameShape(String attribute, List<String> values) {
        long shapes = values.stream()
                .map(value -> NUMBER.matcher(value).replaceAll("#").replace(" ", ""))
                .distinct()
                .count();
        if (shapes > 1) {
            throw new IllegalArgumentException(
                    "pictures of a movement may differ in numbers only, differ in " + attribute + ": " + values.get(0));
        }
    }
}
