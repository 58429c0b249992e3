package slipway.reasoning.locate;

import java.util.List;

/** The findings of one case as the model computes with them. */
record CaseEvidence(List<Observation> observations, List<Latent> latents, List<NotUsed> notUsed) {
    CaseEvidence {
        observations = List.copyOf(observations);
        latents = List.copyOf(latents);
        notUsed = List.copyOf(notUsed);
    }
}
