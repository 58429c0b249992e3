package slipway.mechanics.nerve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipway.mechanics.evidence.BundledTable;

/**
 * A named place along a tract ({@code sites.csv} for the back of the leg, {@code sites-front.csv} for the front).
 *
 * @param name as in the file, for example {@code deep gluteal space}
 * @param tract the tract that it is read on unless another is asked for
 * @param segment the stretch of pathway that it lies in
 * @param position fraction of the segment from its proximal end; below 0 or above 1 it lies in the next segment
 * @param plusMinus uncertainty of the position (standard deviation), same fraction
 * @param mark {@code assumption} or where the position comes from
 * @param locateNames names of the same place when locating a lesion; may be empty
 */
public record Site(
        String name,
        Tract tract,
        Segment segment,
        double position,
        double plusMinus,
        String mark,
        List<String> locateNames) {
    /** Groups of tracts in the file: a place that they share lies on every tract of the sciatic nerve. */
    private static final Set<String> SHARED = Set.of("all leg tracts", "sciatic", "femoral");

    private static final Map<Pathway, Map<String, Site>> BY_PATHWAY =
            Map.of(Pathway.BACK, load(Pathway.BACK), Pathway.FRONT, load(Pathway.FRONT));
    private static final Set<String> ON_SHARED_WAY = sharedNames();

    public Site {
        if (!(position >= -0.5 && position <= 1.5) || !(plusMinus >= 0 && plusMinus <= 0.5)) {
            throw new IllegalArgumentException(
                    "site %s: position must be within -0.5 and 1.5 and its uncertainty within 0 and 0.5, was %s, %s"
                            .formatted(name, position, plusMinus));
        }
        locateNames = List.copyOf(locateNames);
    }

    /** Whether a tract passes this place. */
    public boolean liesOn(Tract other) {
        return other == tract || (other.pathway() == tract.pathway() && ON_SHARED_WAY.contains(name));
    }

    /** This site moved by its own uncertainty, distally for +1 and proximally for −1. */
    public Site moved(int sign) {
        return new Site(name, tract, segment, position + sign * plusMinus, plusMinus, mark, locateNames);
    }

    /** The site of this name at the back of the leg. */
    public static Optional<Site> find(String name) {
        return Optional.ofNullable(all().get(name));
    }

    /** The site of this name on any pathway. */
    public static Optional<Site> anywhere(String name) {
        return Arrays.stream(Pathway.values())
                .flatMap(pathway -> Optional.ofNullable(of(pathway).get(name)).stream())
                .findFirst();
    }

    /** The names of all sites on all pathways, the back of the leg first. */
    public static List<String> namesAnywhere() {
        return Arrays.stream(Pathway.values())
                .flatMap(pathway -> of(pathway).keySet().stream())
                .toList();
    }

    /**
     * The site of this name at the back of the leg.
     *
     * @throws IllegalArgumentException naming the known sites
     */
    public static Site get(String name) {
        return find(name)
                .orElseThrow(() -> new IllegalArgumentException(
                        "unknown site \"%s\" (known: %s)".formatted(name, String.join(", ", all().keySet()))));
    }

    /** The sites of the back of the leg by name, from proximal to distal as in the file. */
    public static Map<String, Site> all() {
        return of(Pathway.BACK);
    }

    /** The sites of a pathway by name, from proximal to distal as in the file. */
    public static Map<String, Site> of(Pathway pathway) {
        return BY_PATHWAY.getOrDefault(pathway, Map.of());
    }

    private static Map<String, Site> load(Pathway pathway) {
        var all = new LinkedHashMap<String, Site>();
        for (var row : BundledTable.read(pathway.siteTable())) {
            String name = row.get("site");
            String segment = row.get("segment");
            all.put(
                    name,
                    new Site(
                            name,
                            tractOf(name, row.get("tract")),
                            Segment.find(segment)
                                    .orElseThrow(() ->
                                            new IllegalStateException(pathway.siteTable() + ": segment " + segment)),
                            Double.parseDouble(row.get("position")),
                            Double.parseDouble(row.get("plusMinus")),
                            row.get("mark"),
                            namesOf(row.get("locate"))));
        }
        return Collections.unmodifiableMap(all);
    }

    /** The file names groups of tracts for places that several share; any member passes through such a place. */
    private static Tract tractOf(String site, String text) {
        if (site.startsWith("superficial fibular")) {
            return Tract.SCIATIC_SUPERFICIAL_FIBULAR;
        }
        if (text.equals("femoral")) {
            return Tract.FEMORAL_SAPHENOUS;
        }
        return SHARED.contains(text)
                ? Tract.SCIATIC_TIBIAL
                : Tract.find(text).orElseThrow(() -> new IllegalStateException("table of sites: tract " + text));
    }

    private static Set<String> sharedNames() {
        return Arrays.stream(Pathway.values())
                .flatMap(pathway -> BundledTable.read(pathway.siteTable()).stream())
                .filter(row -> SHARED.contains(row.get("tract")))
                .map(row -> row.get("site"))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static List<String> namesOf(String text) {
        return text.isBlank() ? List.of() : new ArrayList<>(Arrays.asList(text.split("\\s*;\\s*")));
    }
}
