package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One row of {@code body-shape.csv}: how thick a part is at a place along it. Fractions of stature. */
record Section(double at, double depth, double width, double shift) {
    static final List<Section> THIGH = of("thigh");
    static final List<Section> SHANK = of("shank");
    static final List<Section> UPPER_ARM = of("upper arm");
    static final List<Section> FOREARM = of("forearm");
    static final List<Section> TRUNK = of("trunk");
    static final List<Section> NECK = of("neck");

    private static List<Section> of(String part) {
        var sections = new ArrayList<Section>();
        for (var row : Table.read("body-shape.csv")) {
            if (row.get("part").equals(part)) {
                double[] n = Arrays.stream(new String[] {"at", "depth", "width", "shift"})
                        .mapToDouble(column -> Double.parseDouble(row.get(column)))
                        .toArray();
                sections.add(new Section(n[0], n[1], n[2], n[3]));
            }
        }
        return List.copyOf(sections);
    }

    /** The stretch of a part between two places, for clothes: somewhat thicker, ending exactly at both. */
    static List<Section> between(List<Section> part, double from, double to, double thicker) {
        var cut = new ArrayList<Section>();
        cut.add(at(part, from).thicker(thicker));
        part.stream()
                .filter(s -> s.at > from + 0.02 && s.at < to - 0.02)
                .map(s -> s.thicker(thicker))
                .forEach(cut::add);
        cut.add(at(part, to).thicker(thicker));
        return List.copyOf(cut);
    }

    private static Section at(List<Section> part, double at) {
        Section before = part.get(0);
        for (Section next : part) {
            if (next.at >= at) {
                double u = next.at == before.at ? 0 : (at - before.at) / (next.at - before.at);
                return new Section(
                        at,
                        before.depth + u * (next.depth - before.depth),
                        before.width + u * (next.width - before.width),
                        before.shift + u * (next.shift - before.shift));
            }
            before = next;
        }
        return before;
    }

    private Section thicker(double by) {
        return new Section(at, depth + by, width + by, shift);
    }
}
