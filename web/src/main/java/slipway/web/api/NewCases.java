package slipway.web.api;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.ApiTokens.Once;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.assembly.CaseImport;
import slipway.care.record.assembly.CaseSplit;
import slipway.exercises.yaml.Mistake;
import slipway.web.episode.Cases;

/** Puts new cases into the records, each once however often it is sent. */
final class NewCases {
    private final ApiDesk desk;

    NewCases(ApiDesk desk) {
        this.desk = desk;
    }

    /**
     * What came of it.
     *
     * @param now whether it was made by this request
     */
    record Made(String episodeId, boolean now) {}

    /**
     * A new person with one episode.
     *
     * @param therapist login of whoever is in charge; blank for the account of the token
     * @param key under which it is done once
     */
    Made put(CaseSplit read, byte[] body, String therapist, @Nullable String key) {
        if (key == null || !key.matches("[A-Za-z0-9-]{8,64}")) {
            throw new ProblemException(
                    HttpStatus.BAD_REQUEST,
                    "name a key of your own, so that sending it twice makes one: Idempotency-Key, 8 to 64 letters,"
                            + " digits or hyphens");
        }
        String inCharge = inCharge(therapist);
        Act act = desk.act();
        String digest = Cases.digest(inCharge + "\n" + new String(body, StandardCharsets.UTF_8));
        Once once = desk.records().tokens().begin(act.tokenId(), key, digest, act.at());
        if (once instanceof Once.Before before) {
            return new Made(before.made(), false);
        }
        if (once instanceof Once.Other) {
            throw new ProblemException(HttpStatus.CONFLICT, "this key was used for something else; choose another");
        }
        if (once instanceof Once.Unfinished) {
            throw new ProblemException(
                    HttpStatus.CONFLICT,
                    "the same is being done now or was interrupted; look in the list of cases before sending it with a"
                            + " new key");
        }
        String episodeId =
                CaseImport.put(desk.records(), read, inCharge, act).episode().id();
        desk.records().tokens().finish(act.tokenId(), key, episodeId);
        return new Made(episodeId, true);
    }

    private String inCharge(String login) {
        var own = desk.user().staff();
        if (login.isBlank() && own.roles().contains(Role.THERAPIST)) {
            return own.accountId();
        }
        List<StaffAccount> all = desk.records().staff().list(own.clinicId());
        Optional<StaffAccount> named = all.stream()
                .filter(account -> account.login().equals(login))
                .filter(account -> account.active() && account.roles().contains(Role.THERAPIST))
                // Whoever does not lead takes people for nobody else.
                .filter(account ->
                        own.roles().contains(Role.LEAD) || account.id().equals(own.accountId()))
                .findFirst();
        return named.map(StaffAccount::id)
                .orElseThrow(() -> new ProblemException(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "nobody is in charge; nothing was changed",
                        List.of(new Mistake(
                                0,
                                0,
                                "therapist",
                                "must be the sign-in name of a therapist whom this token may name"))));
    }
}
