package slipway.web.security;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slipway.web.Browser;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;

/** A passkey from its making to its end, with the browser's own code and a device that it plays. */
class PasskeyBrowserTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String HERE = "http://localhost:" + SERVER.server().port();
    private static final String LOGIN = "lead";
    private static final String PASSWORD = Objects.requireNonNull(DemoClinic.SIGN_INS.get(LOGIN));

    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    private static void plugIn(BrowserContext context, Page page) {
        CDPSession devices = context.newCDPSession(page);
        devices.send("WebAuthn.enable");
        var device = new JsonObject();
        device.addProperty("protocol", "ctap2");
        device.addProperty("transport", "internal");
        device.addProperty("hasResidentKey", true);
        device.addProperty("hasUserVerification", true);
        device.addProperty("isUserVerified", true);
        device.addProperty("automaticPresenceSimulation", true);
        var asked = new JsonObject();
        asked.add("options", device);
        devices.send("WebAuthn.addVirtualAuthenticator", asked);
    }

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static void signInByPassword(Page page, String base) {
        page.navigate(base + "/sign-in");
        page.getByLabel("Sign-in name").fill(LOGIN);
        page.getByLabel("Password").fill(PASSWORD);
        button(page, "Sign in").click();
        assertThat(page).hasURL(Pattern.compile("/today"));
        page.navigate(base + "/account");
    }

    private static void add(Page page, String password) {
        page.locator("#passkey-label").fill("Test phone");
        page.locator("#passkey-current").fill(password);
        button(page, "Add").click();
    }

    @Test
    void itIsAddedUsedAndRemoved() {
        try (BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            plugIn(context, page);
            signInByPassword(page, HERE);
            noViolations(page);
            assertThat(page.locator("[data-passkey-needs]")).isHidden();
            add(page, "not the password");
            assertThat(page.locator("#passkeys [data-words]")).hasText("The password of now is not right.");
            add(page, PASSWORD);
            assertThat(page.locator(".notice")).containsText("The passkey Test phone is added");
            noViolations(page);
            // The device says itself that it has one for this account already.
            add(page, PASSWORD);
            assertThat(page.locator("#passkeys [data-words]")).containsText("has a passkey for you already");

            button(page, "Sign out").click();
            noViolations(page);
            button(page, "Sign in with a passkey").click();
            assertThat(page).hasURL(Pattern.compile("/today"));

            page.navigate(HERE + "/account");
            assertThat(page.locator("#passkeys tbody tr")).hasCount(1);
            assertThat(page.locator("#passkeys tbody td").last()).not().hasText("not yet");
            page.locator("#passkey-off").fill(PASSWORD);
            button(page, "Remove").click();
            assertThat(page.locator(".notice")).containsText("The passkey is removed");
            button(page, "Sign out").click();
            button(page, "Sign in with a passkey").click();
            assertThat(page.locator("main .mistake").first()).containsText("That passkey is not known here");
            noViolations(page);
        }
    }

    @Test
    void withoutADeviceTheReasonIsToldAndThePasswordStillWorks() {
        try (BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            plugIn(context, page);
            page.navigate(HERE + "/sign-in");
            button(page, "Sign in with a passkey").click();
            assertThat(page.locator("[data-words]")).containsText("Nothing was done");
            signInByPassword(page, HERE);
        }
    }

    @Test
    void withoutScriptsOrAtAnotherAddressThereIsNoButton() {
        try (BrowserContext context = browser.get()
                .newContext(new com.microsoft.playwright.Browser.NewContextOptions().setJavaScriptEnabled(false))) {
            Page page = context.newPage();
            page.navigate(HERE + "/sign-in");
            assertThat(button(page, "Sign in with a passkey")).isHidden();
            signInByPassword(page, HERE);
            assertThat(page.locator("[data-passkey-needs]"))
                    .containsText("To add a passkey, open this page at " + HERE);
        }
        try (BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            page.navigate(SERVER.address() + "/sign-in");
            assertThat(button(page, "Sign in with a passkey")).isHidden();
            signInByPassword(page, SERVER.address());
            assertThat(page.locator("[data-passkey-needs]")).isVisible();
            assertThat(page.locator("#passkey-label")).isHidden();
        }
    }
}
