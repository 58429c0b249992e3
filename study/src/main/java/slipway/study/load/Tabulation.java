package slipway.study.load;

import slipway.study.data.Settings;

/** How loads are tabulated ({@code load.csv}). */
record Tabulation(int draws, long seed, int rangeSteps, double spreadSeen, double raiseStepDeg, double raiseMostDeg) {
    static Tabulation standard() {
        Settings settings = Settings.load("load.csv");
        return new Tabulation(
                settings.count("draws"),
                (long) settings.value("seed"),
                settings.count("range-steps"),
                settings.value("spread-seen"),
                settings.value("raise-step"),
                settings.value("raise-most"));
    }

    int raises() {
        return (int) Math.round(raiseMostDeg / raiseStepDeg) + 1;
    }
}
