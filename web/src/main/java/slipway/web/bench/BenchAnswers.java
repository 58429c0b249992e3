package slipway.web.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import slipway.care.bench.BenchBody;
import slipway.care.bench.BenchFigure;
import slipway.care.bench.BenchModels;
import slipway.care.bench.PostureReading;
import slipway.care.bench.PostureStrip;
import slipway.care.bench.Spread;
import slipway.care.bench.Stance;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.pictures.look.Look;
import slipway.pictures.look.Palette;
import slipway.pictures.nerve.NerveStrip;
import slipway.pictures.nerve.StraightenedNerve;
import slipway.pictures.space.Bounds;
import slipway.pictures.svg.PathData;
import slipway.web.bench.BenchAnswer.Cell;
import slipway.web.bench.BenchAnswer.Row;
import slipway.web.bench.BenchAnswer.Shown;
import slipway.web.bench.BenchAnswer.Table;
import tools.jackson.databind.json.JsonMapper;

/** Asks the model and draws the answer. */
@Component
final class BenchAnswers {
    /** Axes of strips on the bench hold at least this, so that they stand still while a limb moves. */
    private static final StraightenedNerve.Reach REACH = new StraightenedNerve.Reach(6, 12);

    private static final Words WORDS = Words.beside(BenchAnswers.class, Language.EN);

    private final BenchModels models = new BenchModels();

    /** The posture that values are counted from. */
    static Posture rest() {
        return Position.get("lying").posture();
    }

    /** A body of the stature asked for, in all draws or in fewer. */
    BenchBody body(BenchQuery query, boolean moving) {
        return moving ? models.quick(query.person()) : models.full(query.person());
    }

    BenchAnswer answer(BenchQuery query, BenchWish wish) {
        BenchBody body = body(query, wish.moving());
        PostureReading first = reading(query.first(), rest(), query, body);
        Optional<PostureReading> second = query.second().map(stance -> reading(stance, rest(), query, body));
        var shown = new ArrayList<Shown>();
        shown.add(shown("a", query.first(), first, query, wish, body));
        second.ifPresent(found -> shown.add(shown("b", query.second().orElseThrow(), found, query, wish, body)));
        var tables = new ArrayList<Table>();
        Optional<PostureReading> change =
                query.second().map(stance -> reading(query.first(), stance.posture(), query, body));
        change.ifPresent(found -> tables.add(table("change", WORDS.get("table.change"), true, found, query)));
        tables.add(table("a", WORDS.get(query.compares() ? "table.a" : "table.only"), change.isEmpty(), first, query));
        second.ifPresent(found -> tables.add(table("b", WORDS.get("table.b"), false, found, query)));
        Set<String> left = new LinkedHashSet<>(first.notModelled());
        second.ifPresent(found -> left.addAll(found.notModelled()));
        return new BenchAnswer(
                shown,
                tables,
                left.stream().map(BenchAnswers::jointWords).toList(),
                body.model(query.tract().pathway()).draws(),
                wish.moving(),
                summary(change.orElse(first), query));
    }

    private static PostureReading reading(Stance stance, Posture from, BenchQuery query, BenchBody body) {
        return PostureReading.of(stance.posture(), from, query.tract(), body);
    }

    static String jointWords(String field) {
        return field.startsWith("other-")
                ? WORDS.get("other", WORDS.get("joint." + field.substring("other-".length())))
                : WORDS.get("joint." + field);
    }

    private static Shown shown(
            String letter, Stance stance, PostureReading reading, BenchQuery query, BenchWish wish, BenchBody body) {
        BenchFigure figure = BenchFigure.of(stance, query.side(), query.view(), query.tract(), query.site());
        NerveStrip strip = PostureStrip.strip(reading, body, query.site());
        String title = WORDS.get("figure.title", letter.toUpperCase(java.util.Locale.ROOT));
        String words = WORDS.get(
                "figure.words",
                stance.position().name(),
                stance.posture(),
                WORDS.get("side." + query.side().name()));
        Function<Look, String> body2d = look -> figure.svg(
                look,
                new slipway.pictures.svg.Words("figure-" + letter + mark(look.palette()), title, words),
                figure.frame());
        Function<Palette, String> nerve = palette ->
                StraightenedNerve.svg(strip, palette, wish.width(), "strip-" + letter + mark(palette), REACH);
        return new Shown(
                letter,
                wish.drawn(() -> body2d.apply(Look.paper()), () -> body2d.apply(Look.dark())),
                wish.drawn(() -> nerve.apply(Palette.PAPER), () -> nerve.apply(Palette.DARK)),
                JsonMapper.shared().writeValueAsString(figure.handles(wish.dragged())),
                frame(figure.frame()));
    }

    private static String mark(Palette palette) {
        return palette.equals(Palette.DARK) ? "-dark" : "";
    }

    static String frame(Bounds frame) {
        long left = PathData.units(frame.left());
        long top = PathData.units(-frame.top());
        return left + " " + top + " " + (PathData.units(frame.right()) - left) + " "
                + (PathData.units(-frame.bottom()) - top);
    }

    private static Table table(String id, String title, boolean first, PostureReading reading, BenchQuery query) {
        List<Row> rows = reading.sites().stream()
                .map(site -> new Row(
                        site.site(),
                        query.site()
                                .filter(marked -> marked.name().equals(site.site()))
                                .isPresent(),
                        cell(site.strainPct()),
                        cell(site.glideMm()),
                        crosses(site.glideMm()),
                        cell(site.loadPct())))
                .toList();
        return new Table(id, title, first, rows);
    }

    private static Cell cell(Spread spread) {
        return new Cell(Numbers.text(spread.median(), 1), Numbers.interval(spread));
    }

    /** Whether the interval of a change holds both directions. A tenth of a millimetre is nothing. */
    private static boolean crosses(Spread glideMm) {
        double nothing = 0.1;
        return glideMm.low() < -nothing && glideMm.high() > nothing;
    }

    private static String summary(PostureReading reading, BenchQuery query) {
        PostureReading.AtSite at = Stream.concat(
                        reading.sites().stream()
                                .filter(site -> query.site()
                                        .filter(marked -> marked.name().equals(site.site()))
                                        .isPresent()),
                        reading.sites().stream()
                                .max(java.util.Comparator.comparingDouble(
                                        site -> site.loadPct().median()))
                                .stream())
                .findFirst()
                .orElseThrow();
        return WORDS.get(
                query.compares() ? "summary.change" : "summary.only",
                at.site(),
                Numbers.text(at.strainPct().median(), 1),
                Numbers.text(at.glideMm().median(), 1),
                Numbers.text(at.loadPct().median(), 1));
    }
}
