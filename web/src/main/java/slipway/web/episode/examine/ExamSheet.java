package slipway.web.episode.examine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import slipway.documents.words.Words;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.ResultReader;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;
import slipway.web.form.FormView;
import slipway.web.form.Option;

/** Lays the findings of a case out as blocks of rows; whatever is recorded has a row, in the word that it was recorded by. */
final class ExamSheet {
    static final List<String> SIDES = List.of("right", "left");

    /** Kinds of tests whose angle is measured. */
    private static final Set<String> MEASURED = Set.of("neural");

    private static final Pattern FIELD_NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_-]*");

    private final Words words;
    private final FormView form;
    private final Set<String> five;
    private final Vocabulary vocabulary = Vocabulary.load();
    private final Set<String> shown = new HashSet<>();

    /**
     * A sheet of a form.
     *
     * @param five the items of the five-minute path, as {@code kind item}
     */
    ExamSheet(Words words, FormView form, Set<String> five) {
        this.words = words;
        this.form = form;
        this.five = five;
    }

    /** The results of a kind that can be chosen, the normal one first. */
    private static List<String> results(FindingKind kind) {
        return switch (kind) {
            case STRENGTH -> List.of("5", "4", "4+", "4-", "3", "3+", "3-", "2", "1", "0");
            case REFLEX, SENSATION -> List.of("normal", "reduced", "absent", "increased");
            case PROVOCATION -> List.of("negative", "positive");
            case SYMPTOM -> List.of("none", "pain", "tingling", "numb", "weakness");
        };
    }

    /** The blocks in their order. */
    List<ExamBlock> blocks() {
        Map<String, Block> blocks = new LinkedHashMap<>();
        for (RowPlan plan : RowPlan.list()) {
            blocks.computeIfAbsent(plan.block(), key -> new Block(key, plan.kind(), new ArrayList<>()))
                    .rows()
                    .add(row(plan.block(), plan.kind(), plan.item(), plan.more()));
        }
        addOthers(List.copyOf(blocks.values()));
        return blocks.values().stream()
                .map(block -> new ExamBlock(block.key(), results(block.kind()).get(0), block.rows()))
                .toList();
    }

    /** A block while its rows are laid out. */
    private record Block(String key, FindingKind kind, List<ExamRow> rows) {}

    /** Recorded items that have no row of their own stand in the last block of their kind. */
    private void addOthers(List<Block> blocks) {
        for (int i = blocks.size() - 1; i >= 0; i--) {
            Block block = blocks.get(i);
            for (String side : SIDES) {
                for (String word : recorded(side, block.kind())) {
                    if (!shown.contains(place(side, block.kind(), word))) {
                        block.rows().add(row(block.key(), block.kind(), word, true));
                    }
                }
            }
        }
    }

    private static String place(String side, FindingKind kind, String word) {
        return "%s %s %s".formatted(side, kind, word);
    }

    private List<String> recorded(String side, FindingKind kind) {
        return form.content().path("examination").path(side).path(kind.block()).propertyNames().stream()
                .filter(ExamSheet::isFieldName)
                .toList();
    }

    /** Whether a word can be the name of a field; a file may use words that cannot, such as those with spaces. */
    static boolean isFieldName(String word) {
        return FIELD_NAME.matcher(word).matches();
    }

    private ExamRow row(String block, FindingKind kind, String item, boolean more) {
        List<ExamCell> cells = SIDES.stream()
                .map(side -> cell(side, block, kind, wordOf(side, kind, item)))
                .toList();
        return new ExamRow(item, label(item), more, five.contains(kind.key() + " " + item), cells);
    }

    /** The word by which this item is recorded: that of the row, or another one that means the same. */
    private String wordOf(String side, FindingKind kind, String item) {
        List<String> recorded = recorded(side, kind);
        String key = key(kind, item);
        String word = recorded.contains(item)
                ? item
                : recorded.stream()
                        .filter(other -> !shown.contains(place(side, kind, other)))
                        .filter(other -> key(kind, other).equals(key))
                        .findFirst()
                        .orElse(item);
        shown.add(place(side, kind, word));
        return word;
    }

    private String key(FindingKind kind, String word) {
        return vocabulary.find(kind, word).map(Term::key).orElse(word);
    }

    private ExamCell cell(String side, String block, FindingKind kind, String word) {
        String at = "examination.%s.%s.%s".formatted(side, kind.block(), word);
        boolean object = form.content()
                .path("examination")
                .path(side)
                .path(kind.block())
                .path(word)
                .isObject();
        if (MEASURED.contains(block) || object) {
            String path = at + ".positive";
            String raw = object ? form.value(path) : form.value(at);
            return new ExamCell(path, side, options(kind, raw), raw, at + ".degrees", form.value(at + ".degrees"));
        }
        String raw = form.value(at);
        return new ExamCell(at, side, options(kind, raw), raw, "", "");
    }

    /** What can be chosen; a recorded word takes the place of the one that means the same, or stands beside them. */
    private List<Option> options(FindingKind kind, String raw) {
        var options = new ArrayList<Option>();
        boolean found = raw.isEmpty();
        for (String result : results(kind)) {
            boolean same = !found && (raw.equals(result) || meaning(kind, raw).equals(meaning(kind, result)));
            options.add(new Option(same ? raw : result, words.get("result." + result)));
            found |= same;
        }
        if (!found) {
            options.add(new Option(raw, raw));
        }
        return options;
    }

    private static Optional<String> meaning(FindingKind kind, String raw) {
        try {
            return ResultReader.read(kind, raw).map(result -> result.text());
        } catch (IllegalArgumentException e) {
            return Optional.of(raw);
        }
    }

    private String label(String item) {
        return label(words, item);
    }

    /** An item as the page says it; a word that has no text of its own is shown as it is written. */
    static String label(Words words, String item) {
        try {
            return words.get("item." + item);
        } catch (MissingResourceException e) {
            return item.replace('_', ' ');
        }
    }
}
