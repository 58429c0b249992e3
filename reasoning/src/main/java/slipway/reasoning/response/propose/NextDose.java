package slipway.reasoning.response.propose;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import slipway.reasoning.response.ladder.HomeDose;

/**
 * What the person does next of one exercise. In JSON the dose is written flat.
 *
 * @param rung index on the ladder, from 0
 */
public record NextDose(
        String exercise, int rung, @JsonUnwrapped HomeDose dose) {}
