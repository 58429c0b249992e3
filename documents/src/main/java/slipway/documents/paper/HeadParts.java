package slipway.documents.paper;

import java.util.Optional;
import slipway.care.CareData;
import slipway.care.casefile.History;
import slipway.care.facts.Frame;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.measures.Numbers;

/** Who it is about, and what the person told. */
final class HeadParts {
    private final Writing out;
    private final PaperInput in;

    HeadParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    /** Age, side, duration, who sent the person. */
    void person() {
        out.part("person");
        var file = in.facts().file();
        History history = file.episode().history();
        out.say(
                "age",
                out.words()
                        .get(
                                "person.age",
                                Numbers.text(file.patient().ageYears()),
                                CareData.word(file.episode().side())),
                "case/person/ageYears",
                "case/side");
        out.told(
                "duration",
                "label.duration",
                history.durationWeeks().isPresent()
                        ? Optional.of(Numbers.text(history.durationWeeks().getAsDouble()))
                        : Optional.empty(),
                "case/history/durationWeeks");
        Frame frame = in.facts().frame();
        out.told("referrer", "label.referrer", frame.referrer(), "episode/referrer");
        if (frame.orderedOn().isPresent()) {
            out.say(
                    "ordered",
                    out.words().get("person.ordered", frame.orderedOn().get()),
                    "episode/orderedOn");
        }
    }

    /** Codes, with what is wrong with them; without a licensed description. */
    void diagnoses() {
        out.part("diagnoses");
        var codes = in.facts().frame().diagnoses();
        if (codes.isEmpty()) {
            out.blank("none", "label.diagnosis", "episode/diagnoses");
        }
        for (String code : codes) {
            String words = in.codes().find(code, in.day()).map(CodeEntry::words).orElse("");
            out.say(code, words.isEmpty() ? code : code + ": " + words, "episode/diagnoses");
        }
        out.say("judgement", out.words().get("diagnoses.judgement"), "text");
    }

    /** What the person told at the start. */
    void history() {
        out.part("history");
        for (String key :
                new String[] {"onset", "aggravating", "easing", "dayPattern", "work", "pastCare", "drugs", "imaging"}) {
            out.told(
                    key, "history." + key, in.facts().file().episode().history().find(key), "case/history/" + key);
        }
        out.told("goals", "history.goals", in.facts().file().episode().history().find("goals"), "case/history/goals");
    }
}
