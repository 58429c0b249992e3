package slipway.reasoning.response.estimate;

/** Models for tests: the bundled one with other changes from day to day. */
final class Models {
    private Models() {}

    static FilterModel without(FilterModel model, double gainDriftSd, double daySd) {
        return new FilterModel(
                gainDriftSd,
                daySd,
                0,
                0,
                model.riseAtTolerance(),
                model.risePerLog(),
                model.riseSd(),
                model.riseSoftness(),
                model.oddReport(),
                model.settleSd(),
                model.morningAtNoRise(),
                model.morningPerPoint(),
                model.resampleBelow(),
                model.kernelShrink());
    }
}
