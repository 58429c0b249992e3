package slipway.documents.guide;

import java.util.List;
import slipway.documents.sheet.DoseLines;
import slipway.documents.sheet.HomeSheet;
import slipway.exercises.unload.PatientRules;

/** What to do when it is done, and when not to go on. */
final class RulesScreen {
    private final HomeSheet sheet;
    private final GuideTexts texts;

    RulesScreen(HomeSheet sheet, GuideTexts texts) {
        this.sheet = sheet;
        this.texts = texts;
    }

    void addDone(Html html, List<GuideExercise> exercises) {
        html.open("section", "id", "done", "data-screen", "done", "aria-labelledby", "done-title");
        html.line("h2", texts.own().get("done.heading"), "id", "done-title", "tabindex", "-1");
        html.line("p", rule(2));
        html.open("div", "class", "box").line("h3", texts.own().get("done.long"));
        html.line("p", rule(5)).close();
        html.line("h3", texts.own().get("done.again"));
        html.open("ul");
        exercises.forEach(exercise -> {
            List<String> dose = DoseLines.of(exercise.usualDose(), texts.sheet());
            html.line("li", exercise.text().name() + ": " + dose.get(dose.size() - 1) + ".");
        });
        html.close();
        html.line("p", texts.own().get("done.more"));
        html.line("p", texts.own().get("done.paper"));
        html.open("p")
                .line("a", texts.own().get("exercise.all"), "href", "#home")
                .close();
        html.close();
    }

    void addStop(Html html, List<GuideExercise> exercises) {
        HomeSheet.Head head = sheet.head();
        html.open("section", "id", "stop", "data-screen", "stop", "aria-labelledby", "stop-title");
        html.line("h2", texts.own().get("bar.stop"), "id", "stop-title", "tabindex", "-1");
        html.open("div", "class", "box warn");
        html.line("p", rule(4), "class", "much").line("p", rule(3));
        for (int i = 0; i < exercises.size(); i++) {
            html.open("div", "data-of", "exercise-" + (i + 1));
            html.line("h3", exercises.get(i).text().name());
            html.list("ul", own(exercises.get(i)));
            html.close();
        }
        html.close();
        html.open("div", "class", "box alarm").line("h3", texts.sheet().get("emergency.heading"));
        html.line("p", texts.sheet().get("emergency.intro", head.emergencyNumber()));
        html.list("ul", texts.sheet().list("emergency.sign"));
        Calls.add(html, head.emergencyNumber(), texts, "call alarm");
        html.close();
        html.open("div", "class", "box").line("h3", texts.own().get("stop.call"));
        html.line("p", texts.sheet().get("call.intro", head.clinic().phone()));
        html.list("ul", texts.sheet().list("call.sign"));
        html.line("p", texts.sheet().get("call.closed"));
        Calls.add(html, head.clinic().phone(), texts, "call");
        html.close();
        html.line("p", texts.own().get("about.diagnosis"));
        html.open("p", "class", "live")
                .line("a", texts.own().get("exercise.all"), "href", "#home")
                .close();
        html.close();
    }

    /** Without the rule for every exercise, which stands above them already. */
    private List<String> own(GuideExercise exercise) {
        String always = PatientRules.bundled().stop().in(sheet.language());
        return exercise.text().feelings().stopIf().stream()
                .filter(line -> !line.equals(always))
                .toList();
    }

    private String rule(int number) {
        HomeSheet.Rules rules = sheet.rules();
        return texts.sheet().get("rules.line." + number, rules.settleMinutes(), rules.restMinutes());
    }
}
