package slipway.web.remind;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import com.icegreen.greenmail.util.ServerSetupTest;
import jakarta.mail.internet.MimeMessage;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.care.record.remind.Consent;
import slipway.care.record.remind.MailFault;
import slipway.care.record.remind.SendingReport;
import slipway.exercises.exercise.Language;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.episode.home.HomeCourse;

/** With a mail server of the test's own. The evening is that of tomorrow: nobody has reported there. */
class RemindingTest {
    private static final ZoneId ZONE = ZoneId.systemDefault();
    private final LocalDate tomorrow = LocalDate.now(ZONE).plusDays(1);
    private static final String ADDRESS = "somebody@example.org";

    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final TestServer server = SERVER;
    private final GreenMail post = new GreenMail(ServerSetupTest.SMTP.dynamicPort());
    private String episode = "";
    private String person = "";

    @BeforeEach
    void somebodyWithAPlanAtHomeWantsReminders() {
        post.start();
        server.records().reminders().purge(tomorrow.plusDays(400));
        wants("Alma");
    }

    private void wants(String name) {
        episode = Charts.demoEpisode(server, name);
        person = Charts.open(server, episode).person().id();
        address(person, ADDRESS, Language.EN);
        server.records().reminders().agree(person, 18, Charts.therapist(server));
        code();
    }

    private void code() {
        Charts.code(server, episode, LinkPurpose.GUIDE, Instant.now().plusSeconds(60L * 86_400));
    }

    private void address(String personId, String address, Language language) {
        Person before = server.records()
                .people()
                .find(personId, Charts.therapist(server))
                .orElseThrow();
        PersonDetails plain = before.details();
        server.records()
                .people()
                .change(
                        personId,
                        before.version(),
                        new PersonDetails(
                                plain.name(),
                                plain.age(),
                                plain.sex(),
                                plain.statureCm(),
                                plain.massKg(),
                                language,
                                plain.phone(),
                                Optional.of(address),
                                plain.invented()),
                        Charts.therapist(server))
                .orThrow();
    }

    @AfterEach
    void stop() {
        post.stop();
        server.records().reminders().end(person, Charts.therapist(server));
    }

    private MailSettings settings(int port, MailSecurity security) {
        return new MailSettings(
                "localhost",
                port,
                security,
                Optional.empty(),
                Optional.empty(),
                "clinic@example.org",
                "https://clinic.example");
    }

    private Reminding.Outcome run(LocalDate day, String time) {
        return run(day, time, settings(post.getSmtp().getPort(), MailSecurity.NONE));
    }

    private Reminding.Outcome run(LocalDate day, String time, MailSettings settings) {
        Instant at = day.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
        var needs = new Needs(server.records(), server.server().part(HomeCourse.class));
        return new Reminding(server.records(), needs, Clock.fixed(at, ZONE)).run(settings);
    }

    private SendingReport report() {
        return server.records().reminders().report(Charts.therapist(server).clinicId(), tomorrow);
    }

    @Test
    void oneADayFromTheHourOnAndItTellsNothing() throws Exception {
        assertThat(run(tomorrow, "17:59")).isEqualTo(new Reminding.Outcome(0, 0));
        assertThat(run(tomorrow, "18:05")).isEqualTo(new Reminding.Outcome(1, 0));
        assertThat(run(tomorrow, "18:10")).isEqualTo(new Reminding.Outcome(0, 0));
        MimeMessage mail = post.getReceivedMessages()[0];
        String text = (String) mail.getContent();
        assertThat(mail.getAllRecipients()).extracting(Object::toString).containsExactly(ADDRESS);
        assertThat(mail.getSubject()).contains("Harbour Steps");
        assertThat(text).contains("https://clinic.example/home").contains("call 911");
        String all = String.join("\n", java.util.Collections.list(mail.getAllHeaderLines())) + text;
        assertThat(all.replace(ADDRESS, ""))
                .doesNotContainIgnoringCase("alma")
                .doesNotContainIgnoringCase("somebody")
                .doesNotContain(person)
                .doesNotContain(episode)
                .doesNotContainIgnoringCase("exercise")
                .doesNotContainIgnoringCase("nerve")
                .doesNotContainIgnoringCase("pain");
        assertThat(mail.getHeader("Auto-Submitted")).containsExactly("auto-generated");
        assertThat(mail.getHeader("Message-ID")[0]).matches("<[A-Za-z0-9_-]{32}@example\\.org>");
    }

    /** RFC 8058, sections 3.1 and 3.2: an https address in List-Unsubscribe, and a POST to it without cookies ends it. */
    @Test
    void theHeaderStopsThemByOnePostWithoutACookieAndOnlyLookingDoesNot() throws Exception {
        run(tomorrow, "18:05");
        MimeMessage mail = post.getReceivedMessages()[0];
        assertThat(mail.getHeader("List-Unsubscribe-Post")).containsExactly("List-Unsubscribe=One-Click");
        String stop = mail.getHeader("List-Unsubscribe", null).replaceAll("(?s)\\s", "");
        assertThat(stop).matches("<https://clinic\\.example/stop/[A-Za-z0-9_-]{32}>");
        assertThat((String) mail.getContent()).contains(stop.substring(1, stop.length() - 1));
        String path = stop.replaceAll("<https://clinic\\.example|>", "");
        Visitor program = server.visitor();
        assertThat(program.get(path).body()).contains("No more reminders?");
        assertThat(consent()).map(Consent::holds).contains(true);
        HttpResponse<String> answer = program.postBare(path, "List-Unsubscribe", "One-Click");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(consent()).map(Consent::endedByPerson).contains(true);
        assertThat(run(tomorrow.plusDays(1), "18:05").sent()).isZero();
        assertThat(program.postBare("/stop/guessed").statusCode()).isEqualTo(404);
        String page = server.signedIn("therapist").get("/people/" + person).body();
        assertThat(page).contains("by the link in a reminder");
    }

