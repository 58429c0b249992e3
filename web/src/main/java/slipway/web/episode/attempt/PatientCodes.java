package slipway.web.episode.attempt;

import jakarta.servlet.http.HttpServletRequest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.OptionalInt;
import org.springframework.stereotype.Component;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.PlanVersion;
import slipway.web.WebOptions;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;

/** Makes the addresses by which a person at home gets in. Each is shown once; its digest is kept. */
@Component
public class PatientCodes {
    /** 192 bits: nobody guesses it. */
    private static final int TOKEN_BYTES = 24;

    private static final Duration GUIDE_VALID = Duration.ofDays(60);
    private static final Duration INTAKE_VALID = Duration.ofDays(14);

    /** Key of the setting: whether a code for the plan at home asks for the year of birth, too. */
    public static final String BIRTH_YEAR = "codeBirthYear";

    private final Desk desk;
    private final WebOptions options;
    private final SecureRandom random = new SecureRandom();

    PatientCodes(Desk desk, WebOptions options) {
        this.desk = desk;
        this.options = options;
    }

    /** A new address for the plan at home. */
    public String guide(String episodeId, PlanVersion plan, HttpServletRequest request) {
        var version = OptionalInt.of(plan.number());
        return address(
                "/p/", make(episodeId, LinkPurpose.GUIDE, version, GUIDE_VALID, asksBirthYear(episodeId)), request);
    }

    /**
     * A new address for the questions before the first visit.
     *
     * @param year whether the year of birth is asked in any case; otherwise as the clinic wants it
     */
    public Intake intake(String episodeId, boolean year, HttpServletRequest request) {
        boolean known = desk.open(episodeId).person().details().age().isPresent();
        boolean asks = (known && year) || asksBirthYear(episodeId);
        String token = make(episodeId, LinkPurpose.INTAKE, OptionalInt.empty(), INTAKE_VALID, asks);
        return new Intake(address("/p/", token, request), desk.clock().instant().plus(INTAKE_VALID), asks);
    }

    /**
     * A code for the questions before the first visit.
     *
     * @param until when it ends
     * @param year whether it asks for the year of birth
     */
    public record Intake(String address, Instant until, boolean year) {}

    /** Where the clinic wants it and there is an age to check it by. */
    private boolean asksBirthYear(String episodeId) {
        return desk.records()
                        .clinics()
                        .setting(desk.act().clinicId(), BIRTH_YEAR, "no")
                        .value()
                        .equals("yes")
                && desk.open(episodeId).person().details().age().isPresent();
    }

    private String make(String episodeId, LinkPurpose purpose, OptionalInt plan, Duration valid, boolean birthYear) {
        var bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        desk.records()
                .links()
                .add(
                        episodeId,
                        purpose,
                        plan,
                        Cases.digest(token),
                        desk.clock().instant().plus(valid),
                        birthYear,
                        desk.act());
        return token;
    }

    private String address(String path, String token, HttpServletRequest request) {
        String base = options.publicAddress().orElseGet(() -> "http://localhost:" + request.getServerPort());
        return base.replaceAll("/$", "") + path + token;
    }
}
