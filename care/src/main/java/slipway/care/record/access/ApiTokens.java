package slipway.care.record.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/** Tokens of other programs, and what was asked through them once only. */
public interface ApiTokens {
    /**
     * Keeps a token of the clinic of the act; its entry in the trail is that of the clinic.
     *
     * @param sha256 of the whole token, in hexadecimal
     * @throws slipway.care.record.NotThere if the clinic has no such account
     */
    ApiToken add(ApiToken token, String sha256, Act act);

    /** The token with this digest, usable or not. */
    Optional<ApiToken> find(String sha256);

    /** Tokens of a clinic, newest first. */
    List<ApiToken> list(String clinicId);

    /** Ends a token of the clinic of the act. */
    void revoke(String tokenId, Act act);

    /** Takes note of a use, at most once a minute and without trail: what is done leaves its own entries. */
    void used(ApiToken token, Instant at);

    /**
     * Begins what must happen once only, under a key that the other program chose.
     *
     * @param requestSha256 of what was asked
     */
    Once begin(String tokenId, String key, String requestSha256, Instant at);

    /** Keeps what came of it: the id of what was made. */
    void finish(String tokenId, String key, String made);

    /** What is known of a key. */
    sealed interface Once {
        /** Nothing: go on. */
        record First() implements Once {}

        /** The same was asked before, and this came of it. */
        record Before(String made) implements Once {}

        /** The same was asked before, and is still being done or was interrupted. */
        record Unfinished() implements Once {}

        /** The key was used for something else. */
        record Other() implements Once {}
    }
}
