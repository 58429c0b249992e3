package slipway.care.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

class BenchBodyTest {
    private final BenchBody body =
            BenchBody.of(Person.STANDARD, FittedParameters.bundled().draws(32, FittedParameters.SEED));

    @Test
    @Timeout(60)
    void aKnownAnswerDoesNotWaitForOneThatIsBeingSolved() throws Exception {
        Posture posture = Posture.parse("hip 60");
        PathwayModel.Whole known = body.answer(posture, Tract.SCIATIC_TIBIAL);
        var solving = new Thread(() -> body.answer(Posture.parse("hip 70"), Tract.SCIATIC_TIBIAL));
        // Whoever solves needs the model: it is kept from the thread, so that its answer stays under way.
        synchronized (body.model(Pathway.BACK)) {
            solving.start();
            while (solving.getState() != Thread.State.BLOCKED) {
                Thread.onSpinWait();
            }
            assertThat(CompletableFuture.supplyAsync(() -> body.answer(posture, Tract.SCIATIC_TIBIAL))
                            .get(20, TimeUnit.SECONDS))
                    .isSameAs(known);
        }
        solving.join();
    }

    @Test
    void manyWhoAskTheSameGetOneAnswer() {
        Posture posture = Posture.parse("hip 45 knee 10");
        assertThat(IntStream.range(0, 16)
                        .parallel()
                        .mapToObj(i -> body.answer(posture, Tract.SCIATIC_FIBULAR))
                        .distinct())
                .hasSize(1);
    }
}
