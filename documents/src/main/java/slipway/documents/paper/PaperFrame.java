package slipway.documents.paper;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import slipway.care.facts.Frame;
import slipway.care.figure.CourseStories;
import slipway.care.figure.LoadRulers;
import slipway.documents.pdf.Svg;
import slipway.documents.words.Words;
import slipway.pictures.course.CoursePicture;
import slipway.pictures.look.Palette;
import slipway.pictures.ruler.LoadRuler;

/**
 * What stands around the text of a paper. It is signed with the text once it is written with it, see {@link PaperJson}.
 *
 * @param person name; empty prints a blank
 * @param to whom it is sent; empty prints a blank where the paper is sent
 * @param mark above the title, such as "Invented person"; may be empty
 * @param ruler the load ruler
 * @param course the course of the episode
 * @param standing signatures and addenda; empty for a paper that is not in the record
 */
public record PaperFrame(
        String person,
        Optional<LocalDate> born,
        String clinic,
        String writer,
        String to,
        boolean mark,
        Optional<Picture> ruler,
        Optional<Picture> course,
        Optional<Signed> standing) {
    private static final int RULER_WIDTH = 700;
    private static final int COURSE_WIDTH = 700;

    /** A drawing and what it shows. */
    public record Picture(Svg drawing, String alternative) {}

    /** The frame of a paper that is put together from an input; pictures where the paper shows them. */
    public static PaperFrame of(PaperKind kind, PaperInput in) {
        var file = in.facts().file();
        Frame frame = in.facts().frame();
        return new PaperFrame(
                file.patient().name().orElse(""),
                frame.born(),
                file.episode().clinic().name().orElse(""),
                frame.therapist().map(Frame.Therapist::text).orElse(""),
                kind == PaperKind.REFERRAL ? "" : frame.referrer().orElse(""),
                file.provenance().invented(),
                showsRuler(kind) ? ruler(in) : Optional.empty(),
                showsCourse(kind) ? course(in) : Optional.empty(),
                Optional.empty());
    }

    /** The same with how the paper stands. */
    public PaperFrame standing(Signed signed) {
        return new PaperFrame(person, born, clinic, writer, to, mark, ruler, course, Optional.of(signed));
    }

    /** The same written by somebody else than the therapist of the episode. */
    public PaperFrame writtenBy(String name) {
        return new PaperFrame(person, born, clinic, name, to, mark, ruler, course, standing);
    }

    private static boolean showsRuler(PaperKind kind) {
        return kind == PaperKind.EVALUATION || kind == PaperKind.PROGRESS_REPORT || kind == PaperKind.LETTER;
    }

    private static boolean showsCourse(PaperKind kind) {
        return kind == PaperKind.PROGRESS_REPORT || kind == PaperKind.LETTER || kind == PaperKind.DISCHARGE;
    }

    private static Optional<Picture> ruler(PaperInput in) {
        return LoadRulers.of(in.plan())
                .map(scale -> LoadRuler.svg(scale, Palette.PAPER, RULER_WIDTH, "ruler"))
                .map(PaperFrame::picture);
    }

    private static Optional<Picture> course(PaperInput in) {
        return in.course()
                .map(report -> CourseStories.of(in.facts(), in.plan(), report, in.followed()))
                .map(story -> CoursePicture.svg(story, Palette.PAPER, COURSE_WIDTH, "course"))
                .map(PaperFrame::picture);
    }

    private static Picture picture(String markup) {
        Svg drawing = Svg.parse(markup);
        return new Picture(drawing, drawing.description().orElse("Drawing"));
    }

    /** A date as it is printed in the language of the words. */
    static String date(LocalDate day, Words words) {
        return DateTimeFormatter.ofPattern(
                        words.get("date.pattern"), words.language().locale())
                .format(day);
    }
}
