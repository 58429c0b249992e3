package slipway.web.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.csrf.DefaultCsrfToken;
import org.springframework.stereotype.Component;

/** The proof that a form came from the patient's pages, made from the cookie: nothing is kept for it. */
@Component
public class PatientForms implements CsrfTokenRepository {
    private static final String HEADER = "X-CSRF-TOKEN";
    private static final String FIELD = "_csrf";

    private final PatientCookie cookie;

    PatientForms(PatientCookie cookie) {
        this.cookie = cookie;
    }

    @Override
    public CsrfToken generateToken(HttpServletRequest request) {
        // Whoever has no cookie has nothing that a form of another site could use.
        return new DefaultCsrfToken(HEADER, FIELD, cookie.formProof(request).orElse("none"));
    }

    @Override
    public void saveToken(@Nullable CsrfToken token, HttpServletRequest request, HttpServletResponse response) {
        // Made anew from the cookie each time.
    }

    @Override
    public CsrfToken loadToken(HttpServletRequest request) {
        return generateToken(request);
    }
}
