package slipway.mechanics.nerve;

import java.util.Arrays;
import java.util.List;

/**
 * A system of nerves that is modelled on its own: the cord with the nerves of both legs, at the back or at the front. The two
 * hang on the same conus; what one does to the other through it is left out.
 */
public enum Pathway {
    /** The sciatic nerve and its branches; fitted to published measurements. */
    BACK("geometry.csv", "sites.csv", true),
    /** The femoral nerve, its branch to the quadriceps and the saphenous nerve; stated geometry, no measurement. */
    FRONT("geometry-front.csv", "sites-front.csv", false);

    private final String geometryTable;
    private final String siteTable;
    private final boolean validated;

    Pathway(String geometryTable, String siteTable, boolean validated) {
        this.geometryTable = geometryTable;
        this.siteTable = siteTable;
        this.validated = validated;
    }

    /** Table of lengths, zones and areas. */
    public String geometryTable() {
        return geometryTable;
    }

    /** Table of named places. */
    public String siteTable() {
        return siteTable;
    }

    /** Whether published measurements of nerve motion stand behind it; if not, every result must say so. */
    public boolean validated() {
        return validated;
    }

    /** The tracts that run through it. */
    public List<Tract> tracts() {
        return Arrays.stream(Tract.values())
                .filter(tract -> tract.pathway() == this)
                .toList();
    }
}
