package slipway.web.remind;

import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import slipway.care.record.access.Clinic;
import slipway.care.record.remind.Due;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/**
 * What a reminder says: that the clinic asks the person to open their page, and how to end the reminders. It has no name
 * but that of the clinic, nothing of health, no picture and nothing that is loaded from elsewhere.
 *
 * @param page where the person's page is
 * @param stop where reminders are ended, with a token
 */
record ReminderMail(Need need, Clinic clinic, String page, String stop) {
    /** The plain text. */
    String text(Language language) {
        Words words = words(language);
        var paragraphs = new ArrayList<>(List.of(
                words.get("hello"),
                words.get(need.key() + ".text", clinic.name()),
                page,
                words.get("code"),
                words.get("nobody.reads") + " " + contact(words),
                words.get("stop"),
                stop));
        return String.join("\n\n", paragraphs) + "\n";
    }

    private String contact(Words words) {
        String emergency = words.get("emergency", clinic.emergencyNumber());
        return clinic.phone().isEmpty() ? emergency : words.get("call", clinic.phone()) + " " + emergency;
    }

    static Words words(Language language) {
        return Words.beside(ReminderMail.class, language);
    }

    /**
     * Fills a message.
     *
     * @param id unguessable, without anything of the person
     * @throws MessagingException if the address cannot be one
     */
    void fill(MimeMessage message, Due due, String from, String id, Instant now) throws MessagingException {
        String utf8 = StandardCharsets.UTF_8.name();
        try {
            message.setFrom(new InternetAddress(from, clinic.name(), utf8));
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException("every Java has UTF-8", e);
        }
        message.setRecipient(Message.RecipientType.TO, new InternetAddress(due.address(), true));
        message.setSubject(words(due.language()).get(need.key() + ".subject", clinic.name()), utf8);
        message.setText(text(due.language()), utf8);
        message.setSentDate(Date.from(now));
        message.setContentLanguage(new String[] {due.language().code()});
        // The one that the library would make holds the name of this machine and of its account.
        message.setHeader("Message-ID", "<" + id + from.substring(from.indexOf('@')) + ">");
        // RFC 3834: no program that is away on holiday answers.
        message.setHeader("Auto-Submitted", "auto-generated");
        // RFC 2369 and RFC 8058: the mail program of the person shows its own button.
        message.setHeader("List-Unsubscribe", "<" + stop + ">");
        message.setHeader("List-Unsubscribe-Post", "List-Unsubscribe=One-Click");
    }
}
