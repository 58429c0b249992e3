package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Records;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.StaffAccount;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.shell.Notices;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * One's own passkeys. Adding one asks for the password as removing one does: a station left open must not become a key
 * for somebody else.
 */
@Controller
class PasskeyController {
    private static final Words WORDS = Words.beside(PasskeyController.class, Language.EN);
    private static final String BACK = "redirect:/account";

    private final Records records;
    private final RelyingParties parties;
    private final OwnPassword own;
    private final Clock clock;

    PasskeyController(Records records, RelyingParties parties, OwnPassword own, Clock clock) {
        this.records = records;
        this.parties = parties;
        this.own = own;
        this.clock = clock;
    }

    /** What the browser is to ask the device for, once the password was right. */
    @PostMapping("/account/passkeys/options")
    ResponseEntity<ObjectNode> options(
            @RequestParam String label, @RequestParam String current, HttpServletRequest request) {
        RelyingParty party = party();
        Credentials credentials = AccountController.own(records);
        StaffAccount account = credentials.account();
        if (!Passkey.isLabel(label.strip())) {
            return mistake(WORDS.get("passkey.label.wrong"));
        }
        Optional<String> wrong = own.refusal(credentials, current);
        if (wrong.isPresent()) {
            return mistake(wrong.get());
        }
        String challenge = PasskeyChallenge.give(request, PasskeyChallenge.add(account.id()), clock.instant());
        return ResponseEntity.ok(
                PasskeyOptions.add(party, challenge, account, records.passkeys().list(account.id())));
    }

    private static ResponseEntity<ObjectNode> mistake(String sentence) {
        ObjectNode told = JsonMapper.shared().createObjectNode().put("mistake", sentence);
        return json(HttpStatus.UNPROCESSABLE_CONTENT, told);
    }

    private static ResponseEntity<ObjectNode> json(HttpStatus status, ObjectNode body) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body);
    }

    @PostMapping("/account/passkeys")
    String add(@RequestParam String label, @RequestParam String answer, HttpServletRequest request) {
        RelyingParty party = party();
        StaffAccount account = AccountController.own(records).account();
        Optional<PasskeyCheck.Made> made = PasskeyChallenge.take(
                        request, PasskeyChallenge.add(account.id()), clock.instant())
                .flatMap(challenge -> PasskeyCheck.made(party, challenge, answer));
        String name = label.strip();
        // That a credential is known already shows when a device breaks the standard or somebody plays a trick.
        if (made.isEmpty()
                || !Passkey.isLabel(name)
                || records.passkeys().find(made.get().credentialId()).isPresent()) {
            return back(request, WORDS.get("passkey.refused"));
        }
        records.passkeys()
                .add(account.id(), made.get().credentialId(), name, made.get().key(), act(account));
        return back(request, WORDS.get("passkey.added", name));
    }

    @PostMapping("/account/passkeys/remove")
    String remove(@RequestParam String passkey, @RequestParam String current, HttpServletRequest request) {
        Credentials credentials = AccountController.own(records);
        Optional<String> wrong = own.refusal(credentials, current);
        if (wrong.isPresent()) {
            return back(request, wrong.get());
        }
        StaffAccount account = credentials.account();
        records.passkeys().remove(account.id(), passkey, act(account));
        return back(request, WORDS.get("passkey.removed"));
    }

    private RelyingParty party() {
        return parties.find().orElseThrow(() -> new NotThere("use of passkeys at this address", ""));
    }

    private Act act(StaffAccount account) {
        return SignIn.act(account, clock.instant());
    }

    private static String back(HttpServletRequest request, String sentence) {
        Notices.put(request, sentence);
        return BACK;
    }
}
