package slipway.web.patient;

import java.io.Serializable;

/**
 * Who has opened a code.
 *
 * @param linkId of the access link; what is written carries it
 */
public record PatientUser(String linkId, String episodeId, String clinicId) implements Serializable {}
