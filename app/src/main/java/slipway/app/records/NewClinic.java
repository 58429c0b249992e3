package slipway.app.records;

import java.util.Optional;
import java.util.UUID;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.Clinics;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.content.Section;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** Makes the clinic that an imported case speaks of. */
final class NewClinic {
    private NewClinic() {}

    /** A clinic of this name, for the rest as the case says. */
    static Clinic like(CaseSplit first, String name, Clinics clinics) {
        JsonNode said = Optional.ofNullable(first.sections().get(Section.FRAME))
                .map(frame -> frame.path("clinic"))
                .orElse(MissingNode.getInstance());
        return clinics.add(
                name,
                said.path("setting").asString("therapy"),
                said.path("phone").asString(""),
                said.path("emergencyNumber").asString("112"),
                first.person().invented(),
                RecordsPlace.act("import", UUID.randomUUID().toString()));
    }
}
