package slipway.store.access;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import slipway.care.record.access.LinkPurpose;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.GlassGrantTable;
import slipway.store.tables.PersonTable;

/** How far an act sees, as a condition on queries. */
public sealed interface Scope {
    /** The program itself. */
    record Everything() implements Scope {}

    /** All of a clinic. */
    record OfClinic(String clinicId) implements Scope {}

    /** Episodes of some therapists, and people for whom the user has broken the glass. */
    record OfTherapists(String clinicId, Set<String> therapistIds, String staffId, Instant at) implements Scope {}

    /** The one episode of an access link. */
    record OfLink(String episodeId, LinkPurpose purpose) implements Scope {}

    /** Nothing. */
    record Nothing() implements Scope {}

    /** What the patient came in for, if it is one. */
    default Optional<LinkPurpose> link() {
        return this instanceof OfLink of ? Optional.of(of.purpose()) : Optional.empty();
    }

    /** Whether new people and episodes may be made in a clinic. */
    default boolean mayAddIn(String clinicId) {
        return this instanceof Everything
                || (this instanceof OfClinic all && all.clinicId().equals(clinicId))
                || (this instanceof OfTherapists some && some.clinicId().equals(clinicId));
    }

    /** Whether nothing of a clinic is hidden. */
    default boolean seesAllOf(String clinicId) {
        return this instanceof Everything
                || (this instanceof OfClinic all && all.clinicId().equals(clinicId));
    }

    /** Which episodes are seen. */
    default Condition episodes() {
        if (this instanceof Everything) {
            return DSL.trueCondition();
        }
        if (this instanceof OfClinic all) {
            return EpisodeTable.CLINIC_ID.eq(all.clinicId());
        }
        if (this instanceof OfTherapists some) {
            return EpisodeTable.CLINIC_ID
                    .eq(some.clinicId())
                    .and(EpisodeTable.THERAPIST_ID.in(some.therapistIds()).or(granted(some, EpisodeTable.PERSON_ID)));
        }
        return this instanceof OfLink link ? EpisodeTable.ID.eq(link.episodeId()) : DSL.falseCondition();
    }

    /** Which people are seen: those of the episodes, and those whom one of the therapists has written down. */
    default Condition people() {
        if (this instanceof Everything) {
            return DSL.trueCondition();
        }
        if (this instanceof OfClinic all) {
            return PersonTable.CLINIC_ID.eq(all.clinicId());
        }
        if (this instanceof OfTherapists some) {
            return PersonTable.CLINIC_ID
                    .eq(some.clinicId())
                    .and(PersonTable.CREATED_BY
                            .in(some.therapistIds())
                            .or(granted(some, PersonTable.ID))
                            .or(DSL.exists(DSL.selectOne()
                                    .from(EpisodeTable.EPISODE)
                                    .where(
                                            EpisodeTable.PERSON_ID.eq(PersonTable.ID),
                                            EpisodeTable.THERAPIST_ID.in(some.therapistIds())))));
        }
        return DSL.falseCondition();
    }

    private static Condition granted(OfTherapists some, org.jooq.Field<String> personId) {
        return DSL.exists(DSL.selectOne()
                .from(GlassGrantTable.GLASS_GRANT)
                .where(
                        GlassGrantTable.STAFF_ID.eq(some.staffId()),
                        GlassGrantTable.PERSON_ID.eq(personId),
                        GlassGrantTable.UNTIL.gt(some.at())));
    }
}
