package slipway.care.casefile;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import slipway.care.CareData;
import slipway.mechanics.nerve.Site;

/** The names of places that a case file may suspect: those of the nerve model and some that it does not know. */
final class Places {
    private static final Set<String> NAMES = load();

    private Places() {}

    static Set<String> names() {
        return NAMES;
    }

    private static Set<String> load() {
        var names = new LinkedHashSet<>(Site.all().keySet());
        CareData.table("other-places.csv").forEach(row -> names.add(row.get("place")));
        return Collections.unmodifiableSet(names);
    }
}
