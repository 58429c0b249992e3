package slipway.web.remind;

import jakarta.mail.internet.MimeMessage;
import java.util.Properties;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSenderImpl;

/** Hands messages to the mail server, one connection for each. */
final class MailServer {
    /** So long for connecting, for each answer and for each thing said: a server that hangs holds up little. */
    private static final String MILLIS = "10000";

    private final JavaMailSenderImpl sender = new JavaMailSenderImpl();

    MailServer(MailSettings settings) {
        sender.setHost(settings.host());
        sender.setPort(settings.port());
        settings.user().ifPresent(sender::setUsername);
        settings.password().ifPresent(sender::setPassword);
        sender.setJavaMailProperties(properties(settings));
    }

    private static Properties properties(MailSettings settings) {
        var properties = new Properties();
        properties.put("mail.smtp.connectiontimeout", MILLIS);
        properties.put("mail.smtp.timeout", MILLIS);
        properties.put("mail.smtp.writetimeout", MILLIS);
        properties.put("mail.smtp.auth", String.valueOf(settings.user().isPresent()));
        properties.put("mail.smtp.ssl.enable", String.valueOf(settings.security() == MailSecurity.TLS));
        String starts = String.valueOf(settings.security() == MailSecurity.STARTTLS);
        properties.put("mail.smtp.starttls.enable", starts);
        properties.put("mail.smtp.starttls.required", starts);
        properties.put("mail.smtp.ssl.checkserveridentity", "true");
        properties.put("mail.smtp.ssl.protocols", "TLSv1.3 TLSv1.2");
        return properties;
    }

    MimeMessage message() {
        return sender.createMimeMessage();
    }

    /**
     * Sends a message.
     *
     * @throws MailException if the server did not take it; its words may hold addresses
     */
    void send(MimeMessage message) {
        sender.send(message);
    }
}
