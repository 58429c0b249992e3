package slipway.app.papers;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import slipway.documents.guide.GuideOfVisit;

/** {@code slipway guide}: the moving guide for the person's phone. */
@Command(
        name = "guide",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes the moving guide for the person's phone: one HTML file (guide-en.html, guide-es.html) that works"
                    + " from the phone's storage without a network. It shows one exercise at a time, keeps the pace of"
                    + " the plan, counts, and has the rules for stopping one tap away. It asks nothing, keeps nothing"
                    + " and sends nothing; it never tells more than the dose, and offers an easier day.",
            "",
            "Try each exercise in the room first. If the screening stops the plan, or no exercise can be given, nothing"
                    + " is written and the exit status is 3."
        })
public final class GuideCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private TakeHome home = new TakeHome();

    @Override
    public Integer call() {
        return home.write(spec.commandLine().getErr(), (visit, language, day) -> {
            String page = GuideOfVisit.html(visit, language, day, TakeHome.FIRST_VERSION);
            return new TakeHome.Made("guide-" + language.code() + ".html", page.getBytes(StandardCharsets.UTF_8));
        });
    }
}
