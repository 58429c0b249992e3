package slipway.web.clinic;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import slipway.care.record.Act;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.StaffAccount;
import slipway.documents.words.Words;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of a new token, as text.
 *
 * @param scopes words; may be absent
 * @param days until it expires
 */
record TokenForm(String label, String account, String[] scopes, String days) {
    static final TokenForm EMPTY = new TokenForm("", "", new String[0], "90");

    private static final int LONGEST_DAYS = 366;

    TokenForm(@Nullable String label, @Nullable String account, String @Nullable [] scopes, @Nullable String days) {
        this.label = FormReader.text(label).strip();
        this.account = FormReader.text(account);
        this.scopes = scopes == null ? new String[0] : scopes.clone();
        this.days = FormReader.text(days).strip();
    }

    /** The same. */
    @Override
    public String[] scopes() {
        return scopes.clone();
    }

    ObjectNode fields() {
        ObjectNode fields = JsonMapper.shared().createObjectNode();
        fields.put("label", label).put("account", account).put("days", days);
        var list = fields.putArray("scopes");
        Arrays.stream(scopes).forEach(list::add);
        return fields;
    }

    List<Mistake> mistakes(Words words, List<StaffAccount> accounts, List<ApiToken> tokens, Instant now) {
        var mistakes = new ArrayList<Mistake>();
        need(mistakes, words, "label", label.matches("\\P{Cntrl}{1,80}"));
        // Whoever loads the answer again does not get a second one unawares.
        boolean taken = tokens.stream().anyMatch(token -> token.label().equals(label) && token.isUsableAt(now));
        need(mistakes, words, "label.taken", !taken);
        need(
                mistakes,
                words,
                "account",
                accounts.stream().anyMatch(known -> known.id().equals(account)));
        need(mistakes, words, "scopes", scopesRead().isPresent());
        need(mistakes, words, "days", daysRead().isPresent());
        return mistakes;
    }

    private static void need(List<Mistake> mistakes, Words words, String key, boolean holds) {
        if (!holds) {
            mistakes.add(new Mistake(0, 0, key.split("\\.", 2)[0], words.get("wrong.token." + key)));
        }
    }

    private Optional<Set<ApiScope>> scopesRead() {
        Set<ApiScope> read = EnumSet.noneOf(ApiScope.class);
        for (String word : scopes) {
            Optional<ApiScope> scope = ApiScope.find(word);
            if (scope.isEmpty()) {
                return Optional.empty();
            }
            read.add(scope.get());
        }
        return read.isEmpty() ? Optional.empty() : Optional.of(read);
    }

    private Optional<Integer> daysRead() {
        return days.matches("[1-9][0-9]{0,2}") && Integer.parseInt(days) <= LONGEST_DAYS
                ? Optional.of(Integer.parseInt(days))
                : Optional.empty();
    }

    /** The token of a form without mistakes. */
    ApiToken token(String id, Act act) {
        return new ApiToken(
                id,
                act.clinicId(),
                account,
                label,
                scopesRead().orElseThrow(),
                act.at(),
                act.userId(),
                act.at().plus(Duration.ofDays(daysRead().orElseThrow())),
                Optional.empty(),
                Optional.empty());
    }
}
