package slipway.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.figure.LoadRulers;
import slipway.care.record.chart.Chart;
import slipway.care.visit.VisitPlan;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.pictures.look.Palette;
import slipway.pictures.ruler.LoadRuler;
import slipway.pictures.ruler.LoadScale;
import slipway.web.bench.BenchAnswer.Drawn;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;

/** The load ruler of the person whose episode the bench was opened from, with the postures of the bench on it. */
@Component
final class BenchRulers {
    private static final Words WORDS = Words.beside(BenchRulers.class, Language.EN);

    private final Desk desk;
    private final Cases cases;

    BenchRulers(Desk desk, Cases cases) {
        this.desk = desk;
        this.cases = cases;
    }

    /** The ruler; empty without an episode, and while something moves: loads of a person are told with all draws. */
    Optional<BenchRuler> of(BenchQuery query, BenchWish wish) {
        return query.episode().filter(id -> !wish.moving()).map(id -> ruler(id, query, wish));
    }

    private BenchRuler ruler(String episodeId, BenchQuery query, BenchWish wish) {
        Chart chart = desk.open(episodeId);
        Optional<VisitPlan> visit = cases.assemble(chart).complete().map(cases::visit);
        Optional<LoadScale> scale = visit.flatMap(found -> LoadRulers.of(found, postures(query)));
        String place = visit.flatMap(VisitPlan::result)
                .flatMap(result -> result.dose().site())
                .map(Site::name)
                .orElse("");
        String rest = visit.map(found -> rest(found.neural().rest())).orElse("");
        return new BenchRuler(episodeId, place, rest, scale.map(found -> drawn(found, wish)));
    }

    /** The rest posture by the name of a position, or by its angles if it is none. */
    private static String rest(Posture rest) {
        return Position.all().entrySet().stream()
                .filter(position -> position.getValue().posture().equals(rest))
                .findFirst()
                .map(position -> WORDS.get("position." + position.getKey().replace(' ', '-'))
                        .toLowerCase(Locale.ROOT))
                .orElse(rest.toString());
    }

    private static List<LoadRulers.Named> postures(BenchQuery query) {
        var postures = new ArrayList<LoadRulers.Named>();
        postures.add(new LoadRulers.Named(
                WORDS.get(query.compares() ? "posture.a" : "ruler.posture"),
                query.first().posture()));
        query.second()
                .ifPresent(stance -> postures.add(new LoadRulers.Named(WORDS.get("posture.b"), stance.posture())));
        return postures;
    }

    private static Drawn drawn(LoadScale scale, BenchWish wish) {
        return wish.drawn(
                () -> LoadRuler.svg(scale, Palette.PAPER, wish.width(), "ruler"),
                () -> LoadRuler.svg(scale, Palette.DARK, wish.width(), "ruler-dark"));
    }
}
