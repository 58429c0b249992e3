package slipway.exchange.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.Taken;
import slipway.care.facts.Treatment;
import slipway.exchange.ExchangeData;
import slipway.reasoning.measures.Numbers;
import slipway.reasoning.response.checkin.CheckIn;

/**
 * A caseload for research: no names, no words that a person wrote, ages in bands, dates of each person moved by a number of
 * days that only the key gives. This is not anonymous: who knows a course can find it again. What may be handed out is for
 * the clinic and its law to say.
 */
public final class CaseloadTables {
    /** Name of the data dictionary among the files. */
    public static final String DICTIONARY = "data-dictionary.csv";

    private static final int BAND_YEARS = 5;

    /** From here on ages are one band, as old people are few. */
    private static final int OLDEST_BAND = 90;

    private final Pseudonyms pseudonyms;
    private final List<EpisodeFacts> episodes;

    private CaseloadTables(Pseudonyms pseudonyms, List<EpisodeFacts> episodes) {
        this.pseudonyms = pseudonyms;
        this.episodes = episodes;
    }

    /**
     * The tables by name of the file, the data dictionary among them. People stand in the order of their pseudonyms.
     *
     * @param key secret, at least 16 bytes; the same key gives the same pseudonyms and shifts
     */
    public static Map<String, String> of(List<EpisodeFacts> episodes, byte[] key) {
        var pseudonyms = new Pseudonyms(key);
        List<EpisodeFacts> sorted = episodes.stream()
                .sorted(Comparator.comparing(each -> pseudonyms.name(each.file().id())))
                .toList();
        return new CaseloadTables(pseudonyms, sorted).files();
    }

    private Map<String, String> files() {
        var files = new LinkedHashMap<String, String>();
        files.put(
                "episodes.csv",
                table(
                        "person,ageBand,sex,side,firstDay,durationWeeks,visits,reports",
                        facts -> List.of(episode(facts))));
        files.put("visits.csv", table("person,number,day,timedMinutes,tries", this::visits));
        files.put("scores.csv", table("person,measure,day,score", this::scores));
        files.put(
                "reports.csv",
                table("person,exercise,day,before,worst,repetitions,settleMinutes,nextMorning", this::reports));
        files.put(DICTIONARY, ExchangeData.text(DICTIONARY));
        return files;
    }

    private String table(String head, Function<EpisodeFacts, List<List<String>>> rows) {
        var all = new ArrayList<List<String>>();
        episodes.forEach(facts -> all.addAll(rows.apply(facts)));
        return Csv.of(List.of(head.split(",")), all);
    }

    private String name(EpisodeFacts facts) {
        return pseudonyms.name(facts.file().id());
    }

    private List<String> episode(EpisodeFacts facts) {
        CaseFile file = facts.file();
        return List.of(
                name(facts),
                band(file.patient().ageYears()),
                file.patient().sex().orElse(""),
                CareData.word(file.episode().side()),
                facts.start().map(day -> shifted(facts, day)).orElse(""),
                text(file.episode().history().durationWeeks()),
                Integer.toString(facts.visits().size()),
                Integer.toString(facts.checkIns().size()));
    }

    static String band(double years) {
        int low = (int) years / BAND_YEARS * BAND_YEARS;
        return low >= OLDEST_BAND ? OLDEST_BAND + "+" : "%d-%d".formatted(low, low + BAND_YEARS - 1);
    }

    private List<List<String>> visits(EpisodeFacts facts) {
        return facts.visits().stream()
                .map((Treatment visit) -> List.of(
                        name(facts),
                        Integer.toString(visit.number()),
                        shifted(facts, visit.day()),
                        visit.services().isEmpty() ? "" : Integer.toString(visit.timedMinutes()),
                        Integer.toString(visit.tries().size())))
                .toList();
    }

    private List<List<String>> scores(EpisodeFacts facts) {
        return facts.scores().stream()
                .map((Taken taken) -> List.of(
                        name(facts),
                        taken.measure().id(),
                        shifted(facts, taken.day()),
                        taken.score().map(Numbers::text).orElse("")))
                .toList();
    }

    private List<List<String>> reports(EpisodeFacts facts) {
        return facts.checkIns().stream().map(report -> report(facts, report)).toList();
    }

    private List<String> report(EpisodeFacts facts, CheckIn report) {
        return List.of(
                name(facts),
                report.exercise(),
                shifted(facts, report.startedAt().toLocalDate()),
                text(report.before()),
                text(report.worst()),
                text(report.repetitionsDone()),
                report.settleMinutes().isPresent()
                                && Double.isInfinite(report.settleMinutes().getAsDouble())
                        ? "not settled"
                        : text(report.settleMinutes()),
                report.nextMorning().map(morning -> morning.key()).orElse(""));
    }

    private String shifted(EpisodeFacts facts, LocalDate day) {
        return pseudonyms.shifted(facts.file().id(), day).toString();
    }

    private static String text(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : "";
    }

    private static String text(OptionalDouble value) {
        return Optional.of(value)
                .filter(OptionalDouble::isPresent)
                .map(known -> Numbers.text(known.getAsDouble()))
                .orElse("");
    }
}
