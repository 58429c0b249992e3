package slipway.reasoning.response.propose;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import slipway.reasoning.response.checkin.CheckIn;

/** Brings a log into its one order: by the time of receipt, then by id. An entry
 * that came more than once counts once, when it came first. */
final class Log {
    private final List<CheckIn> checkIns;

    private final List<Release> releases;

    private final List<DoseSet> sets;

    private Log(List<CheckIn> checkIns, List<Release> releases, List<DoseSet> sets) {
        this.checkIns = checkIns;
        this.releases = releases;
        this.sets = sets;
    }

    /**
     * The log in its order.
     *
     * @throws LogConflictException if an id came with different content
     */
    static Log of(Collection<CheckIn> checkIns, Collection<Release> releases, Collection<DoseSet> sets) {
        var byId = new LinkedHashMap<String, CheckIn>();
        for (CheckIn checkIn : checkIns) {
            CheckIn known = byId.get(checkIn.id());
            if (known != null && !known.sameContent(checkIn)) {
                throw new LogConflictException("check-in " + checkIn.id() + " came twice with different content");
            }
            if (known == null
                    || checkIn.reportedAt()
                            .toInstant()
                            .isBefore(known.reportedAt().toInstant())) {
                byId.put(checkIn.id(), checkIn);
            }
        }
        var sorted = new ArrayList<>(byId.values());
        sorted.sort(Comparator.comparing((CheckIn checkIn) -> instant(checkIn.reportedAt()))
                .thenComparing(CheckIn::id));
        var freed = new ArrayList<>(releases.stream().distinct().toList());
        freed.sort(
                Comparator.comparing((Release release) -> instant(release.at())).thenComparing(Release::id));
        var doses = new ArrayList<>(sets);
        doses.sort(Comparator.comparing((DoseSet set) -> instant(set.at())).thenComparing(DoseSet::id));
        return new Log(List.copyOf(sorted), List.copyOf(freed), List.copyOf(doses));
    }

    private static Instant instant(OffsetDateTime time) {
        return time.toInstant();
    }

    List<CheckIn> checkIns() {
        return checkIns;
    }

    /** Whether a clinician released between two receipts, the second one included. */
    boolean releasedBetween(OffsetDateTime after, OffsetDateTime until) {
        return releases.stream()
                .anyMatch(
                        release -> release.at().isAfter(after) && !release.at().isAfter(until));
    }

    /** What the therapist set between two receipts, the second one included, in its order. */
    List<DoseSet> setBetween(OffsetDateTime after, OffsetDateTime until) {
        return sets.stream()
                .filter(set -> set.at().isAfter(after) && !set.at().isAfter(until))
                .toList();
    }
}
