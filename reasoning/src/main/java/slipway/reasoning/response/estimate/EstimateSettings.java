package slipway.reasoning.response.estimate;

/** Settings of the estimate for one person ({@code response/estimate.csv}). */
public final class EstimateSettings {
    /** Particles of one person. */
    public static final int PARTICLES = (int) FilterModel.DATA.value("particles");
    /** Chance of a flare on a day of rest in the population. */
    public static final double REST_FLARE = FilterModel.DATA.value("rest-flare");
    /** Days that the population's chance counts for. */
    public static final double REST_WEIGHT_DAYS = FilterModel.DATA.value("rest-weight");
    /** Most excess over rest of the chance of a flare in the next 7 days. */
    public static final double LIMIT = FilterModel.DATA.value("limit");

    private EstimateSettings() {}
}
