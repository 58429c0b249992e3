package slipway.pictures.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A figure that can be moved: the picture of its start, and what changes in it on the way to the end. Outlines that
 * change in the same way share one track, and what stands still is told once, so that a movement costs little more than
 * two pictures.
 *
 * @param start the whole first picture
 * @param tracks what changes
 */
public record MovingFigure(String start, List<Track> tracks) {

    /** An attribute of an element, counted from 0 in the order of the document, the root not counted. */
    public record Spot(int element, String attribute) {}

    /** The values that some spots pass at even steps of the way from start to end. */
    public record Track(List<Spot> spots, List<String> values) {}

    private static final String END = "</svg>";
    private static final Pattern ELEMENT = Pattern.compile("<([a-z]+)((?: [a-zA-Z:-]+=\"[^\"]*\")*)/?>");
    private static final Pattern ATTRIBUTE = Pattern.compile(" ([a-zA-Z:-]+)=\"([^\"]*)\"");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    public MovingFigure {
        tracks = List.copyOf(tracks);
    }

    /**
     * From pictures at even steps of the way. Where they differ in more than numbers, as when a limb comes out from
     * behind another, there is nothing between them: they fade one into the next.
     */
    public static MovingFigure of(List<String> pictures) {
        var elements = pictures.stream().map(MovingFigure::elements).toList();
        return alike(elements) ? changing(pictures.get(0), elements) : fading(pictures);
    }

    private static MovingFigure changing(String start, List<List<Map<String, String>>> elements) {
        List<Map<String, String>> first = elements.get(0);
        var tracks = new LinkedHashMap<List<String>, List<Spot>>();
        // The root comes first and stays as it is.
        for (int i = 1; i < first.size(); i++) {
            for (String attribute : new TreeSet<>(first.get(i).keySet())) {
                List<String> values = values(elements, i, attribute);
                if (values.stream().distinct().count() > 1) {
                    tracks.computeIfAbsent(values, key -> new ArrayList<>()).add(new Spot(i - 1, attribute));
                }
            }
        }
        return new MovingFigure(
                start,
                tracks.entrySet().stream()
                        .map(entry -> new Track(List.copyOf(entry.getValue()), entry.getKey()))
                        .toList());
    }

    private static List<String> values(List<List<Map<String, String>>> elements, int at, String attribute) {
        return elements.stream()
                .map(picture -> picture.get(at).getOrDefault(attribute, ""))
                .toList();
    }

    /** Whether the pictures have the same elements, whose attributes differ in numbers only. */
    private static boolean alike(List<List<Map<String, String>>> elements) {
        List<Map<String, String>> first = elements.get(0);
        for (var picture : elements) {
            if (picture.size() != first.size()) {
                return false;
            }
        }
        for (int i = 1; i < first.size(); i++) {
            for (String attribute : first.get(i).keySet()) {
                if (values(elements, i, attribute).stream()
                                .map(MovingFigure::shape)
                                .distinct()
                                .count()
                        > 1) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A value without its numbers; a colour has none. */
    private static String shape(String value) {
        return value.startsWith("#")
                ? value
                : NUMBER.matcher(value).replaceAll("#").replace(" ", "");
    }

    /** All pictures on top of each other; only the one whose turn it is can be seen. */
    private static MovingFigure fading(List<String> pictures) {
        int head = body(pictures.get(0));
        var stacked = new StringBuilder(pictures.get(0).substring(0, head));
        var tracks = new ArrayList<Track>();
        for (int i = 0; i < pictures.size(); i++) {
            int shown = i;
            // Counted with the root, so the group is at this place without it.
            int group = elements(stacked.toString()).size() - 1;
            tracks.add(new Track(
                    List.of(new Spot(group, "opacity")),
                    IntStream.range(0, pictures.size())
                            .mapToObj(turn -> turn == shown ? "1" : "0")
                            .toList()));
            String picture = pictures.get(i);
            stacked.append("<g opacity=\"").append(i == 0 ? 1 : 0).append("\">");
            stacked.append(picture, body(picture), picture.lastIndexOf(END)).append("</g>");
        }
        return new MovingFigure(stacked.append(END).toString(), tracks);
    }

    /** Where the drawing begins, after the words about it. */
    private static int body(String picture) {
        int words = picture.indexOf("</desc>");
        return words < 0 ? picture.indexOf('>') + 1 : words + "</desc>".length();
    }

    /**
     * The picture that moves by itself, there and back without end, straight between the steps.
     *
     * @param seconds of the way there, above 0
     */
    public String animated(double seconds) {
        if (!(seconds > 0 && seconds <= 600)) {
            throw new IllegalArgumentException("a way must take above 0 and at most 600 s, was " + seconds);
        }
        var moves = new HashMap<Integer, String>();
        for (Track track : tracks) {
            for (Spot spot : track.spots()) {
                moves.merge(spot.element(), animate(spot.attribute(), track.values(), seconds), String::concat);
            }
        }
        var picture = new StringBuilder();
        Matcher element = ELEMENT.matcher(start);
        int last = 0;
        for (int i = -1; element.find(); i++) {
            picture.append(start, last, element.start()).append(moved(element, moves.getOrDefault(i, "")));
            last = element.end();
        }
        return picture.append(start.substring(last)).toString();
    }

    private static String moved(Matcher element, String moves) {
        String tag = element.group();
        if (moves.isEmpty() || !tag.endsWith("/>")) {
            return tag + moves;
        }
        return tag.substring(0, tag.length() - 2) + ">" + moves + "</" + element.group(1) + ">";
    }

    private static String animate(String attribute, List<String> there, double seconds) {
        var values = new ArrayList<>(there);
        for (int i = there.size() - 2; i >= 0; i--) {
            values.add(there.get(i));
        }
        return String.format(
                Locale.ROOT,
                "<animate attributeName=\"%s\" dur=\"%.2fs\" repeatCount=\"indefinite\" values=\"%s\"/>",
                attribute,
                2 * seconds,
                String.join(";", values));
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
}
