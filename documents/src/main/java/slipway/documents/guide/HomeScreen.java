package slipway.documents.guide;

import java.time.format.DateTimeFormatter;
import java.util.List;
import slipway.documents.sheet.DoseLines;
import slipway.documents.sheet.HomeSheet;

/** The first screen, and all others below it: whom the guide is for, what to change in the day, the exercises. */
final class HomeScreen {
    private final HomeSheet sheet;
    private final List<GuideExercise> exercises;
    private final GuideTexts texts;

    HomeScreen(HomeSheet sheet, List<GuideExercise> exercises, GuideTexts texts) {
        this.sheet = sheet;
        this.exercises = exercises;
        this.texts = texts;
    }

    void addTo(Html html) {
        header(html);
        html.open("main", "id", "main");
        home(html);
        for (int i = 0; i < exercises.size(); i++) {
            new ExerciseScreen(exercises.get(i), texts, i, exercises.size()).addTo(html);
        }
        var rules = new RulesScreen(sheet, texts);
        rules.addDone(html, exercises);
        rules.addStop(html, exercises);
        html.close();
        bar(html);
    }

    private void header(Html html) {
        HomeSheet.Head head = sheet.head();
        html.open("header");
        String mark = head.mark().isEmpty() ? "" : ". " + head.mark();
        html.line("p", texts.sheet().get("head.eyebrow") + mark, "class", "eyebrow");
        html.line("h1", head.personName());
        html.line(
                "p",
                texts.sheet()
                        .get("head.for", texts.sheet().get("part." + head.part().key())),
                "class",
                "for");
        html.close();
    }

    private void home(Html html) {
        html.open("section", "id", "home", "data-screen", "home", "aria-labelledby", "home-title");
        html.line("p", texts.own().get("no-script"), "class", "note static");
        if (!sheet.unload().isEmpty()) {
            html.open("details", "class", "box");
            html.line("summary", texts.sheet().get("unload.heading"));
            html.list("ul", sheet.unload());
            html.close();
        }
        html.line("h2", texts.own().get("home.heading"), "id", "home-title", "tabindex", "-1");
        html.line("p", texts.own().get("home.intro"));
        html.open("ol", "class", "cards");
        for (int i = 0; i < exercises.size(); i++) {
            card(html, exercises.get(i), i);
        }
        html.close();
        options(html);
        about(html);
        html.close();
    }

    private void card(Html html, GuideExercise exercise, int index) {
        html.open("li").open("a", "href", "#exercise-" + (index + 1), "class", "card");
        html.line("span", Integer.toString(index + 1), "class", "number", "aria-hidden", "true");
        html.open("span", "class", "what").line("span", exercise.text().name(), "class", "name");
        List<String> dose = DoseLines.of(exercise.usualDose(), texts.sheet());
        html.line("span", dose.get(0) + ". " + dose.get(dose.size() - 1) + ".", "class", "how");
        html.close().close().close();
    }

    /** Without script there is nothing to choose, so the style hides this. */
    private void options(Html html) {
        html.open("div", "class", "live options", "role", "group", "aria-labelledby", "options-title");
        html.line("h2", texts.own().get("options.heading"), "id", "options-title", "class", "small");
        for (String option : List.of("easier", "aloud", "still")) {
            html.open("button", "type", "button", "data-option", option, "aria-pressed", "false");
            html.line("span", texts.own().get("options." + option), "class", "name");
            html.line("span", texts.own().get("options." + option + ".how"), "class", "how");
            html.close();
        }
        html.close();
    }

    private void about(Html html) {
        HomeSheet.Head head = sheet.head();
        String day = DateTimeFormatter.ofPattern(
                        texts.sheet().get("date"), sheet.language().locale())
                .format(head.given());
        html.open("div", "class", "about");
        html.line("h2", texts.sheet().get("cautions.heading"), "class", "small");
        html.line("p", texts.own().get("about.diagnosis"));
        html.line("p", texts.own().get("about.newer"));
        html.line(
                "p",
                "%s: %s. %s: %s. %s: %s. %s: %s."
                        .formatted(
                                texts.sheet().get("head.date"),
                                day,
                                texts.sheet().get("head.version"),
                                head.version(),
                                texts.sheet().get("head.by"),
                                head.clinic().name(),
                                texts.sheet().get("head.phone"),
                                head.clinic().phone()),
                "class",
                "fine");
        html.close();
    }

    /** Always at hand: the one thing to do next, and the rules for stopping. */
    private void bar(Html html) {
        html.open("nav", "class", "bar", "aria-label", texts.own().get("bar.label"));
        html.line("button", texts.own().get("live.begin"), "type", "button", "id", "go", "class", "live go");
        html.line("a", texts.own().get("bar.stop"), "href", "#stop", "class", "stop");
        Calls.add(html, sheet.head().emergencyNumber(), texts, "live call-now");
        html.close();
    }
}
