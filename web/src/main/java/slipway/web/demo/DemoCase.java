package slipway.web.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.content.Section;
import slipway.care.record.person.PersonDetails;
import tools.jackson.databind.node.ObjectNode;

/** An invented person of the examples, under their own name or another. */
final class DemoCase {
    private final CaseSplit split;
    private final PersonDetails person;

    private DemoCase(CaseSplit split, PersonDetails person) {
        this.split = split;
        this.person = person;
    }

    static DemoCase read(String name, LocalDate day) {
        String file = name + ".yaml";
        try (InputStream stream = DemoCase.class.getResourceAsStream("cases/" + file)) {
            byte[] bytes = Objects.requireNonNull(stream, file).readAllBytes();
            CaseSplit split = CaseSplit.read(bytes, file, day);
            if (!split.person().invented()) {
                throw new IllegalStateException(file + " is not invented and has no place in the demo");
            }
            return new DemoCase(split, split.person());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** The same findings as those of another invented person. */
    DemoCase as(String name) {
        PersonDetails of = split.person();
        return new DemoCase(
                split,
                new PersonDetails(
                        name,
                        of.age(),
                        of.sex(),
                        of.statureCm(),
                        of.massKg(),
                        of.language(),
                        Optional.of("555 0147"),
                        Optional.empty(),
                        true));
    }

    CaseSplit split() {
        return split;
    }

    PersonDetails person() {
        return person;
    }

    /** What has been recorded up to and with a section. */
    Map<Section, ObjectNode> until(Section last) {
        var sections = new EnumMap<Section, ObjectNode>(Section.class);
        split.sections().forEach((section, content) -> {
            // The name of the example file and its clinic are those of the demo clinic here.
            if (section != Section.FRAME && section.compareTo(last) <= 0) {
                sections.put(section, content);
            }
        });
        return sections;
    }
}
