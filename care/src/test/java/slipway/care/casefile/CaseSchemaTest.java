package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningRule;
import slipway.reasoning.screening.ScreeningRules;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CaseSchemaTest {
    private static final JsonNode SCHEMA = JsonMapper.shared().readTree(CaseSchema.text());

    @Test
    void requiresEveryEmergencyAndUrgentQuestion() {
        assertThat(SCHEMA.at("/properties/screening/required"))
                .extracting(JsonNode::stringValue)
                .containsExactlyElementsOf(ScreeningRules.load().listRequired(Region.LEG).stream()
                        .map(ScreeningRule::id)
                        .toList());
    }

    @Test
    void knowsEverySiteAndPlacesOutsideTheModel() {
        assertThat(SCHEMA.at("/properties/sites/items/properties/site/enum"))
                .extracting(JsonNode::stringValue)
                .containsAll(Site.all().keySet())
                .contains("hip joint", "polyneuropathy");
    }

    @Test
    void describesEveryKey() {
        SCHEMA.at("/properties")
                .properties()
                .forEach(entry -> assertThat(entry.getValue().has("description"))
                        .as(entry.getKey())
                        .isTrue());
    }
}
