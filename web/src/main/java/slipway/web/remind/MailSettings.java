package slipway.web.remind;

import java.util.Optional;

/**
 * The mail server, and where the links of a reminder lead.
 *
 * @param host name by which its certificate is checked
 * @param port 1 to 65535
 * @param user empty where none is asked
 * @param password empty where none is asked
 * @param from the address that reminders come from
 * @param publicAddress how browsers reach the pages, without a slash at the end
 */
public record MailSettings(
        String host,
        int port,
        MailSecurity security,
        Optional<String> user,
        Optional<String> password,
        String from,
        String publicAddress) {
    private static final int PORTS = 65_536;

    public MailSettings {
        require(host.matches("[A-Za-z0-9.:-]{1,253}"), "the mail server must be a host name, was " + host);
        require(port > 0 && port < PORTS, "the port of the mail server must be within 1 and 65535, was " + port);
        require(
                from.matches("[A-Za-z0-9.+_-]{1,64}@[A-Za-z0-9.-]{1,180}"),
                "the address that reminders come from must look like name@place, was " + from);
        require(user.isPresent() == password.isPresent(), "a mail user and a mail password go together");
        require(
                security != MailSecurity.NONE || isHere(host),
                "only a mail server on this machine may be reached in plain, was " + host);
        publicAddress = publicAddress.replaceAll("/$", "");
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    private static boolean isHere(String host) {
        return host.equals("localhost") || host.equals("127.0.0.1") || host.equals("::1");
    }

    /** Without the password. */
    @Override
    public String toString() {
        return "MailSettings[" + host + ":" + port + ", " + security + "]";
    }
}