    private Optional<Consent> consent() {
        return server.records().reminders().consent(person, Charts.therapist(server));
    }

    @Test
    void whoReportedThatDayOrIsLockedOrHasNoCodeGetsNone() {
        server.records().reminders().end(person, Charts.therapist(server));
        wants("Rosario");
        assertThat(run(tomorrow.plusDays(300), "18:05").sent())
                .as("the code has ended")
                .isZero();
        Instant noon = tomorrow.atTime(12, 0).atZone(ZONE).toInstant();
        server.records()
                .charts()
                .open(episode, Charts.therapist(server).at(noon))
                .chartIfOpen()
                .orElseThrow()
                .checkIns()
                .add("told-that-day", "told-that-day", "none", Charts.json("{}"));
        assertThat(run(tomorrow, "18:05").sent()).as("reported").isZero();
        assertThat(run(tomorrow.plusDays(1), "18:05").sent())
                .as("not on the next day")
                .isEqualTo(1);
        String therapist = Charts.therapist(server).userId();
        Charts.open(server, episode).checkIns().raise("new-weakness", "words", Optional.empty(), therapist);
        assertThat(run(tomorrow.plusDays(2), "18:05").sent()).as("locked").isZero();
        assertThat(report().sent()).isEqualTo(1);
    }

    @Test
    void whoIsSilentIsAskedKindlyEveryThirdDayInTheirLanguage() throws Exception {
        address(person, ADDRESS, Language.ES);
        for (int day = 7; day < 17; day++) {
            run(tomorrow.plusDays(day), "18:05");
        }
        MimeMessage[] mails = post.getReceivedMessages();
        assertThat(Arrays.stream(mails).map(RemindingTest::day))
                .containsExactly(
                        tomorrow.plusDays(7), tomorrow.plusDays(10), tomorrow.plusDays(13), tomorrow.plusDays(16));
        assertThat((String) mails[0].getContent()).contains("no sabe de usted");
        assertThat(mails[0].getSubject()).startsWith("Una pregunta corta");
    }

    private static LocalDate day(MimeMessage mail) {
        try {
            return LocalDate.ofInstant(mail.getSentDate().toInstant(), ZONE);
        } catch (jakarta.mail.MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aServerThatIsDownIsTriedAgainCountedAndNamedWithoutAddresses() {
        int port = post.getSmtp().getPort();
        post.stop();
        var kept = new ListAppender<ILoggingEvent>();
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        kept.setContext(root.getLoggerContext());
        kept.start();
        root.addAppender(kept);
        try {
            assertThat(run(tomorrow, "18:05", settings(port, MailSecurity.NONE)))
                    .isEqualTo(new Reminding.Outcome(0, 1));
        } finally {
            root.detachAppender(kept);
        }
        assertThat(kept.list).extracting(ILoggingEvent::getFormattedMessage).anyMatch(line -> line.contains(person));
        assertThat(kept.list.toString()).doesNotContain("@").doesNotContain("somebody");
        assertThat(report().lastFault()).contains(MailFault.NO_CONNECTION);
        assertThat(report().failing()).isEqualTo(1);
        var again = new GreenMail(new ServerSetup(port, "localhost", "smtp"));
        again.start();
        try {
            assertThat(run(tomorrow, "18:10", settings(port, MailSecurity.NONE)).sent())
                    .as("too soon")
                    .isZero();
            assertThat(run(tomorrow, "18:20", settings(port, MailSecurity.NONE)).sent())
                    .isEqualTo(1);
        } finally {
            again.stop();
        }
        assertThat(report())
                .extracting(SendingReport::sent, SendingReport::failing)
                .containsExactly(1, 0);
    }

    @Test
    void withoutEncryptionOrWithACertificateOfNobodyNothingLeaves() {
        assertThat(run(tomorrow, "18:05", settings(post.getSmtp().getPort(), MailSecurity.STARTTLS))
                        .failed())
                .isEqualTo(1);
        assertThat(report().lastFault()).contains(MailFault.NOT_ENCRYPTED);
        assertThat(post.getReceivedMessages()).isEmpty();
        var selfSigned = new GreenMail(ServerSetupTest.SMTPS.dynamicPort());
        selfSigned.start();
        try {
            assertThat(run(tomorrow, "18:20", settings(selfSigned.getSmtps().getPort(), MailSecurity.TLS))
                            .failed())
                    .isEqualTo(1);
            assertThat(report().lastFault()).contains(MailFault.NOT_ENCRYPTED);
            assertThat(selfSigned.getReceivedMessages()).isEmpty();
        } finally {
            selfSigned.stop();
        }
    }

    @Test
    void theTherapistWritesDownTheWishAndNothingWithoutAnAddress() {
        Visitor therapist = server.signedIn("therapist");
        therapist.get("/people/" + person);
        therapist.post("/people/" + person + "/reminders", "wanted", "no");
        assertThat(consent()).map(Consent::holds).contains(false);
        therapist.post("/people/" + person + "/reminders", "wanted", "yes", "hour", "5");
        assertThat(consent()).map(Consent::holds).contains(false);
        therapist.post("/people/" + person + "/reminders", "wanted", "yes", "hour", "7");
        assertThat(consent()).map(Consent::hour).contains(7);
        String other = Charts.open(server, Charts.demoEpisode(server, "Bjarne"))
                .person()
                .id();
        therapist.post("/people/" + other + "/reminders", "wanted", "yes", "hour", "7");
        assertThat(server.records().reminders().consent(other, Charts.therapist(server)))
                .isEmpty();
    }
}
