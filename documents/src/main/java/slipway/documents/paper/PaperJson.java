package slipway.documents.paper;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import slipway.exercises.exercise.Language;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A paper as JSON text: what is kept, signed and hashed. The same paper gives the same text. */
public final class PaperJson {
    private static final int FORMAT = 1;

    /** Longest text that is read; a paper is a few pages. */
    private static final int MAX_LETTERS = 500_000;

    private PaperJson() {}

    /** The text of a paper. */
    public static String write(PaperText paper) {
        return node(paper).toPrettyString() + "\n";
    }

    /** The text of a paper with what stands around it, so that both are signed as one. */
    public static String write(PaperText paper, PaperFrame frame) {
        ObjectNode root = node(paper);
        root.set("frame", FrameJson.write(frame));
        return root.toPrettyString() + "\n";
    }

    private static ObjectNode node(PaperText paper) {
        ObjectNode root = JsonMapper.shared().createObjectNode();
        root.put("format", FORMAT)
                .put("kind", paper.kind().key())
                .put("language", paper.language().code())
                .put("title", paper.title())
                .put("day", paper.day().toString());
        var struck = root.putArray("struck");
        new TreeSet<>(paper.struck()).forEach(struck::add);
        var parts = root.putArray("parts");
        for (Part part : paper.parts()) {
            ObjectNode node = parts.addObject().put("key", part.key()).put("heading", part.heading());
            var sentences = node.putArray("sentences");
            part.sentences().forEach(each -> sentences.add(sentence(each)));
        }
        return root;
    }

    private static ObjectNode sentence(Sentence sentence) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("id", sentence.id())
                .put("text", sentence.text())
                .put("state", sentence.state().name().toLowerCase(Locale.ROOT));
        if (!sentence.assembled().isEmpty() && !sentence.assembled().equals(sentence.text())) {
            node.put("assembled", sentence.assembled());
        }
        if (sentence.blank()) {
            node.put("blank", true);
        }
        var sources = node.putArray("sources");
        sentence.sources().forEach(sources::add);
        return node;
    }

    /**
     * The paper of a text.
     *
     * @throws IllegalArgumentException if the text is no paper that {@link #write} wrote
     */
    public static PaperText read(String text) {
        return read(text, PaperJson::read);
    }

    /**
     * What stands around a paper, if that was written with it.
     *
     * @throws IllegalArgumentException if the text is no paper that {@link #write} wrote
     */
    public static Optional<PaperFrame> frame(String text) {
        return read(
                text, root -> root.has("frame") ? Optional.of(FrameJson.read(root.path("frame"))) : Optional.empty());
    }

    private static <T> T read(String text, Function<JsonNode, T> reader) {
        if (text.length() > MAX_LETTERS) {
            throw new IllegalArgumentException(
                    "a paper must have at most %d letters, had %d".formatted(MAX_LETTERS, text.length()));
        }
        try {
            return reader.apply(JsonMapper.shared().readTree(text));
        } catch (JacksonException | DateTimeException e) {
            // Its own message could repeat words of the paper.
            throw new IllegalArgumentException(
                    "not the text of a paper: " + e.getClass().getSimpleName(), e);
        }
    }

    private static PaperText read(JsonNode root) {
        if (root.path("format").asInt(0) != FORMAT) {
            throw new IllegalArgumentException("a paper must have format " + FORMAT);
        }
        PaperKind kind = PaperKind.find(root.path("kind").asString(""))
                .orElseThrow(() -> new IllegalArgumentException("a paper must have a known kind"));
        Language language = Language.EN.code().equals(root.path("language").asString("")) ? Language.EN : Language.ES;
        var parts = new ArrayList<Part>();
        for (JsonNode part : root.path("parts")) {
            var sentences = new ArrayList<Sentence>();
            part.path("sentences").forEach(each -> sentences.add(sentence(each)));
            parts.add(
                    new Part(part.path("key").asString(""), part.path("heading").asString(""), sentences));
        }
        return new PaperText(
                kind,
                language,
                root.path("title").asString(""),
                LocalDate.parse(root.path("day").asString("")),
                parts,
                words(root.path("struck")));
    }

    private static Set<String> words(JsonNode list) {
        var words = new HashSet<String>();
        list.forEach(each -> words.add(each.asString()));
        return words;
    }

    private static Sentence sentence(JsonNode node) {
        List<String> sources = new ArrayList<>();
        node.path("sources").forEach(each -> sources.add(each.asString()));
        String text = node.path("text").asString("");
        boolean written = "written".equals(node.path("state").asString(""));
        return new Sentence(
                node.path("id").asString(""),
                text,
                written ? "" : node.path("assembled").asString(text),
                sources,
                node.path("blank").asBoolean(false));
    }
}
