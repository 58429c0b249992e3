package slipway.care.record.chart;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import slipway.care.record.Saving;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.follow.CheckIns;
import slipway.care.record.follow.Goals;
import slipway.care.record.follow.Measures;
import slipway.care.record.intake.Intakes;
import slipway.care.record.papers.Documents;
import slipway.care.record.papers.Papers;
import slipway.care.record.person.Person;
import slipway.mechanics.body.Side;
import tools.jackson.databind.node.ObjectNode;

/**
 * The open chart of one episode, for one request of one user: what is written carries the name and the time that it was
 * opened with. Every method reads what is there now.
 */
public interface Chart {
    Person person();

    Episode episode();

    /** All sections in their order, unwritten ones too. */
    Map<Section, SectionRecord> sections();

    SectionRecord section(Section section);

    /** A section as it was in an earlier version, to show an old result as it was. */
    Optional<SectionRecord> earlier(Section section, long version);

    /**
     * Writes a section as a whole. What stands in it is not judged here: {@link
     * slipway.care.record.content.SectionCheck} does that.
     *
     * @param version the one that was read; 0 for one that nobody has written
     */
    Saving<SectionRecord> save(Section section, long version, ObjectNode content);

    /**
     * Writes several sections in one transaction: all of them, or none if one of the versions is stale.
     *
     * @param versions of <em>all</em> sections that were read, also of those that stay
     * @return all sections as they stand
     */
    Saving<Map<Section, SectionRecord>> saveAll(Map<Section, Long> versions, Map<Section, ObjectNode> contents);

    /**
     * Writes what comes from another system, all of it in one transaction, or nothing if anything that it was laid beside
     * has changed since.
     *
     * @return the person as they stand
     */
    Saving<Person> takeOver(TakeOver what);

    /** Changes side, therapist or state of the episode. */
    Saving<Episode> change(long version, Side side, String therapistId, EpisodeState state);

    Visits visits();

    Results results();

    Plans plans();

    Decisions decisions();

    Documents documents();

    Papers papers();

    /** What the person told before the first visit. */
    Intakes intakes();

    CheckIns checkIns();

    Measures measures();

    Goals goals();

    /** When the chart was opened; the time of what is written through it. */
    Instant openedAt();
}
