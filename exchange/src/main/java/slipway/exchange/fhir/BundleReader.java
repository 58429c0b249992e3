package slipway.exchange.fhir;

import ca.uhn.fhir.parser.IParser;
import ca.uhn.fhir.parser.LenientErrorHandler;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.hl7.fhir.r4.model.Bundle;

/** Reads bundles from elsewhere. */
final class BundleReader {
    private BundleReader() {}

    /**
     * A bundle and what of it was not understood.
     *
     * @param unknown elements that FHIR R4 does not have, or values of a wrong kind; each was left out
     */
    record Read(Bundle bundle, List<String> unknown) {}

    /**
     * The bundle of a text.
     *
     * @throws RefusedException if it is too large or no bundle
     */
    static Read read(byte[] text) {
        Gate.check(text);
        var unknown = new ArrayList<String>();
        IParser parser = Fhir.context().newJsonParser();
        parser.setParserErrorHandler(new Listing(unknown));
        try {
            Bundle bundle = parser.parseResource(Bundle.class, new String(text, StandardCharsets.UTF_8));
            return new Read(bundle, unknown);
        } catch (RuntimeException | AssertionError e) {
            // Whatever the parser fails with on broken input: it has failed in five ways that it does not name, one of
            // them where assertions are on. Its message may repeat what stood in the file.
            throw new RefusedException("the bundle does not keep the form of FHIR R4");
        }
    }

    /** Lists what the parser would drop. */
    private static final class Listing extends LenientErrorHandler {
        private static final int MOST = 200;
        private final List<String> unknown;

        Listing(List<String> unknown) {
            super(false);
            this.unknown = unknown;
        }

        private void add(String what) {
            if (unknown.size() < MOST) {
                unknown.add(what);
            } else if (unknown.size() == MOST) {
                unknown.add("and more");
            }
        }

        private static String shown(String name) {
            return name.length() > 60 ? name.substring(0, 60) + "…" : name;
        }

        @Override
        public void unknownElement(IParseLocation location, String name) {
            add("unknown element " + shown(name));
        }

        @Override
        public void unknownAttribute(IParseLocation location, String name) {
            add("unknown attribute " + shown(name));
        }

        @Override
        public void unknownReference(IParseLocation location, String reference) {
            add("a reference that leads nowhere");
        }

        @Override
        public void unexpectedRepeatingElement(IParseLocation location, String name) {
            add("element given more than once: " + shown(name));
        }

        @Override
        public void invalidValue(IParseLocation location, String value, String error) {
            add("a value of the wrong kind");
        }
    }
}
