package slipway.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipway.care.record.papers.Paper;

class PaperTextTest {
    private static final PaperText DRAFT = PaperWriter.write(PaperKind.PROGRESS_REPORT, SamplePapers.full());
    private static final String WEEK = "standing/week";

    @Test
    void anEditedSentenceKeepsItsSourceAndWhatItWas() {
        Sentence edited = DRAFT.edited(WEEK, "Fifth week of care.").find(WEEK).orElseThrow();
        assertThat(edited.state()).isEqualTo(Sentence.State.EDITED);
        assertThat(edited.assembled()).isEqualTo("Week 5 of care.");
        assertThat(edited.sources()).containsExactly("episode/visits");
    }

    @Test
    void jsonKeepsEverythingAndIsStable() {
        PaperText paper = DRAFT.edited(WEEK, "Fifth week \"of\" care.\nÉl.")
                .with("standing", "Own words.")
                .without("next/next");
        String text = PaperJson.write(paper);
        assertThat(PaperJson.read(text)).isEqualTo(paper);
        assertThat(PaperJson.write(PaperJson.read(text))).isEqualTo(text);
    }

    @Test
    void otherTextIsRefusedWithoutRepeatingIt() {
        for (String text : List.of("", "{", "[1]", "{\"format\":2}", "{\"format\":1,\"kind\":\"secret name\"}")) {
            assertThatThrownBy(() -> PaperJson.read(text))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageNotContaining("secret name");
        }
    }

    @Test
    void aNewDraftKeepsWhatAPersonWrote() {
        PaperText edited = DRAFT.edited(WEEK, "Fifth week of care.")
                .with("standing", "Own words.")
                .without("next/next");
        PaperText fresh = changed(DRAFT, WEEK, "Week 6 of care.");
        Redraft.Result result = Redraft.of(edited, fresh);
        assertThat(result.text().find(WEEK).orElseThrow().text()).isEqualTo("Fifth week of care.");
        assertThat(result.text().find("standing/own-1")).isPresent();
        assertThat(result.text().find("next/next")).isEmpty();
        assertThat(result.changedBelow()).containsExactly(WEEK);
        assertThat(Redraft.of(DRAFT, fresh).text()).isEqualTo(fresh);
    }

    private static PaperText changed(PaperText paper, String id, String assembled) {
        var parts = paper.parts().stream()
                .map(part -> new Part(
                        part.key(),
                        part.heading(),
                        part.sentences().stream()
                                .map(each -> each.id().equals(id)
                                        ? new Sentence(id, assembled, assembled, each.sources(), false)
                                        : each)
                                .toList()))
                .toList();
        return new PaperText(paper.kind(), paper.language(), paper.title(), paper.day(), parts, paper.struck());
    }

    @Test
    void versionsAreComparedSentenceBySentenceAndWordByWord() {
        PaperText later = DRAFT.edited(WEEK, "Week 6 of care.")
                .with("standing", "Own words.")
                .without("next/next");
        PaperDiff diff = PaperDiff.of(DRAFT, later);
        assertThat(diff.rows().stream().filter(row -> row.kind() != PaperDiff.Kind.SAME))
                .extracting(PaperDiff.Row::id, PaperDiff.Row::kind)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(WEEK, PaperDiff.Kind.CHANGED),
                        org.assertj.core.groups.Tuple.tuple("standing/own-1", PaperDiff.Kind.ADDED),
                        org.assertj.core.groups.Tuple.tuple("next/next", PaperDiff.Kind.REMOVED));
        PaperDiff.Row week = diff.rows().stream()
                .filter(row -> row.id().equals(WEEK))
                .findFirst()
                .orElseThrow();
        assertThat(week.before())
                .containsExactly(
                        new PaperDiff.Piece("Week", false),
                        new PaperDiff.Piece("5", true),
                        new PaperDiff.Piece("of care.", false));
        assertThat(PaperDiff.of(later, later).same()).isTrue();
    }

    @Test
    void onlyACoSignatureOfTheSignedTextBySomebodyElseCounts() {
        String text = PaperJson.write(DRAFT);
        String sha = Signed.sha256(text);
        // Worked example of FIPS 180-4: SHA-256 of "abc".
        assertThat(Signed.sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        Paper paper = paper(
                text,
                sha,
                addendum(1, Signed.coSignature(sha), "lead"),
                addendum(2, Signed.coSignature(sha), "writer"),
                addendum(3, Signed.coSignature("00"), "other"),
                addendum(4, "One word more.", "writer"));
        Signed signed = Signed.of(paper);
        assertThat(signed.coSignatures()).extracting(Paper.Signature::by).containsExactly("lead");
        assertThat(signed.addenda()).extracting(Paper.Addendum::text).containsExactly("One word more.");
        assertThat(signed.unaltered()).isTrue();
        assertThat(Signed.of(paper(text + " ", sha)).unaltered()).isFalse();
        assertThat(Signed.of(paper(text, sha)).completeAt(true)).isEmpty();
    }

    private static Paper paper(String text, String sha, Paper.Addendum... addenda) {
        return new Paper(
                "p",
                "e",
                "progress-report",
                Optional.empty(),
                text,
                2,
                Instant.EPOCH,
                "writer",
                Optional.of(new Paper.Signature("writer", Instant.EPOCH, sha)),
                List.of(addenda));
    }

    private static Paper.Addendum addendum(int number, String text, String by) {
        return new Paper.Addendum(number, text, new Paper.Signature(by, Instant.EPOCH, "any"));
    }
}
