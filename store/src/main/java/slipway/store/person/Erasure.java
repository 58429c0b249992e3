package slipway.store.person;

import java.time.Instant;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.tables.AccessLinkTable;
import slipway.store.tables.AddendumTable;
import slipway.store.tables.AlertTable;
import slipway.store.tables.CheckInTable;
import slipway.store.tables.ComputedResultTable;
import slipway.store.tables.DecisionTable;
import slipway.store.tables.DocumentBytesTable;
import slipway.store.tables.DocumentTable;
import slipway.store.tables.DraftTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.GlassGrantTable;
import slipway.store.tables.GoalTable;
import slipway.store.tables.IntakeTable;
import slipway.store.tables.MeasureEntryTable;
import slipway.store.tables.PaperTable;
import slipway.store.tables.PersonTable;
import slipway.store.tables.PlanTable;
import slipway.store.tables.ReminderConsentTable;
import slipway.store.tables.ReminderStopTable;
import slipway.store.tables.SectionVersionTable;
import slipway.store.tables.SupervisedTryTable;
import slipway.store.tables.TrailPayloadTable;
import slipway.store.trail.Note;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Empties everything that names or describes a person; rows, ids and times stay. */
final class Erasure {
    /** Longest reason. */
    static final int MAX_REASON = 200;

    private static final String ERASED = "(erased)";

    private Erasure() {}

    /** The reason is part of the entry itself, not of a payload: payloads are what an erasure removes. */
    static Note note(String personId, String reason) {
        return Note.plain(Action.ERASE, reason, personId);
    }

    static void of(DSLContext tx, String personId, Instant at) {
        Select<Record1<String>> episodes =
                tx.select(EpisodeTable.ID).from(EpisodeTable.EPISODE).where(EpisodeTable.PERSON_ID.eq(personId));
        content(tx, episodes);
        papers(tx, episodes);
        followUp(tx, episodes, at);
        tx.update(EpisodeTable.EPISODE)
                .set(EpisodeTable.STATE, EpisodeState.CLOSED)
                .set(EpisodeTable.CLOSED_AT, at)
                .where(EpisodeTable.PERSON_ID.eq(personId), EpisodeTable.CLOSED_AT.isNull())
                .execute();
        person(tx, personId, at);
        tx.deleteFrom(TrailPayloadTable.TRAIL_PAYLOAD)
                .where(TrailPayloadTable.CHAIN_KIND.eq(Chain.Kind.PERSON), TrailPayloadTable.CHAIN_ID.eq(personId))
                .execute();
    }

    private static void person(DSLContext tx, String personId, Instant at) {
        PersonRows.removeNames(tx, personId);
        tx.update(PersonTable.PERSON)
                .set(PersonTable.NAME, ERASED)
                .setNull(PersonTable.BIRTH_DATE)
                .setNull(PersonTable.AGE_YEARS)
                .setNull(PersonTable.AGE_TOLD_ON)
                .setNull(PersonTable.SEX)
                .setNull(PersonTable.STATURE_CM)
                .setNull(PersonTable.MASS_KG)
                .setNull(PersonTable.PHONE)
                .setNull(PersonTable.EMAIL)
                .set(PersonTable.ERASED_AT, at)
                .where(PersonTable.ID.eq(personId))
                .execute();
        tx.update(GlassGrantTable.GLASS_GRANT)
                .set(GlassGrantTable.REASON, ERASED)
                .where(GlassGrantTable.PERSON_ID.eq(personId))
                .execute();
        // The digest of an address can be guessed at; the links in old reminders have nothing left to stop.
        tx.deleteFrom(ReminderConsentTable.REMINDER_CONSENT)
                .where(ReminderConsentTable.PERSON_ID.eq(personId))
                .execute();
        tx.deleteFrom(ReminderStopTable.REMINDER_STOP)
                .where(ReminderStopTable.PERSON_ID.eq(personId))
                .execute();
    }

    private static void content(DSLContext tx, Select<Record1<String>> episodes) {
        tx.update(SectionVersionTable.SECTION_VERSION)
                .set(SectionVersionTable.CONTENT, empty())
                .where(SectionVersionTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(SupervisedTryTable.SUPERVISED_TRY)
                .setNull(SupervisedTryTable.REMARK)
                .where(SupervisedTryTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(ComputedResultTable.COMPUTED_RESULT)
                .set(ComputedResultTable.BODY, empty())
                .where(ComputedResultTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(PlanTable.PLAN)
                .set(PlanTable.INPUTS, ERASED)
                .set(PlanTable.BODY, empty())
                .set(PlanTable.CEILINGS, empty())
                .where(PlanTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(DecisionTable.DECISION)
                .set(DecisionTable.PROPOSED, ERASED)
                .set(DecisionTable.CHOSEN, ERASED)
                .set(DecisionTable.REASON, ERASED)
                .where(DecisionTable.EPISODE_ID.in(episodes))
                .execute();
    }

    private static void papers(DSLContext tx, Select<Record1<String>> episodes) {
        tx.deleteFrom(DocumentBytesTable.DOCUMENT_BYTES)
                .where(DocumentBytesTable.DOCUMENT_ID.in(tx.select(DocumentTable.ID)
                        .from(DocumentTable.DOCUMENT)
                        .where(DocumentTable.EPISODE_ID.in(episodes))))
                .execute();
        tx.update(AddendumTable.ADDENDUM)
                .set(AddendumTable.BODY, ERASED)
                .where(AddendumTable.PAPER_ID.in(
                        tx.select(PaperTable.ID).from(PaperTable.PAPER).where(PaperTable.EPISODE_ID.in(episodes))))
                .execute();
        tx.update(PaperTable.PAPER)
                .set(PaperTable.BODY, ERASED)
                .where(PaperTable.EPISODE_ID.in(episodes))
                .execute();
    }

    private static void followUp(DSLContext tx, Select<Record1<String>> episodes, Instant at) {
        tx.update(CheckInTable.CHECK_IN)
                .set(CheckInTable.BODY, empty())
                .where(CheckInTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(IntakeTable.INTAKE)
                .set(IntakeTable.ANSWERS, empty())
                .where(IntakeTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(AlertTable.ALERT)
                .set(AlertTable.WORDS, ERASED)
                .set(AlertTable.ACKNOWLEDGED_WHAT, ERASED)
                .where(AlertTable.EPISODE_ID.in(episodes))
                .execute();
        // Nobody can look into them any more.
        tx.update(AlertTable.ALERT)
                .set(AlertTable.ACKNOWLEDGED_BY, "erasure")
                .set(AlertTable.ACKNOWLEDGED_AT, at)
                .where(AlertTable.EPISODE_ID.in(episodes), AlertTable.ACKNOWLEDGED_AT.isNull())
                .execute();
        tx.update(MeasureEntryTable.MEASURE_ENTRY)
                .set(MeasureEntryTable.BODY, empty())
                .where(MeasureEntryTable.EPISODE_ID.in(episodes))
                .execute();
        tx.deleteFrom(DraftTable.DRAFT)
                .where(DraftTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(GoalTable.GOAL)
                .set(GoalTable.WORDS, ERASED)
                .set(GoalTable.TARGET, empty())
                .where(GoalTable.EPISODE_ID.in(episodes))
                .execute();
        tx.update(AccessLinkTable.ACCESS_LINK)
                .set(AccessLinkTable.REVOKED_AT, at)
                .where(AccessLinkTable.EPISODE_ID.in(episodes), AccessLinkTable.REVOKED_AT.isNull())
                .execute();
    }

    private static ObjectNode empty() {
        return JsonMapper.shared().createObjectNode();
    }
}
