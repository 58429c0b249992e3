package slipway.web.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import slipway.care.bench.MotionReading;
import slipway.care.bench.MotionReading.Moment;
import slipway.care.bench.Spread;
import slipway.care.figure.ExerciseFigures;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.MovingFigure;
import slipway.pictures.look.Look;
import slipway.pictures.look.Palette;
import slipway.pictures.motion.LoadOverTime;
import slipway.pictures.space.Bounds;
import slipway.web.bench.BenchAnswer.Cell;
import slipway.web.bench.BenchAnswer.Drawn;
import tools.jackson.databind.json.JsonMapper;

/** Plays an exercise of the catalogue. */
@Component
final class BenchMotions {
    private static final Words WORDS = Words.beside(BenchMotions.class, Language.EN);
    private static final Site USUAL_SITE = Site.get("deep gluteal space");

    /** Pictures along one repetition; the script draws what is between. */
    private static final int PICTURES = 33;

    private final BenchAnswers answers;

    BenchMotions(BenchAnswers answers) {
        this.answers = answers;
    }

    BenchMotion play(Exercise exercise, BenchQuery query, BenchWish wish) {
        Site site = place(exercise, query);
        MotionReading reading =
                MotionReading.of(exercise.motion(), BenchAnswers.rest(), site, answers.body(query, false));
        Posture first = exercise.motion().keys().get(0).posture();
        List<Figure> way =
                Figure.along(ExerciseFigures.still(exercise, first, query.side()), exercise.motion(), PICTURES);
        Bounds frame = Figure.commonBounds(way);
        return new BenchMotion(
                exercise.id(),
                exercise.name().in(Language.EN),
                moving(exercise, way, frame, wish),
                stills(exercise, way, frame, wish),
                chart(reading, wish),
                moments(reading),
                Numbers.plain(exercise.motion().seconds()),
                site.name(),
                site.tract().pathway().validated(),
                peak(reading),
                glide(reading));
    }

    /** The marked place if it lies on a nerve of the exercise; else the usual one of such a nerve. */
    private static Site place(Exercise exercise, BenchQuery query) {
        List<Tract> tracts = exercise.use().modelledTracts();
        List<Site> fit = Stream.concat(
                        Stream.concat(query.site().stream(), Stream.of(USUAL_SITE)),
                        Site.of(Pathway.FRONT).values().stream())
                .filter(site -> tracts.isEmpty() || tracts.stream().anyMatch(site::liesOn))
                .toList();
        return fit.isEmpty() ? USUAL_SITE : fit.get(0);
    }

    private static BenchMotion.Moving moving(Exercise exercise, List<Figure> way, Bounds frame, BenchWish wish) {
        Function<Look, List<String>> pictures = look -> way.stream()
                .map(figure -> figure.svg(look, words("moving", look, exercise, WORDS.get("motion.moves")), frame))
                .toList();
        return new BenchMotion.Moving(
                wish.drawn(
                        () -> pictures.apply(Look.paper()).get(0),
                        () -> pictures.apply(Look.dark()).get(0)),
                wish.drawn(() -> tracks(pictures.apply(Look.paper())), () -> tracks(pictures.apply(Look.dark()))));
    }

    /** What changes, for the script; blank where pictures differ in more than numbers, and the stills stand for it. */
    private static String tracks(List<String> pictures) {
        try {
            return JsonMapper.shared()
                    .writeValueAsString(MovingFigure.of(pictures).tracks().stream()
                            .map(BenchMotions::track)
                            .toList());
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private static Map<String, Object> track(MovingFigure.Track track) {
        var data = new LinkedHashMap<String, Object>();
        data.put(
                "at",
                track.spots().stream()
                        .map(spot -> List.of(spot.element(), spot.attribute()))
                        .toList());
        data.put("v", track.values());
        return data;
    }

    private static List<BenchMotion.Still> stills(Exercise exercise, List<Figure> way, Bounds frame, BenchWish wish) {
        var stills = new ArrayList<BenchMotion.Still>();
        int far = (way.size() - 1) / 2;
        for (int i : new int[] {0, far / 2, far}) {
            String caption = WORDS.get("motion.still." + (stills.size() + 1));
            Function<Look, String> picture =
                    look -> way.get(i).svg(look, words("still-" + i, look, exercise, caption), frame);
            stills.add(new BenchMotion.Still(
                    caption, wish.drawn(() -> picture.apply(Look.paper()), () -> picture.apply(Look.dark()))));
        }
        return stills;
    }

    private static slipway.pictures.svg.Words words(String id, Look look, Exercise exercise, String shows) {
        return new slipway.pictures.svg.Words(
                id + (look.palette().equals(Palette.DARK) ? "-dark" : ""),
                exercise.name().in(Language.EN),
                shows);
    }

    private static Drawn chart(MotionReading reading, BenchWish wish) {
        List<LoadOverTime.Point> points = reading.moments().stream()
                .map(moment -> new LoadOverTime.Point(
                        moment.seconds(),
                        moment.loadPct().median(),
                        moment.loadPct().low(),
                        moment.loadPct().high()))
                .toList();
        String title = WORDS.get("motion.chart", reading.site().name());
        Function<Palette, String> chart = palette -> LoadOverTime.svg(
                "chart" + (palette.equals(Palette.DARK) ? "-dark" : ""),
                title,
                WORDS.get("motion.caption"),
                points,
                palette,
                wish.width());
        return wish.drawn(() -> chart.apply(Palette.PAPER), () -> chart.apply(Palette.DARK));
    }

    private static String moments(MotionReading reading) {
        return JsonMapper.shared()
                .writeValueAsString(reading.moments().stream()
                        .map(moment -> new double[] {
                            rounded(moment.seconds()),
                            rounded(moment.loadPct().median()),
                            rounded(moment.loadPct().low()),
                            rounded(moment.loadPct().high()),
                            rounded(moment.glideMm().median())
                        })
                        .toList());
    }

    private static double rounded(double value) {
        return Math.rint(value * 100) / 100 + 0.0;
    }

    private static Cell peak(MotionReading reading) {
        Spread peak = reading.moments().stream()
                .map(Moment::loadPct)
                .max(java.util.Comparator.comparingDouble(Spread::median))
                .orElseThrow();
        return new Cell(Numbers.text(peak.median(), 1), Numbers.interval(peak));
    }

    private static String glide(MotionReading reading) {
        var range = IntStream.range(0, reading.moments().size())
                .mapToDouble(i -> reading.moments().get(i).glideMm().median())
                .summaryStatistics();
        return Numbers.text(range.getMax() - range.getMin(), 1);
    }
}
