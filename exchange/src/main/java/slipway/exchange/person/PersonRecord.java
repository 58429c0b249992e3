package slipway.exchange.person;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.papers.Paper;
import slipway.care.record.person.Person;
import slipway.care.record.remind.Consent;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;

/**
 * What is kept of a person, by kind.
 *
 * @param episodes each with its lists by kind, the episode itself first
 * @param reminders what the person said last to reminders, if ever asked; what they said before is in the trail
 * @param trail who read and wrote, oldest first
 * @param staff names by id
 */
record PersonRecord(
        Person person,
        List<Map<String, Object>> episodes,
        List<Consent> reminders,
        List<TrailEntry> trail,
        Map<String, String> staff) {
    private static final int PAGE = 500;

    static PersonRecord of(Records records, Person person, List<Chart> charts, Act act) {
        return new PersonRecord(
                person,
                charts.stream().map(PersonRecord::episode).toList(),
                records.reminders().consent(person.id(), act).stream().toList(),
                trail(records, Chain.ofPerson(person.id())),
                records.staff().list(person.clinicId()).stream()
                        .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName)));
    }

    /** As {@code record.json} has it. */
    Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("person", person);
        tree.put("episodes", episodes);
        tree.put("reminders", reminders);
        tree.put("trail", trail);
        tree.put("staff", staff);
        return tree;
    }

    private static List<TrailEntry> trail(Records records, Chain chain) {
        var all = new ArrayList<TrailEntry>();
        long before = 0;
        for (boolean more = true; more; ) {
            List<TrailEntry> page = records.trail().list(chain, before, PAGE);
            all.addAll(page);
            more = page.size() == PAGE;
            before = page.isEmpty() ? 0 : page.get(page.size() - 1).seq();
        }
        Collections.reverse(all);
        return all;
    }

    private static Map<String, Object> episode(Chart chart) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("episode", chart.episode());
        all.put(
                "sections",
                Arrays.stream(Section.values())
                        .collect(Collectors.toMap(
                                Section::key, section -> versions(chart, section), (a, b) -> a, LinkedHashMap::new)));
        all.put("visits", chart.visits().list());
        all.put("tries", chart.visits().tries());
        all.put(
                "results",
                Arrays.stream(ResultKind.values())
                        .flatMap(kind -> chart.results().list(kind).stream())
                        .toList());
        all.put("plans", chart.plans().list());
        all.put("decisions", chart.decisions().list());
        all.put("intakes", chart.intakes().list());
        all.put("checkIns", chart.checkIns().list());
        all.put("alerts", chart.checkIns().alerts());
        all.put("measures", chart.measures().list());
        all.put("goals", chart.goals().list());
        all.put("papers", chart.papers().list());
        all.put("paperTexts", texts(chart));
        all.put("documents", chart.documents().list());
        return all;
    }

    /** Every text that a paper has had. */
    private static List<Map<String, Object>> texts(Chart chart) {
        var texts = new ArrayList<Map<String, Object>>();
        for (Paper paper : chart.papers().list()) {
            for (Paper.Text text : chart.papers().texts(paper.id())) {
                var row = new LinkedHashMap<String, Object>();
                row.put("id", paper.id() + "/" + text.version());
                row.put("at", text.at());
                row.put("by", text.by());
                row.put("text", text.text());
                texts.add(row);
            }
        }
        return texts;
    }

    private static List<SectionRecord> versions(Chart chart, Section section) {
        return LongStream.rangeClosed(1, chart.section(section).version())
                .mapToObj(version -> chart.earlier(section, version))
                .flatMap(Optional::stream)
                .toList();
    }
}
