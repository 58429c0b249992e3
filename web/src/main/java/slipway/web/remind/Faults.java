package slipway.web.remind;

import jakarta.mail.SendFailedException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;
import org.springframework.mail.MailAuthenticationException;
import org.springframework.mail.MailException;
import org.springframework.mail.MailSendException;
import slipway.care.record.remind.MailFault;

/** Which kind of fault it is when a mail server does not take a message. */
final class Faults {
    private static final int DEEPEST = 12;

    private Faults() {}

    static MailFault of(MailException fault) {
        if (fault instanceof MailAuthenticationException) {
            return MailFault.SIGN_IN_REFUSED;
        }
        List<Throwable> chain = chain(fault);
        if (chain.stream().anyMatch(Faults::isAboutTls)) {
            return MailFault.NOT_ENCRYPTED;
        }
        if (chain.stream().anyMatch(SendFailedException.class::isInstance)) {
            return MailFault.ADDRESS_REFUSED;
        }
        return chain.stream().anyMatch(IOException.class::isInstance) ? MailFault.NO_CONNECTION : MailFault.REFUSED;
    }

    /** Whether the next message would meet the same fault. */
    static boolean isOfTheServer(MailFault fault) {
        return fault == MailFault.NO_CONNECTION
                || fault == MailFault.NOT_ENCRYPTED
                || fault == MailFault.SIGN_IN_REFUSED;
    }

    /** The mail library has no type of its own for a server that knows no STARTTLS, only words. */
    private static boolean isAboutTls(Throwable each) {
        return each instanceof SSLException
                || (each.getMessage() != null && each.getMessage().contains("STARTTLS"));
    }

    private static List<Throwable> chain(MailException fault) {
        var chain = new ArrayList<Throwable>();
        if (fault instanceof MailSendException sending) {
            sending.getFailedMessages().values().forEach(each -> follow(each, chain));
        }
        follow(fault, chain);
        return chain;
    }

    private static void follow(@Nullable Throwable fault, List<Throwable> chain) {
        @Nullable Throwable each = fault;
        for (int i = 0; each != null && i < DEEPEST; i++) {
            chain.add(each);
            each = each.getCause();
        }
    }
}
